#pragma once

// A line across the page: rehearsal, a refusal, a fault. No target, no dialog; hidden when it has
// no text.

#include "ui/controls/control.h"
#include "ui/theme/role.h"

namespace bathside::ui {

class Banner final : public Control {
    Q_OBJECT

public:
    explicit Banner(const QString& name, QWidget* parent = nullptr);

    /// `word` strong ("REHEARSAL"), `text` the sentence after it. Both empty: hidden.
    void say(Role role, const QString& word, const QString& text);
    [[nodiscard]] const QString& text() const noexcept { return m_text; }

    [[nodiscard]] QSize sizeHint() const override;

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    struct Rooms;
    [[nodiscard]] Rooms rooms() const;

    Role m_role = Role::Neutral;
    QString m_word, m_text;
};

}  // namespace bathside::ui
