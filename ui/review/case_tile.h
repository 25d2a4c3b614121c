#pragma once

// One case as a target: how grave, what, by how much, the bag; and its course in small.

#include "core/record/cases.h"
#include "core/record/course.h"
#include "ui/controls/tap_button.h"

namespace bathside::ui {

[[nodiscard]] Role roleOf(const ReviewCase& one);
/// "critical", "on hold", "reviewed by LS".
[[nodiscard]] QString standingText(const ReviewCase& one);

class CaseTile final : public TapButton {
    Q_OBJECT

public:
    using TapButton::TapButton;

    /// `zone`: for the day of one from a shift before.
    void setCase(const ReviewCase& one, const std::optional<Course>& course,
                 const std::string& zone);

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintMarks(QPainter& painter) const override;

private:
    struct Rooms;
    [[nodiscard]] Rooms rooms() const;

    QString m_standing;
    std::optional<Course> m_course;
};

}  // namespace bathside::ui
