#include "tests/core/alarms/day.h"

#include <algorithm>
#include <array>
#include <map>
#include <random>
#include <set>

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

class Maker {
public:
    explicit Maker(unsigned seed) : m_random(seed) {}

    Day make()
    {
        m_day.opened = 60s;
        m_day.soundProven.push_back(m_day.opened + between(5s, 110s));
        makeBags();
        makeLines();
        close();
        makeReadings();
        makePlans();
        makeTrouble();
        makeRestarts();
        return m_day;
    }

private:
    std::int64_t whole(std::int64_t least, std::int64_t most)
    {
        return std::uniform_int_distribution<std::int64_t>(least, most)(m_random);
    }
    bool chance(int percent) { return whole(1, 100) <= percent; }

    Millis between(Millis least, Millis most) { return Millis(whole(least.count(), most.count())); }

    /// Usually the first, in so many of a hundred the second.
    Millis usually(Millis least, Millis most, int percent, Millis worst)
    {
        return chance(percent) ? between(most, worst) : between(least, most);
    }

    /// No two taps within the same ms, but where hands do one thing to several ampoules.
    Millis free(Millis at)
    {
        while (!m_taken.insert(at).second)
            ++at;
        return at;
    }

    // --- ampoules and bags ---

    AmpouleLife ampouleAt(AmpouleRef ref, Millis out, Millis bath)
    {
        AmpouleLife ampoule;
        ampoule.ref = ref;
        ampoule.component = chance(50) ? "serotype 3" : "serotype 1";
        ampoule.out = out;
        ampoule.bath = bath;
        return ampoule;
    }

    /// The hands open them one by one, from when the first is slush; `hands` is when they are free.
    void finish(AmpouleLife& ampoule, Millis& hands)
    {
        const bool implied = chance(4);  // *in bath* was never tapped
        if (chance(5))
            return lose(ampoule, hands);
        const Millis slush = *ampoule.bath + usually(62s, 76s, 12, 115s);
        const Millis opened = free(std::max(slush, hands));
        const Millis diluent = free(opened + usually(2s, 8s, 5, 20s));
        if (chance(60) || implied)
            ampoule.opened = opened;
        if (chance(95))
            ampoule.diluent = diluent;
        ampoule.end = free(diluent + between(3s, 15s));
        hands = diluent + between(500ms, 3s);
        if (implied)
            ampoule.bath.reset();
    }

    void lose(AmpouleLife& ampoule, Millis& hands)
    {
        constexpr std::array kWhy{LossReason::Broken, LossReason::Dropped, LossReason::Abandoned,
                                  LossReason::HandedOver};
        ampoule.lost = kWhy[static_cast<std::size_t>(whole(0, 3))];
        const Millis inBath = *ampoule.bath;
        if (chance(30)) {
            ampoule.bath.reset();
            ampoule.end = free(ampoule.out + between(2s, 18s));
            return;
        }
        ampoule.end = free(inBath + between(20s, 120s));
        if (chance(30))
            ampoule.opened = free(inBath + between(5s, 15s));
        hands = std::max(hands, ampoule.end + 2s);
    }

    PullLife pullAt(Millis start, const std::string& bag)
    {
        PullLife pull;
        pull.bag = bag;
        const int no = static_cast<int>(m_day.pulls.size()) + 1;
        const int count = static_cast<int>(whole(1, 3));
        Millis out = free(start);
        Millis bath = free(out + usually(3s, 7s, 12, 18s));
        for (int i = 1; i <= count; ++i) {
            pull.ampoules.push_back(ampouleAt({no, i}, out, bath));
            if (chance(50)) {  // else the next one goes along
                out = free(out + between(8s, 25s));
                bath = free(std::max(bath, out) + usually(3s, 7s, 12, 18s));
            }
        }
        Millis hands{};
        for (AmpouleLife& ampoule : pull.ampoules)
            finish(ampoule, hands);
        return keepOpen(std::move(pull));
    }

    /// An ampoule that comes out after all others have ended would be another pull.
    PullLife keepOpen(PullLife pull)
    {
        Millis open = pull.ampoules.front().end;
        std::size_t kept = 1;
        for (; kept < pull.ampoules.size() && pull.ampoules[kept].out < open; ++kept)
            open = std::max(open, pull.ampoules[kept].end);
        pull.ampoules.resize(kept);
        return pull;
    }

