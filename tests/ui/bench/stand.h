#pragma once

// The bench screen on its own: real station, real frame and page; a clock that is stepped by hand,
// nothing stored.

#include <string>
#include <vector>

#include "core/base/simulated_clock.h"
#include "core/station/station.h"
#include "ui/frame/frame.h"
#include "ui/models/feedback.h"
#include "ui/models/printing.h"
#include "ui/models/station_model.h"
#include "ui/text/language.h"

namespace bathside::test {

struct Panel {
    const char* name;
    QSize px;
    double pxPerMm;
};
inline constexpr Panel kTenInch{"10", {1280, 800}, 5.9};
inline constexpr Panel kFifteenInch{"15", {1920, 1080}, 5.55};

class Heard final : public ui::Feedback {
public:
    void taken() override { ++clicks; }
    void refused() override { ++refusals; }
    int clicks = 0, refusals = 0;
};

class Kept final : public Recorder {
public:
    void record(std::vector<Event> events) override
    {
        for (Event& event : events)
            all.push_back(std::move(event));
    }
    std::vector<Event> all;
};

/// A way to paper that keeps what it was given; it ends at once, as it is told to.
class KeptPapers final : public ui::Printing {
public:
    using Of = ui::PrintOutcome::Of;

    [[nodiscard]] QStringList printers() const override { return installed; }
    void printLabel(const ui::BagLabel& label) override
    {
        labels.push_back(label);
        end(Of::Label);
    }
    void printTestLabel(const ui::BagLabel& label) override
    {
        testLabels.push_back(label);
        end(Of::TestLabel);
    }
    void printSheet(const ui::PlanSheet& sheet) override
    {
        sheets.push_back(sheet);
        end(Of::Sheet);
    }

    void printDay(const DaySheet& sheet) override
    {
        days.push_back(sheet);
        end(Of::DaySheet);
    }

    QStringList installed;
    ui::PrintOutcome outcome{{}, {}, QStringLiteral("/documents/printed.pdf"), {}};
    std::vector<ui::BagLabel> labels, testLabels;
    std::vector<ui::PlanSheet> sheets;
    std::vector<DaySheet> days;

private:
    void end(Of of)
    {
        outcome.of = of;
        emit ended(outcome);
    }
};

class Stand {
public:
    enum class As : std::uint8_t { Rehearsal, Real };

    /// `printing`: in place of the papers that are kept; outlives the stand.
    Stand(const Panel& panel, const QString& language, As day = As::Rehearsal,
          ui::Printing* printing = nullptr);
    ~Stand();

    /// Says it at the clock's now, as a tap somewhere; must be taken.
    void say(const Intent& intent);
    /// The program's own; must be taken.
    void note(const Intent& intent);
    /// From now on the day is planned as it goes; `days` outlives the stand.
    void planBy(const LocalDays& days) { m_station.planBy(days); }
    void feed(const RawReading& reading) { m_station.feed(reading); }
    /// Steps the clock, stopping at every change of an alarm.
    void pass(Micros time);
    void record(RecordState::Health health);
    void recorded(const RecordState& state) { m_station.recorded(state); }

    /// The visible target of that place; null when there is none.
    [[nodiscard]] QWidget* target(const QString& place) const;
    /// A real press and release in its middle; must be visible.
    void tap(const QString& place);
    /// As a scanner types it, wherever the focus is; Enter at its end.
    void scan(const QString& text);
    /// One key as the window system brings it, so many ms after the one before.
    void key(int code, const QString& text, int afterMs);
    /// Several taps in a row.
    void taps(const std::vector<const char*>& places);

    [[nodiscard]] const Bench& bench() const { return m_station.bench(); }
    [[nodiscard]] ui::Frame& frame() { return m_frame; }
    [[nodiscard]] ui::StationModel& model() { return m_model; }
    [[nodiscard]] ui::Language& language() { return m_language; }
    [[nodiscard]] Kept& kept() { return m_kept; }
    [[nodiscard]] KeptPapers& papers() { return m_papers; }
    [[nodiscard]] Heard& heard() { return m_heard; }

private:
    SimulatedClock m_clock;
    Kept m_kept;
    Heard m_heard;
    KeptPapers m_papers;
    ui::Language m_language;
    Station m_station;
    ui::StationModel m_model;
    ui::Frame m_frame;
    quint64 m_inputMs = 100'000;
};

/// A way to bring the stand into a state worth looking at.
struct Scene {
    const char* name;
    void (*set)(Stand&);
};
[[nodiscard]] const std::vector<Scene>& scenes();

}  // namespace bathside::test
