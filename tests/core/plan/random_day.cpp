#include "tests/core/plan/random_day.h"

#include <algorithm>
#include <random>

namespace bathside::plan::test {
namespace {

class Maker {
public:
    explicit Maker(unsigned seed) : m_random(seed) {}

    DayInput make()
    {
        DayInput input;
        input.day = std::chrono::sys_days(std::chrono::days(20'517));
        input.dose = {one({100, 200, 250, 333})};
        setTimes(input);
        input.residual = {one({0, 5000, 8000})};
        input.prime = {one({0, 0, 10'000, 20'000})};
        input.preparers = static_cast<std::size_t>(one({1, 2}));
        for (Count sizes = between(1, 3); sizes > 0; --sizes)
            input.bags.push_back({{one({200, 250, 400, 500, 800, 1000}) * 1000}, count(1, 6)});
        for (Count components = between(1, 2); components > 0; --components)
            input.recipe.push_back({"component " + std::to_string(components), lots()});
        for (Count lines = between(1, 2); lines > 0; --lines)
            input.lines.push_back(line(input, lines));
        return input;
    }

    void makeMiddle(DayInput& input)
    {
        const DayTime now = std::chrono::hours(7) + Millis(between(0, 7'200'000));
        if (between(0, 3) > 0)
            input.now = now;
        for (Line& line : input.lines)
            addReady(input, now, line);
    }

private:
    MadeBag madeBag(DayTime now)
    {
        const MicroLitres volume{one({200, 400, 500}) * 1000};
        return {volume, volume, now - Millis(between(-300'000, 4'000'000))};
    }

    void addReady(const DayInput& input, DayTime now, Line& line)
    {
        line.birdsDone = one({0, 100, line.birds / 2, line.birds, line.birds + 5});
        if (between(0, 1) == 0) {
            line.openBag = madeBag(now);
            line.openBag->left.count = between(0, line.openBag->volume.count);
        }
        for (Count mixed = between(0, 2); mixed > 0; --mixed)
            line.mixedBags.push_back(madeBag(now + input.diluteTime));
        std::ranges::sort(line.mixedBags, {}, &MadeBag::firstInDiluent);
    }

    Count between(Count least, Count most)
    {
        return least +
               static_cast<Count>(m_random() % static_cast<unsigned long>(most - least + 1));
    }

    Count one(std::initializer_list<Count> of)
    {
        return *(of.begin() + between(0, static_cast<Count>(of.size()) - 1));
    }

    Millis minutes(std::initializer_list<Count> of) { return std::chrono::minutes(one(of)); }

    std::optional<Count> count(Count least, Count most)
    {
        return between(0, 2) == 0 ? std::nullopt : std::optional(between(least, most));
    }

    void setTimes(DayInput& input)
    {
        input.useLimit = minutes({45, 60, 90});
        input.diluteTime = minutes({0, 0, 2});
        input.hangTime = minutes({0, 2, 5});
        input.changeover = one({0, 1, 60, 90, 240}) * Millis(1000);
        input.benchSlack = minutes({0, 0, 5, 10});
        input.longestIdle = minutes({0, 5, 10, 20});
        input.prepareTime = minutes({6, 8, 10, 20});
    }

    std::vector<Lot> lots()
    {
        std::vector<Lot> lots;
        for (Count number = between(1, 3); number > 0; --number)
            lots.push_back({std::string(1, static_cast<char>('A' + between(0, 2))),
                            one({500, 1000, 2000, 4000}),
                            count(1, 12),
                            {}});
        for (Lot& lot : lots)
            lot.expires = std::chrono::sys_days(std::chrono::days(20'516 + between(0, 3)));
        return lots;
    }

    std::vector<Break> breaks(DayTime start)
    {
        std::vector<Break> breaks;
        for (Count number = between(0, 3); number > 0; --number) {
            const DayTime from = start + Millis(between(-30, 180) * 60'000 + one({0, 0, 1, 999}));
            breaks.push_back({from, from + minutes({0, 1, 15, 20, 30, 75})});
        }
        if (breaks.size() > 1 && between(0, 3) == 0)
            breaks[1].from = breaks[0].to;
        return breaks;
    }

    /// Enough birds for up to six bags of the smallest size that serves any.
    Line line(const DayInput& input, Count number)
    {
        Line line;
        line.name = "line " + std::to_string(number);
        line.ratePerHour = one({600, 1500, 2200, 3000, 3600, 4001});
        line.start = std::chrono::hours(7) + Millis(between(0, 3'600'000));
        line.breaks = breaks(line.start);
        Count least = 1'000'000;
        for (const BagStock& bag : input.bags)
            least = std::min(least, (bag.volume.count - input.residual.count) / input.dose.count);
        const Count inTime = line.ratePerHour * 3 / 5;
        line.birds = between(0, 4 * std::min(least, inTime));
        return line;
    }

    std::mt19937 m_random;
};

}  // namespace

DayInput randomDay(unsigned seed) { return Maker(seed).make(); }

DayInput randomMiddleOfDay(unsigned seed)
{
    Maker maker(seed);
    DayInput input = maker.make();
    maker.makeMiddle(input);
    return input;
}

}  // namespace bathside::plan::test
