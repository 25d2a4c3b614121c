// State is the fold over its events and nothing else: whatever is said, folding the record gives
// the same bench; a record cut off anywhere still folds.

#include "core/bench/state.h"

#include <random>

#include <gtest/gtest.h>

#include "core/facts/codec.h"
#include "tests/support/shift.h"

namespace bathside::test {
namespace {

// Everything of a bench that a person can see, as text.
std::string portrait(const Bench& bench)
{
    std::string text;
    for (const Pull& pull : bench.pulls) {
        for (const Ampoule& ampoule : pull.ampoules) {
            text += std::to_string(pull.no) + "/" + std::to_string(ampoule.ref.no) +
                    ampoule.component.text + ampoule.lot.text;
            for (const auto& step : ampoule.steps)
                text +=
                    step ? " " + std::to_string(step->at.boot.count()) + (step->timed ? "t" : "i")
                         : " -";
            text += ampoule.lost ? " lost" : ampoule.bag ? " in " + ampoule.bag->text : " open";
        }
        text += pull.closed ? "; closed\n" : "; open\n";
    }
    for (const Bag& bag : bench.bags) {
        text += bag.id.text + (bag.inspected ? "i" : "") + (bag.drawn ? "d" : "") +
                (bag.mixed ? "m" : "") + (bag.line ? bag.line->text : "") +
                (bag.held() ? "h" : "") + (bag.down ? "x" : "") + "\n";
    }
    for (const auto& [key, judgement] : bench.judgements)
        text += std::string(nameOf(key.first)) + toText(key.second) +
                std::to_string(judgement.over) + "\n";
    for (const auto& [id, line] : bench.lines)
        text += id.text + std::to_string(line.birds) + (line.stopped ? "s" : "g") + "\n";
    for (const auto& [id, alarm] : bench.alarms)
        text += id + std::string(nameOf(alarm.level)) + (alarm.heard ? "h" : "") + "\n";
    for (const auto& [question, choice] : bench.answers)
        text += question + choice + "\n";
    return text + std::to_string(bench.lastSeq);
}

class Babble {
public:
    explicit Babble(unsigned seed) : m_random(seed) {}

    Intent next(const BenchShift& shift)
    {
        const auto bag =
            pick(4) == 0 ? std::nullopt : std::optional(BagId{"B" + std::to_string(pick(3))});
        const LineId line{std::string(1, static_cast<char>('A' + pick(2)))};
        const std::vector<int> numbers = pick(2) ? std::vector<int>{} : std::vector{1 + pick(3)};
        switch (pick(17)) {
            case 0:
                return StartBag{{"B" + std::to_string(pick(3))},
                                {400'000},
                                {"D1"},
                                MilliCelsius{16'000 + 1000 * pick(12)}};
            case 1:
                return InspectBag{bag, pick(5) != 0};
            case 2:
                return DrawDiluent{bag, {}};
            case 3:
                return TakeOut{{{pick(4), {}, {"K" + std::to_string(pick(2))}}}};
            case 4:
            case 5:
            case 6:
            case 7:
            case 8:
                return MoveOn{static_cast<Step>(1 + pick(5)), numbers,
                              pick(3) ? std::nullopt : bag};
            case 9:
                return LoseAmpoule{1 + pick(3), static_cast<LossReason>(pick(4))};
            case 10:
                return MixBag{bag};
            case 11:
                return HangBag{bag, line};
            case 12:
                return CountBirds{line, 100 * pick(50)};
            case 13:
                return TakeBack{pick(2) ? "slip" : ""};
            case 14:
                return Correct{{1 + pick(static_cast<int>(shift.bench().lastSeq) + 1)},
                               pick(2) ? "ampoule" : "lot",
                               std::to_string(1 + pick(3)),
                               "typo"};
            case 15:
                return TakeBagDown{bag, DownReason::Empty, {}};
            default:
                return TakeReading{{"hand"}, MilliCelsius{26'000 + 500 * pick(9)}};
        }
    }

    int pick(int below) { return std::uniform_int_distribution(0, below - 1)(m_random); }

private:
    std::mt19937 m_random;
};

TEST(StateTest, whatIsFoldedFromTheRecordIsWhatWasThereLive)
{
    for (unsigned seed = 1; seed <= 40; ++seed) {
        BenchShift shift;
        shift.open();
        Babble babble(seed);
        double time = 1;
        for (int i = 0; i < 120; ++i) {
            time += 0.2 * babble.pick(100);
            (void)shift.at(time).attempt(babble.next(shift));
        }
        const State folded = restored({}, shift.recorder.events);
        ASSERT_EQ(portrait(folded.bench), portrait(shift.bench())) << "seed " << seed;
        ASSERT_EQ(folded.journal.size(), shift.station.state().journal.size());
    }
}

TEST(StateTest, everyPrefixOfARecordFoldsAndGoesOn)
{
    BenchShift shift;
    shift.open().madeUp("B1", 60);
    shift.say(HangBag{{}, {"A"}});
    State state;
    for (const Event& event : shift.recorder.events) {
        state = evolve(std::move(state), event);
        const Tap tap{.id = {"new"}, .place = {"place"}, .at = shift.clock.now()};
        (void)decide(state, moved(Step::Bath), tap);
        (void)decide(state, TakeBack{"why"}, tap);
        EXPECT_EQ(state.bench.lastSeq, event.seq);
    }
}

TEST(StateTest, eventsSurviveTheirTextForm)
{
    BenchShift shift;
    shift.open().madeUp("B1", 60);
    for (const Event& event : shift.recorder.events) {
        const auto read = factFrom(kindOf(event.fact), payloadOf(event.fact));
        ASSERT_TRUE(read) << kindOf(event.fact) << ": " << read.error().key;
        EXPECT_EQ(payloadOf(*read), payloadOf(event.fact));
    }
}

TEST(StateTest, aNewShiftStartsAfreshWithItsCardAndProbes)
{
    BenchShift shift;
    shift.open().say(CloseShift{});
    shift.at(3600).open();
    EXPECT_TRUE(shift.bench().bags.empty());
    EXPECT_TRUE(shift.bench().card);
    EXPECT_EQ(shift.station.state().journal.front()->seq, shift.bench().shift->opened.seq);

    // restored from the carried facts and the last shift alone
    std::vector<Event> carried;
    std::vector<Event> since;
    for (const Event& event : shift.recorder.events) {
        if (event.seq >= shift.bench().shift->opened.seq)
            since.push_back(event);
        else if (std::ranges::count(carriedKinds(), kindOf(event.fact)) > 0)
            carried.push_back(event);
    }
    const State state = restored(carried, since);
    EXPECT_EQ(portrait(state.bench), portrait(shift.bench()));
    EXPECT_EQ(state.bench.card->hash(), shift.bench().card->hash());
}

TEST(StateTest, cardsOfOneHeatShareTheirScaleAndOthersDoNot)
{
    const auto first = cardWith(R"({"heat":{"fill_ul":1500,"source":"test"}})");
    const auto same = cardWith(R"({"version":2,"heat":{"fill_ul":1500,"source":"test"}})");
    const auto other = cardWith(R"({"version":3,"heat":{"fill_ul":1600,"source":"test"}})");
    BenchShift shift(first);
    shift.say(AdoptCard{same->document()});
    shift.say(AdoptCard{other->document()});
    const auto& slush = shift.bench().slush;
    EXPECT_EQ(slush.at(first->hash()), slush.at(same->hash()));
    EXPECT_NE(slush.at(first->hash()), slush.at(other->hash()));
}

}  // namespace
}  // namespace bathside::test
