#pragma once

// A session on a real trail in a folder of its own, on a simulated clock: opened, spoken to, ended
// and opened again.

#include <QEventLoop>
#include <QFile>
#include <QTimer>
#include <functional>

#include <gtest/gtest.h>

#include "app/station/session.h"
#include "core/base/rfc3339.h"
#include "core/base/simulated_clock.h"
#include "tests/support/temp_folder.h"

namespace bathside::app {

class SessionStand {
public:
    explicit SessionStand(const char* from = "2026-03-05T07:00:00.000+01:00")
        : clock(*fromRfc3339(from))
    {
    }

    [[nodiscard]] Result<std::unique_ptr<Session>, QString> tryToOpen()
    {
        QFile card(QStringLiteral(BATHSIDE_DEFAULT_CARD));
        EXPECT_TRUE(card.open(QIODevice::ReadOnly));
        return Session::open(
            {.trail = trail(),
             .spoolFolder = folder.path(),
             .card = {},
             .defaultCard = card.readAll().toStdString(),
             .rehearsal = false,
             .sealKey = folder / "seal.key",
             .clockSynchronised = true,
             .clockOffset = {}},
            {.clock = clock,
             .feedback = m_feedback,
             .inputTime = [this](std::uint64_t) { return ui::InputTime{.at = clock.now()}; },
             .ticking = ui::StationModel::Ticking::ByHand});
    }

    void open()
    {
        auto made = tryToOpen();
        ASSERT_TRUE(made) << made.error().toStdString();
        session = std::move(*made);
    }

    void say(const Intent& intent)
    {
        clock.runTo(clock.now().boot + std::chrono::seconds(1));
        ASSERT_TRUE(session->model().say(intent, 0, QStringLiteral("test")));
    }

    void pass(Millis time)
    {
        clock.runTo(clock.now().boot + time);
        session->model().tick();
    }

    [[nodiscard]] const Bench& bench() const { return session->station().bench(); }
    [[nodiscard]] std::filesystem::path trail() const { return folder / "trail.db"; }

    /// Runs the event loop until it holds, or the test fails.
    static void waitFor(const std::function<bool()>& holds)
    {
        QEventLoop loop;
        QTimer often;
        QTimer::singleShot(std::chrono::seconds(60), &loop, &QEventLoop::quit);
        QObject::connect(&often, &QTimer::timeout, &loop, [&] {
            if (holds())
                loop.quit();
        });
        often.start(5);
        loop.exec();
        ASSERT_TRUE(holds());
    }

    test::TempFolder folder;
    SimulatedClock clock;
    std::unique_ptr<Session> session;

private:
    class Deaf final : public ui::Feedback {
    public:
        void taken() override {}
        void refused() override {}
    };
    Deaf m_feedback;
};

}  // namespace bathside::app
