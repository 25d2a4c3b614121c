#pragma once

// The birds: how many were looked at after their injection, how many had it well, and what that
// shows.

#include "core/checks/coverage_case.h"
#include "ui/checks/check_view.h"

namespace bathside::ui {

class BirdsView final : public CheckView {
public:
    using CheckView::CheckView;

    [[nodiscard]] CheckSheet sheet() const override;
    [[nodiscard]] QList<CheckAction> actions() override;

private:
    void askLooked();
    void askGood(int birds);
    void askTarget();
    void record(const AnswerTap& tap);
    [[nodiscard]] CheckAction recordAction();
    /// What is typed, else what is on record of the line.
    [[nodiscard]] std::optional<Looked> shown() const;

    std::optional<Looked> m_looked;
    double m_target = kUsualTarget;
};

}  // namespace bathside::ui
