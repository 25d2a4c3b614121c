#pragma once

// A keypad of our own: digits, the locale's decimal sign, delete, set. In place, no dialog, no
// wheel.
//
// A PIN is no number: its digits are hidden, noughts at its front count, 0 is told and `typed`
// read. What is typed is parsed by parseDecimal (ui/text/numbers.h), so point and locale sign both
// work, from a real keyboard too. The value told is a whole number in the smallest unit that
// `decimals` allows: 28.1 °C with 3 decimals is 28100. A value out of range is refused in place, in
// words, and nothing is told. The minus key changes the sign whenever it comes.

#include <QList>
#include <optional>

#include "ui/controls/control.h"
#include "ui/controls/tap_stamp.h"

namespace bathside::ui {

class Label;
class TapButton;

struct NumberQuestion {
    QString title{};    // "Bath temperature"
    QString unit{};     // "°C"
    qint64 lowest = 0;  // in the smallest unit
    qint64 highest = 0;
    int decimals = 0;                   // of the smallest unit: told = typed × 10^decimals
    int typedDecimals = 0;              // how many may be typed; 0: no decimal sign on the pad
    std::optional<qint64> suggested{};  // shown until the first key; set takes it
    bool hidden = false;  // a PIN: dots for digits, no range; what was typed is `typed`
    QString note{};       // in place of the range
    bool minus = false;   // values below 0 may be typed
};

class NumberPad final : public Control {
    Q_OBJECT

public:
    /// Places: `place`.0 … .9, .sign, .minus, .delete, .set, .cancel
    explicit NumberPad(const QString& place, QWidget* parent = nullptr);

    void ask(const NumberQuestion& question);  // starts afresh
    [[nodiscard]] const QString& typed() const noexcept { return m_typed; }
    /// The value as it would be told now.
    [[nodiscard]] std::optional<qint64> value() const;
    void setRefusal(const QString& why);  // from the core, shown until the next key

    [[nodiscard]] QSize sizeHint() const override;

signals:
    void accepted(qint64 value, const bathside::ui::TapStamp& stamp);
    void cancelled(const bathside::ui::TapStamp& stamp);
    void refused(const QString& why);  // for the refusal tone

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void themeChanged() override { arrange(); }

private:
    void arrange();
    void show();
    void showNote();
    void type(QChar sign);
    void deleteLast();
    void changeSign();
    [[nodiscard]] bool isEmpty() const;
    void set(const TapStamp& stamp);
    void retranslate();
    [[nodiscard]] QString rangeText() const;
    [[nodiscard]] TapButton* key(const QString& id);

    NumberQuestion m_question;
    QString m_typed, m_refusal;
    Label *m_title, *m_shown, *m_note;
    QList<TapButton*> m_digits;
    TapButton *m_sign, *m_minus, *m_delete, *m_set, *m_cancel;
};

}  // namespace bathside::ui
