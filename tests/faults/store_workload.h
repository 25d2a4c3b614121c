#pragma once

// A station's taps against files that fail, and what must hold afterwards.
//
// `acknowledged` is what the recorder called recorded. Whatever happened, each of these must be in
// the trail once the station starts anew on the files, each tap once, in order, in a chain that
// verifies.

#include <set>
#include <string>
#include <vector>

#include "core/trail/store/check.h"
#include "core/trail/store/direct_recorder.h"
#include "core/trail/store/disk_files.h"
#include "tests/support/trail_days.h"

namespace bathside::test {

class StoreWorkload {
public:
    explicit StoreWorkload(const std::filesystem::path& folder)
        : StoreWorkload(folder, std::make_unique<store::DiskFiles>(placesIn(folder)))
    {
    }
    StoreWorkload(const std::filesystem::path& folder, std::unique_ptr<TrailFiles> files)
        : m_files(std::move(files)), m_recorder(*m_files, {"bench 1"})
    {
        std::filesystem::create_directories(folder / "stick");
    }

    static store::DiskFiles::Places placesIn(const std::filesystem::path& folder)
    {
        return {folder / "trail.db", {folder, folder / "stick"}};
    }

    [[nodiscard]] bool start() { return m_recorder.start().has_value(); }

    /// Every third tap has two events, and after every fifth it is quiet for a while.
    void tap()
    {
        std::vector<Event> batch;
        const int events = ++m_taps % 3 == 0 ? 2 : 1;
        for (int i = 0; i < events; ++i) {
            batch.push_back(
                m_days.event(NoteMade{"fact " + std::to_string(m_days.head().seq + 1)}));
            batch.back().tap = {"tap " + std::to_string(m_taps)};
            m_days.entry(batch.back().fact);  // counts on
        }
        m_recorder.record(std::move(batch));
        auto* const trail = dynamic_cast<store::TrailDb*>(m_recorder.trail());
        if (m_taps % 5 == 0 && trail)
            trail->tidy(0);
    }

    [[nodiscard]] Seq handedOver() const { return m_days.head().seq; }
    [[nodiscard]] Seq acknowledged() const { return m_recorder.state().recorded; }
    [[nodiscard]] store::DirectRecorder& recorder() { return m_recorder; }

private:
    std::unique_ptr<TrailFiles> m_files;
    store::DirectRecorder m_recorder;
    TrailDays m_days;
    int m_taps = 0;
};

/// What is wrong with the files in `folder` after a new start; empty: nothing. Each fact must be
/// there once and in order, and at least so many of them.
inline std::string faultAfterRestart(const std::filesystem::path& folder, Seq acknowledged)
{
    store::DiskFiles files(StoreWorkload::placesIn(folder));
    store::DirectRecorder recorder(files, {"bench 1"});
    if (const auto started = recorder.start(); !started)
        return "does not start: " + std::string(nameOf(started.error().fault)) + " " +
               (files.refusal() ? files.refusal()->detail : "");
    const auto* const trail = dynamic_cast<store::TrailDb*>(recorder.trail());
    const auto sound = store::check(*trail);
    if (!sound.isSound())
        return "is not sound: " + sound.pages +
               (sound.chain.flaw ? " chain at " + std::to_string(sound.chain.flaw->seq) : "");
    Seq facts = 0;
    std::string wrong;
    const auto read = trail->read(1, 1 << 30, [&](const Entry& entry) {
        ++facts;
        if (entry.payload != R"({"text":"fact )" + std::to_string(facts) + R"("})" && wrong.empty())
            wrong = "has at " + std::to_string(facts) + " " + entry.payload;
        return true;
    });
    if (!read || !wrong.empty())
        return wrong.empty() ? "cannot be read" : wrong;
    if (facts < acknowledged)
        return "lost what was acknowledged: " + std::to_string(facts) + " of " +
               std::to_string(acknowledged);
    return {};
}

/// The long form of a test: chosen by BATHSIDE_LONG.
inline bool isLong() { return std::getenv("BATHSIDE_LONG") != nullptr; }

}  // namespace bathside::test
