#pragma once

// The birds: how many were looked at after their injection, how many had it well, and what that
// shows.

#include "core/checks/check_limits.h"
#include "core/checks/coverage_case.h"
#include "ui/checks/check_view.h"

namespace bathside::ui {

class BirdsView final : public CheckView {
public:
    using CheckView::CheckView;

    [[nodiscard]] CheckSheet sheet() const override;
    [[nodiscard]] QList<CheckAction> actions() override;

    [[nodiscard]] bool isHeldToCard() const override;

private:
    void askLooked();
    void askGood(int birds);
    void askTarget();
    void record(const AnswerTap& tap);
    [[nodiscard]] CheckAction recordAction();
    /// What is typed, else what is on record of the line.
    [[nodiscard]] std::optional<Looked> shown() const;
    /// What the next check is held to, and what the one that shows is.
    [[nodiscard]] CoverageLimits limits() const;
    [[nodiscard]] CoverageLimits limitsShown() const;

    std::optional<Looked> m_looked;
    std::optional<std::int64_t> m_target;  // of a thousand, as typed; the card's goes first
};

}  // namespace bathside::ui
