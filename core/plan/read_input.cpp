#include "core/plan/read_input.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

#include "core/base/day.h"
#include "core/card/strict_json.h"

namespace bathside::plan {
namespace {

constexpr std::size_t kLongestName = 80;
constexpr std::size_t kLongestTime = 40;
constexpr std::size_t kMostLines = 50;
constexpr std::size_t kMostOf = 100;  // breaks, sizes, components, lots, bags that are there
constexpr Count kMostPreparers = 100;
constexpr double kMicroLitresPerMl = 1000;
constexpr double kMillisPerMinute = 60000;
constexpr NumberRange kVolume{0, 100000, "mL"};
constexpr NumberRange kMinutes{0, 1440, "min"};
constexpr WholeRange kBirds{0, 1000000, "birds"};
constexpr WholeRange kRate{1, 1000000, "birds an hour"};
constexpr WholeRange kDoses{1, 1000000, "doses"};
constexpr WholeRange kCount{0, 1000000, ""};
constexpr auto kDefaultIdle = std::chrono::minutes(10);

/// A decimal that stands for a whole number of small units; none: the key is missing or refused.
std::optional<std::int64_t> wholeUnits(JsonObject& object, std::string_view key, double perUnit,
                                       const NumberRange& range, std::string_view unit)
{
    const auto value = object.numberIfAny(key, range);
    if (!value)
        return std::nullopt;
    const std::int64_t units = std::llround(*value * perUnit);
    if (static_cast<double>(units) / perUnit == *value)
        return units;
    object.refuse(key, "a whole number of " + std::string(unit));
    return std::nullopt;
}

std::optional<MicroLitres> volumeIfAny(JsonObject& object, std::string_view key)
{
    const auto volume = wholeUnits(object, key, kMicroLitresPerMl, kVolume, "µL");
    return volume ? std::optional(MicroLitres{*volume}) : std::nullopt;
}

MicroLitres volume(JsonObject& object, std::string_view key)
{
    if (!object.has(key))
        object.number(key, kVolume);
    return volumeIfAny(object, key).value_or(MicroLitres{});
}

std::optional<Millis> minutesIfAny(JsonObject& object, std::string_view key)
{
    const auto time = wholeUnits(object, key, kMillisPerMinute, kMinutes, "ms");
    return time ? std::optional(Millis(*time)) : std::nullopt;
}

Millis minutes(JsonObject& object, std::string_view key)
{
    if (!object.has(key))
        object.number(key, kMinutes);
    return minutesIfAny(object, key).value_or(Millis(0));
}

std::optional<DayTime> timeIfAny(JsonObject& object, std::string_view key)
{
    const auto text = object.textIfAny(key, kLongestTime);
    const auto at = timeOfDayFrom(text.value_or(""));
    if (text && !at)
        object.refuse(key, "a time of the day, HH:MM:SS or HH:MM:SS.mmm, before 48:00:00");
    return at;
}

DayTime time(JsonObject& object, std::string_view key)
{
    if (!object.has(key))
        object.text(key, kLongestTime);
    return timeIfAny(object, key).value_or(DayTime(0));
}

std::chrono::sys_days day(JsonObject& object, std::string_view key)
{
    const auto date = dayFrom(object.text(key, kLongestTime));
    if (!date)
        object.refuse(key, "a day, YYYY-MM-DD");
    return date.value_or(std::chrono::sys_days());
}

Break breakIn(JsonObject& object)
{
    const Break found{time(object, "from"), time(object, "to")};
    if (found.to < found.from)
        object.refuse("to", "a time not before \"from\" (past midnight: 24:10:00)");
    object.noOthers();
    return found;
}

MadeBag openBagIn(JsonObject& object)
{
    MadeBag bag{volume(object, "volume_ml"), volume(object, "left_ml"),
                time(object, "first_in_diluent")};
    if (bag.left > bag.volume)
        object.refuse("left_ml", "at most the bag's volume");
    object.noOthers();
    return bag;
}

MadeBag mixedBagIn(JsonObject& object)
{
    const MicroLitres whole = volume(object, "volume_ml");
    const MadeBag bag{whole, whole, time(object, "first_in_diluent")};
    object.noOthers();
    return bag;
}

void readBagsOf(Line& line, JsonObject& object)
{
    if (auto open = object.objectIfAny("open_bag"))
        line.openBag = openBagIn(*open);
    for (JsonObject& bag : object.objectsIfAny("mixed_bags", kMostOf))
        line.mixedBags.push_back(mixedBagIn(bag));
    std::ranges::stable_sort(line.mixedBags, {}, &MadeBag::firstInDiluent);
}

Line lineIn(JsonObject& object)
{
    Line line;
    line.name = object.text("name", kLongestName);
    line.birds = object.whole("birds", kBirds);
    line.birdsDone = object.wholeIfAny("birds_done", kBirds).value_or(0);
    line.ratePerHour = object.whole("rate_per_hour", kRate);
    line.start = time(object, "start");
    for (JsonObject& pause : object.objectsIfAny("breaks", kMostOf))
        line.breaks.push_back(breakIn(pause));
    readBagsOf(line, object);
    object.noOthers();
    return line;
}

BagStock bagStockIn(JsonObject& object)
{
    const BagStock stock{volume(object, "volume_ml"), object.wholeIfAny("count", kCount)};
    object.noOthers();
    return stock;
}

Lot lotIn(JsonObject& object)
{
    const Lot lot{object.text("lot", kLongestName), object.whole("doses", kDoses),
                  object.wholeIfAny("count", kCount), day(object, "expires")};
    object.noOthers();
    return lot;
}

Component componentIn(JsonObject& object)
{
    Component component{object.text("component", kLongestName), {}};
    for (JsonObject& lot : object.objects("ampoules", 0, kMostOf))
        component.lots.push_back(lotIn(lot));
    object.noOthers();
    return component;
}

void readTimes(DayInput& input, JsonObject& root)
{
    const auto orZero = [&](std::string_view key) {
        return minutesIfAny(root, key).value_or(Millis(0));
    };
    input.useLimit = minutes(root, "use_limit_min");
    if (input.useLimit == Millis(0))
        root.refuse("use_limit_min", "a number above 0 and at most 1440 min");
    input.diluteTime = orZero("dilute_min");
    input.hangTime = orZero("hang_min");
    input.changeover = orZero("changeover_min");
    input.benchSlack = orZero("bench_slack_min");
    input.longestIdle = minutesIfAny(root, "idle_max_min").value_or(kDefaultIdle);
    input.prepareTime = minutes(root, "prepare_min");
    input.now = timeIfAny(root, "now");
}

void readVolumes(DayInput& input, JsonObject& root)
{
    input.dose = volume(root, "dose_ml");
    if (input.dose == MicroLitres{0})
        root.refuse("dose_ml", "a number above 0 and at most 100000 mL");
    input.residual = volumeIfAny(root, "bag_residual_ml").value_or(MicroLitres{});
    input.prime = volumeIfAny(root, "line_prime_ml").value_or(MicroLitres{});
}

/// What names things must name one: answers speak of lines and components by name.
template <typename Named>
void refuseRepeated(const std::vector<Named>& all, std::vector<JsonObject>& objects,
                    std::string_view key)
{
    for (std::size_t i = 0; i < all.size(); ++i)
        if (std::ranges::count(all.begin(), all.begin() + static_cast<std::ptrdiff_t>(i),
                               all[i].name, &Named::name) > 0)
            objects[i].refuse(key, "a name that no other has");
}

void readLists(DayInput& input, JsonObject& root)
{
    auto lines = root.objects("lines", 1, kMostLines);
    for (JsonObject& line : lines)
        input.lines.push_back(lineIn(line));
    refuseRepeated(input.lines, lines, "name");
    for (JsonObject& bag : root.objects("bags", 0, kMostOf))
        input.bags.push_back(bagStockIn(bag));
    auto components = root.objects("recipe", 1, kMostOf);
    for (JsonObject& component : components)
        input.recipe.push_back(componentIn(component));
    refuseRepeated(input.recipe, components, "component");
}

}  // namespace

Result<DayInput, DocumentFault> dayInputFrom(std::string_view document)
{
    StrictJson json(document);
    JsonObject root = json.root();
    DayInput input;
    input.day = day(root, "day");
    readVolumes(input, root);
    readTimes(input, root);
    input.preparers =
        static_cast<std::size_t>(root.wholeIfAny("preparers", {1, kMostPreparers, ""}).value_or(1));
    readLists(input, root);
    root.noOthers();
    if (json.fault())
        return failure(*json.fault());
    return input;
}

}  // namespace bathside::plan
