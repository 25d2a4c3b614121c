#pragma once

// Makes the copies of the session's record: when they are due, or when somebody taps for one.
//
// Follows the model's own ticking. A copy that failed is tried again after `kAgain`, by a tap at
// once. UI thread.

#include "app/station/session.h"
#include "ui/models/copies.h"
#include "ui/models/preferences.h"

namespace bathside::app {

class CopyDesk final : public ui::Copies {
    Q_OBJECT

public:
    static constexpr Millis kAgain{10 * 60'000};  // our own choice

    /// Both outlive this.
    CopyDesk(Session& session, const ui::Preferences& preferences, QObject* parent = nullptr);

    [[nodiscard]] ui::CopyNews news() const override;
    [[nodiscard]] std::vector<ui::RecordPlace> places() const override;
    void copyNow() override;

private:
    void look();
    void start();
    void take(const ui::CopyAnswer& answer);
    [[nodiscard]] QString folder() const;

    Session& m_session;
    const ui::Preferences& m_preferences;
    bool m_isWanted = false;  // by a tap
    bool m_isCopying = false;
    ui::CopyNews::Wrong m_wrong{};
    ui::CopyAnswer m_last;
    std::optional<Stamp> m_failedAt;
};

}  // namespace bathside::app
