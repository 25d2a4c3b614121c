#pragma once

// Days of plain work as events: shifts of so many events, one after the other, a day apart; between
// them the program is started and stopped. For trails of any length whose content does not matter.

#include <string>
#include <vector>

#include "core/trail/event_form.h"

namespace bathside::test {

inline constexpr WallTime kFirstMorning{Millis(1772690400000)};  // 2026-03-05T06:00:00Z

class TrailDays {
public:
    explicit TrailDays(Head after = {}, std::string station = "bench 1")
        : m_head(after), m_station{std::move(station)}
    {
    }

    /// The next event, a second after the last.
    Event event(Fact fact)
    {
        m_time += std::chrono::seconds(1);
        Event event;
        event.seq = m_head.seq + 1;
        event.at = {kFirstMorning + m_time, Micros(90'000'000) + m_time, kBoot};
        event.person = Person{{"AB"}, Proof::Claimed};
        event.tap = {"3f2b901c-7d11-4e5a-9c40-" + twelve(event.seq)};
        event.place = {"step"};
        event.card = {std::string(64, 'c')};
        event.fact = std::move(fact);
        return event;
    }

    /// As it stands in the trail, after all before it.
    Entry entry(Fact fact)
    {
        Entry made = entryOf(event(std::move(fact)), m_station);
        chain(made, m_head.hash);
        m_head = {made.seq, made.hash};
        return made;
    }

    /// A shift of about `events` events, with the program's start and stop around it.
    std::vector<Entry> day(int events, const std::string& zone = "Europe/Amsterdam")
    {
        const Millis began = m_time;
        std::vector<Entry> entries{entry(StationStarted{"0.1.0", toHex(m_head.hash), false}),
                                   entry(ShiftOpened{zone, {std::string(64, 'c')}}),
                                   entry(DutyTaken{{"AB"}})};
        for (int pull = 1; static_cast<int>(entries.size()) < events - 2; ++pull)
            bag(entries, pull);
        entries.push_back(entry(ShiftClosed{}));
        entries.push_back(entry(StationStopped{}));
        m_time = began + std::chrono::hours(24);
        return entries;
    }

    /// Nothing happens for so long.
    void pass(Millis time) { m_time += time; }

    [[nodiscard]] const Head& head() const { return m_head; }
    [[nodiscard]] const StationId& station() const { return m_station; }

private:
    static constexpr BootId kBoot{0x3f, 0x2b, 0x90, 0x1c, 0x7d, 0x11, 0x4e, 0x5a,
                                  0x9c, 0x40, 1,    2,    3,    4,    5,    6};

    static std::string twelve(Seq number)
    {
        std::string digits = std::to_string(number);
        return std::string(12 - digits.size(), '0') + digits;
    }

    void bag(std::vector<Entry>& entries, int pull)
    {
        const BagId bag{"B" + std::to_string(pull)};
        entries.push_back(entry(BagStarted{bag, {800000}, {"D71"}, std::nullopt}));
        for (int no = 1; no <= 3; ++no) {
            const AmpouleRef ampoule{pull, no};
            entries.push_back(entry(AmpouleOut{ampoule, {"serotype 3"}, {"K07"}}));
            entries.push_back(entry(AmpouleInBath{ampoule, true}));
            entries.push_back(entry(AmpouleOpened{ampoule, true}));
            entries.push_back(entry(AmpouleInDiluent{ampoule, true}));
            entries.push_back(entry(AmpouleBagged{ampoule, bag, true}));
        }
        entries.push_back(entry(BagMixed{bag}));
        entries.push_back(entry(BagHung{bag, {"A"}}));
        entries.push_back(entry(BirdsCounted{{"A"}, pull * 4000}));
    }

    Head m_head;
    StationId m_station;
    Millis m_time{};
};

}  // namespace bathside::test