    std::optional<Millis> firstInDiluent(const std::string& bag)
    {
        std::optional<Millis> first;
        for (const PullLife& pull : m_day.pulls) {
            for (const AmpouleLife& ampoule : pull.ampoules) {
                if (pull.bag == bag && !ampoule.lost)
                    first = std::min(first.value_or(Millis::max()), *ampoule.inDiluent());
            }
        }
        return first;
    }

    void makeBags()
    {
        Millis start = m_day.opened + between(2min, 8min);
        const auto count = whole(3, 6);
        for (std::int64_t i = 1; i <= count; ++i) {
            BagLife bag;
            bag.id = "B" + std::to_string(i);
            bag.started = free(start);
            bag.temperature = temperature();
            start = makeUp(bag) + between(5min, 40min);
            m_day.bags.push_back(bag);
        }
    }

    MilliCelsius temperature()
    {
        if (chance(10))
            return {chance(50) ? whole(10'000, 17'999) : whole(27'001, 33'000)};
        return {chance(10) ? (chance(50) ? 18'000 : 27'000) : whole(18'000, 27'000)};
    }

    /// Says when its making up was over.
    Millis makeUp(BagLife& bag)
    {
        Millis over = bag.started;
        for (int pulls = chance(20) ? 2 : 1; pulls > 0; --pulls) {
            m_day.pulls.push_back(pullAt(over + between(20s, 5min), bag.id));
            over = m_day.pulls.back().closed();
        }
        const auto age = firstInDiluent(bag.id);
        if (!age) {
            bag.down = free(over + between(30s, 4min));
            return bag.down;
        }
        bag.mixed = free(over + between(10s, 60s));
        bag.down = free(std::max(*bag.mixed + 5min, *age + usually(25min, 55min, 20, 66min)));
        hang(bag);
        hold(bag);
        swirl(bag);
        return *bag.mixed;
    }

    void hang(BagLife& bag)
    {
        for (const char* line : {"A", "B"}) {
            const Millis at = free(*bag.mixed + between(20s, 90s));
            if (m_lineFree[line] < at) {
                bag.hung = {at, line};
                m_lineFree[line] = bag.down;
                return;
            }
        }
    }

    void hold(BagLife& bag)
    {
        if (!chance(12) || bag.down < *bag.mixed + 10min)
            return;
        const Millis from = free(between(*bag.mixed + 3min, bag.down - 5min));
        bag.held = Span{from, chance(50) ? bag.down : free(between(from + 1min, bag.down - 1min))};
    }

    void swirl(BagLife& bag)
    {
        for (Millis at = *bag.mixed;;) {
            at = free(at + usually(4min, 9min, 20, 17min));
            if (at >= bag.down)
                return;
            const bool held = bag.held && at >= bag.held->from && at <= bag.held->to;
            if (!held)
                bag.swirls.push_back(at);
        }
    }

    // --- lines ---

    void makeLines()
    {
        for (const char* id : {"A", "B"}) {
            LineLife line;
            line.id = id;
            Millis last{};
            for (const BagLife& bag : m_day.bags) {
                if (!bag.hung || bag.hung->second != id)
                    continue;
                line.first = last == Millis{} ? bag.hung->first : line.first;
                last = bag.down;
            }
            if (last == Millis{})
                continue;
            count(line, last);
            m_day.lines.push_back(line);
        }
    }

    void count(LineLife& line, Millis last)
    {
        const auto perMinute = whole(15, 110);
        std::int64_t total = 0, atNeedle = 0, atDose = 0;
        std::int64_t needleDue = whole(600, 1400), doseDue = whole(3500, 5600);
        Millis doseAt = line.first;
        Millis patience = usually(60min, 100min, 30, 140min);
        for (Millis at = line.first + 1min; at < last; at += between(1min, 5min)) {
            total += perMinute * whole(1, 4);
            line.counts.emplace_back(free(at), total);
            if (total - atNeedle >= needleDue) {
                line.needles.push_back(free(at + between(2s, 20s)));
                atNeedle = total;
                needleDue = whole(600, 1400);
            }
            if (total - atDose >= doseDue || at - doseAt >= patience) {
                line.doseChecks.push_back(free(at + between(22s, 50s)));
                atDose = total;
                doseAt = at;
                patience = usually(60min, 100min, 30, 140min);
            }
        }
    }

    // --- the bath, the plan, the station ---

