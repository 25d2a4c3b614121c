#pragma once

// Sheets of named values, for what has to be read exactly: an entry, a verdict, what was written
// where. Values break at any sign, so that a hash or a line of JSON is shown whole; what does not
// fit on one sheet goes on on the next, nothing is cut. No target.

#include <QList>

#include "ui/controls/control.h"
#include "ui/theme/role.h"

namespace bathside::ui {

struct Field {
    QString name{};
    QString value{};
};

class FieldSheet final : public Control {
    Q_OBJECT

public:
    explicit FieldSheet(QWidget* parent = nullptr);

    /// `role` other than Neutral colours the title, with its mark.
    void show(Role role, const QString& title, const QList<Field>& fields);
    [[nodiscard]] const QString& title() const noexcept { return m_title; }
    [[nodiscard]] Role role() const noexcept { return m_role; }
    [[nodiscard]] const QList<Field>& fields() const noexcept { return m_fields; }

    [[nodiscard]] int sheets() const;
    [[nodiscard]] int sheet() const noexcept { return m_sheet; }  // from 0
    /// To the next one, after the last to the first.
    void turn();

    [[nodiscard]] QSize sizeHint() const override { return sizeOfMm(120, 60); }

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QList<Field> lines() const;  // values broken, names at their first
    [[nodiscard]] int linesEach() const;
    [[nodiscard]] QRectF titleRoom() const;
    [[nodiscard]] QRectF titleText() const;

    Role m_role = Role::Neutral;
    QString m_title;
    QList<Field> m_fields;
    int m_sheet = 0;
};

/// Lines of `text` no wider than `px` at that height, broken at any sign, at a space where one is
/// near.
[[nodiscard]] QStringList brokenLines(const QString& text, double capMm, double px);

}  // namespace bathside::ui
