#pragma once

// One status in the top line: a mark, a word, a colour. Bath, record, sound, who is on duty. No
// target.

#include "ui/controls/control.h"
#include "ui/theme/role.h"

namespace bathside::ui {

class StatusChip final : public Control {
    Q_OBJECT

public:
    explicit StatusChip(const QString& name, QWidget* parent = nullptr);

    /// `main` in capitals' height of words, `detail` smaller under it (may be empty).
    void setStatus(Role role, Mark mark, const QString& main, const QString& detail = {});
    [[nodiscard]] Role role() const noexcept { return m_role; }
    [[nodiscard]] const QString& main() const noexcept { return m_main; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    struct Rooms;
    [[nodiscard]] Rooms rooms() const;

    Role m_role = Role::Neutral;
    Mark m_mark = Mark::None;
    QString m_main, m_detail;
};

}  // namespace bathside::ui
