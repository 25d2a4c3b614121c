#pragma once

// A day of our own scenario, written by hand: two shifts, the second over midnight, with a broken
// ampoule, limits passed, a lot corrected, a judgement changed, a bag on hold, and labels that a
// spreadsheet would run.

#include <optional>
#include <string>
#include <vector>

#include "core/base/rfc3339.h"
#include "core/trail/event_form.h"

namespace bathside::test {

class DayScript {
public:
    /// The next event, at that instant; both clocks run together from 2026-03-05T05:00:00Z.
    DayScript& at(const char* time, Fact fact)
    {
        const WallTime wall = fromRfc3339(time).value();
        Event event;
        event.seq = static_cast<Seq>(entries.size()) + 1;
        event.at = {wall,
                    std::chrono::hours(1) + (wall - fromRfc3339("2026-03-05T05:00:00Z").value()),
                    kBoot};
        if (event.seq > 1)
            event.person = Person{{"AB"}, Proof::Claimed};
        event.tap = {"tap-" + std::to_string(event.seq)};
        event.fact = std::move(fact);
        events.push_back(event);
        Entry entry = entryOf(event, {"bench 1"});
        chain(entry, entries.empty() ? Hash{} : entries.back().hash);
        entries.push_back(std::move(entry));
        return *this;
    }

    std::vector<Event> events;
    std::vector<Entry> entries;

private:
    static constexpr BootId kBoot{0x3f, 0x2b, 0x90, 0x1c, 0x7d, 0x11, 0x4e, 0x5a,
                                  0x9c, 0x40, 1,    2,    3,    4,    5,    6};
};

inline void firstShift(DayScript& day)
{
    const ComponentId component{"serotype 3"};
    day.at("2026-03-05T06:00:00Z", ShiftOpened{"Europe/Amsterdam", {}})
        .at("2026-03-05T06:01:00Z", BagStarted{{"B1"}, {400000}, {"=D7"}, MilliCelsius{21500}})
        .at("2026-03-05T06:10:00.000Z", AmpouleOut{{1, 1}, component, {"K07"}})  // seq 4
        .at("2026-03-05T06:10:00.000Z", AmpouleOut{{1, 2}, component, {"K07"}})
        .at("2026-03-05T06:10:00.000Z", AmpouleOut{{1, 3}, {"serotype 1"}, {"-5, \"x\""}})
        .at("2026-03-05T06:10:06.250Z", AmpouleInBath{{1, 1}, true})
        .at("2026-03-05T06:10:10.000Z", AmpouleInBath{{1, 2}, true})  // seq 8
        .at("2026-03-05T06:10:10.000Z",
            DeviationFound{
                LimitName::Exposure, subjectOf(AmpouleRef{1, 2}), BagId{"B1"}, 0, {5, 8}})
        .at("2026-03-05T06:10:12.000Z", AmpouleLost{{1, 3}, LossReason::Broken})
        .at("2026-03-05T06:11:20.001Z", AmpouleOpened{{1, 1}, false})
        .at("2026-03-05T06:11:20.001Z", AmpouleInDiluent{{1, 1}, true})
        .at("2026-03-05T06:11:30.000Z", AmpouleOpened{{1, 2}, true})
        .at("2026-03-05T06:11:39.999Z", AmpouleInDiluent{{1, 2}, true})
        .at("2026-03-05T06:11:45.000Z", AmpouleRinsed{{1, 1}, true})
        .at("2026-03-05T06:12:00.000Z", AmpouleBagged{{1, 1}, {"B1"}, true})
        .at("2026-03-05T06:12:00.000Z", AmpouleBagged{{1, 2}, {"B1"}, true})
        .at("2026-03-05T06:12:30.000Z", BagMixed{{"B1"}})
        .at("2026-03-05T06:15:00.000Z", BagHung{{"B1"}, {"A"}})
        .at("2026-03-05T06:20:00.000Z",
            FactCorrected{8, "at", "2026-03-05T06:10:09.000Z", "tapped late"})
        .at("2026-03-05T06:20:00.000Z", Rejudged{LimitName::Exposure,
                                                 subjectOf(AmpouleRef{1, 2}),
                                                 BagId{"B1"},
                                                 std::nullopt,
                                                 {5, 8}})
        .at("2026-03-05T06:21:00.000Z", FactCorrected{4, "lot", "K08", "read again"})
        .at("2026-03-05T07:11:21.235Z", BagDown{{"B1"}, DownReason::Expired, {30250}})
        .at("2026-03-05T07:11:21.235Z",
            DeviationFound{LimitName::InUse, subjectOf(BagId{"B1"}), BagId{"B1"}, 1234, {12, 23}})
        .at("2026-03-05T07:20:00.000Z", BagStarted{{"B2"}, {800000}, {"D8"}, MilliCelsius{17400}})
        .at("2026-03-05T07:20:00.000Z",
            DeviationFound{LimitName::Diluent, subjectOf(BagId{"B2"}), BagId{"B2"}, 600, {25}})
        .at("2026-03-05T07:21:00.000Z",
            BagHeld{{"B2"}, HoldReason::Colour, "=HYPERLINK(\"http://x\")"})
        .at("2026-03-05T07:30:00.000Z", NoteMade{"+ nobody hurt; \"all\" well"})
        .at("2026-03-05T07:31:00.000Z", NoteMade{"slip"})
        .at("2026-03-05T07:31:05.000Z", FactTakenBack{{29}, std::nullopt})
        .at("2026-03-05T07:40:00.000Z", BagDown{{"B2"}, DownReason::Discarded, {800000}})
        .at("2026-03-05T08:00:00.000Z", ShiftClosed{3, 2, 1, 2});
}

inline DayScript sampleDay()
{
    DayScript day;
    day.at("2026-03-05T05:59:00Z", StationStarted{"0.1.0", std::string(64, '0'), true});
    firstShift(day);
    day.at("2026-03-05T22:30:00Z", ShiftOpened{"Europe/Amsterdam", {}})
        .at("2026-03-05T22:59:59Z", BagStarted{{"B1"}, {200000}, {"D9"}, std::nullopt})
        .at("2026-03-05T23:00:30Z", BagDown{{"B1"}, DownReason::Empty, {0}})
        .at("2026-03-05T23:30:00Z", ShiftClosed{0, 0, 0, 1})
        .at("2026-03-06T06:00:00Z", NoteMade{"the next day"});
    return day;
}

}  // namespace bathside::test
