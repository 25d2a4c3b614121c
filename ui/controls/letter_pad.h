#pragma once

// A to Z (with Ñ in Spanish), 0 to 9, hyphen and space, for initials, lots, bag names and short
// reasons. In place.
//
// Letters and digits are two layers, so that every key keeps 20 mm; a real keyboard types both.

#include <QList>

#include "ui/controls/control.h"
#include "ui/controls/tap_stamp.h"

namespace bathside::ui {

class Label;
class TapButton;

struct TextQuestion {
    QString title{};  // "Your initials"
    int shortest = 1;
    int longest = 40;
    QString suggested{};
    /// What a real keyboard may type: what the pad has, or everything, as for a note.
    enum class Signs { Pad, Any } signs = Signs::Pad;
};

class LetterPad final : public Control {
    Q_OBJECT

public:
    /// Places: `place`.A … .Z, .enye in Spanish, else .hyphen, .0 … .9, .hyphen2, .space, .layer,
    /// .delete, .set, .cancel
    explicit LetterPad(const QString& place, QWidget* parent = nullptr);

    void ask(const TextQuestion& question);  // starts afresh
    [[nodiscard]] const QString& typed() const noexcept { return m_typed; }
    void setRefusal(const QString& why);  // shown until the next key

    [[nodiscard]] QSize sizeHint() const override;

signals:
    void accepted(const QString& text, const bathside::ui::TapStamp& stamp);
    void cancelled(const bathside::ui::TapStamp& stamp);
    void refused(const QString& why);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;
    void themeChanged() override { arrange(); }

private:
    void arrange();
    void show();
    void type(QChar sign);
    void deleteLast();
    void set(const TapStamp& stamp);
    void retranslate();
    [[nodiscard]] TapButton* key(const QString& id);

    TextQuestion m_question;
    QString m_typed, m_refusal;
    Label *m_title, *m_shown, *m_note;
    QList<TapButton*> m_letters, m_digits;  // the digits with a hyphen as their last
    TapButton *m_hyphen, *m_enye;           // one of them among the letters
    TapButton *m_layer, *m_space, *m_delete, *m_cancel, *m_set;
    bool m_digitsShown = false;
};

}  // namespace bathside::ui