    void close()
    {
        Millis last{};
        for (const BagLife& bag : m_day.bags)
            last = std::max(last, bag.down);
        m_day.closed = free(last + between(2min, 12min));
    }

    void makeReadings()
    {
        constexpr std::array kFaults{ReadingFault::Lost, ReadingFault::OpenLine,
                                     ReadingFault::Empty, ReadingFault::CheckFailed,
                                     ReadingFault::PowerOn};
        Millis at = m_day.opened + between(1min, 11min);
        while (at < m_day.closed - 2min) {
            const auto kind = whole(1, 100);
            const bool bad = kind > 70;
            if (kind <= 70)
                m_day.readings.emplace_back(free(at), Verdict::Inside);
            else if (kind <= 95)
                m_day.readings.emplace_back(free(at),
                                            kind <= 82 ? Verdict::Undecided : Verdict::Outside);
            else
                m_day.readings.emplace_back(free(at),
                                            kFaults[static_cast<std::size_t>(whole(0, 4))]);
            at += bad ? between(62s, 4min) : usually(2min, 9min, 25, 20min);
        }
        m_day.readings.emplace_back(free(std::max(at, m_day.closed - 61s)), Verdict::Inside);
        m_day.closed = free(m_day.readings.back().first + 10s);
        if (chance(20))
            m_day.newWater.push_back(free(between(m_day.opened + 1min, m_day.closed - 1min)));
    }

    void makePlans()
    {
        Millis before = m_day.opened;
        for (const PullLife& pull : m_day.pulls) {
            if (chance(70) && pull.first() - before > 10s)
                m_day.plans.emplace_back(free(between(before + 1s, pull.first() - 2s)),
                                         pull.first() + between(-9min, 9min));
            before = pull.closed();
        }
        if (chance(30))
            m_day.plans.emplace_back(free(between(before + 1s, m_day.closed - 1s)),
                                     before + between(5min, 40min));
    }

    std::vector<Span> spans(int percent, Millis shortest, Millis longest)
    {
        if (!chance(percent))
            return {};
        const Millis from = free(between(m_day.opened + 1s, m_day.closed - longest - 5s));
        return {Span{from, free(from + between(shortest, longest))}};
    }

    void makeTrouble()
    {
        m_day.soundLost = spans(15, 2s, 4min);
        m_day.storeFailed = spans(15, 1s, 10min);
        m_day.clockStepped = spans(20, 1s, 3min);
    }

    bool severalAreOut(Millis at) const
    {
        return std::ranges::any_of(m_day.pulls, [&](const PullLife& pull) {
            return pull.ampoules.size() > 1 && pull.first() <= at && at <= pull.closed();
        });
    }

    bool inPull(Millis at) const
    {
        return std::ranges::any_of(m_day.pulls, [&](const PullLife& pull) {
            return pull.first() <= at && at <= pull.closed();
        });
    }

    /// In a pause between two taps; every other one in mid-pull.
    void makeRestarts()
    {
        const bool inMidPull = chance(50);
        const bool powerCut = chance(50);
        const Millis shortest = powerCut && !inMidPull ? Millis(50s) : Millis(8s);
        if (!chance(50))
            return;
        const std::vector<Millis> taps(m_taken.begin(), m_taken.end());
        std::vector<Restart> fits;
        for (std::size_t i = 1; i < taps.size() && taps[i] < m_day.closed; ++i) {
            const bool pause = taps[i - 1] > m_day.opened && taps[i] - taps[i - 1] >= shortest;
            const bool wanted = inPull(taps[i - 1]) == inMidPull;
            const bool cutCounts = powerCut && !severalAreOut(taps[i - 1]);
            if (pause && wanted)
                fits.push_back({taps[i - 1] + 1s, taps[i] - 1s, cutCounts});
        }
        if (!fits.empty())
            m_day.restarts.push_back(
                fits[static_cast<std::size_t>(whole(0, std::ssize(fits) - 1))]);
    }

    std::mt19937 m_random;
    std::set<Millis> m_taken;
    std::map<std::string, Millis> m_lineFree;
    Day m_day;
};

}  // namespace

Millis PullLife::first() const { return std::ranges::min(ampoules, {}, &AmpouleLife::out).out; }
Millis PullLife::closed() const { return std::ranges::max(ampoules, {}, &AmpouleLife::end).end; }

Day dayFrom(unsigned seed) { return Maker(seed).make(); }

}  // namespace bathside::test
