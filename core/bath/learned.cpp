#include "core/bath/learned.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include <nlohmann/json.hpp>

#include "core/bath/thaw_film.h"
#include "core/card/strict_json.h"

namespace bathside {
namespace {

using Json = nlohmann::ordered_json;

constexpr double kThousand = 1e3;
constexpr double kMetre = 1e6, kCubicMetre = 1e9;  // in µm and in µL

std::int64_t wholeOf(double value, double units) { return std::llround(value * units); }

/// Beside what water flowing past can bring about, as the correlation is good to 20 %.
bool isPlausible(double film, const std::vector<LoggedThaw>& opens)
{
    constexpr double kGoodTo = 0.2;
    double celsius = 0;
    for (const LoggedThaw& open : opens)
        celsius += open.bath / static_cast<double>(opens.size());
    const Interval range = plausibleFilm(celsius, opens.back().shape.diameter);
    return film >= (1 - kGoodTo) * range.low && film <= (1 + kGoodTo) * range.high;
}

// --- the document --------------------------------------------------------------------------------

Json jsonOf(const LoggedDip& dip)
{
    return {{"ampoules", dip.ampoules},
            {"start_mc", wholeOf(dip.start, kThousand)},
            {"end_mc", wholeOf(dip.end, kThousand)}};
}

Json jsonOf(const LoggedThaw& open)
{
    return {{"bath_mc", wholeOf(open.bath, kThousand)},
            {"opened_ms", wholeOf(open.slush, kThousand)},
            {"diameter_um", wholeOf(open.shape.diameter, kMetre)},
            {"wall_um", wholeOf(open.shape.wall, kMetre)},
            {"fill_ul", wholeOf(open.shape.fill, kCubicMetre)}};
}

template <typename T>
Json listOf(const std::vector<T>& all)
{
    Json list = Json::array();
    for (const T& one : all)
        list.push_back(jsonOf(one));
    return list;
}

constexpr WholeRange kAnyFigure{0, 1'000'000'000, ""};

/// Pulls that disagree may leave an interval without an end to speak of: it is told as the range's.
std::int64_t figureOf(double value, double units)
{
    return wholeOf(std::clamp(value * units, 0.0, static_cast<double>(kAnyFigure.to)), 1);
}

/// `units` of the figure in one of the document's.
Json jsonOf(const LearnedFigure& figure, double units)
{
    Json json{{"stand", nameOf(figure.stand)},
              {"pulls", figure.pulls},
              {"value", figureOf(figure.value, units)},
              {"rms", figureOf(figure.rms, kThousand)}};
    if (figure.interval) {
        json["low"] = figureOf(figure.interval->low, units);
        json["high"] = figureOf(figure.interval->high, units);
    }
    return json;
}

Json jsonOf(const SlushScale& cue)
{
    Json points = Json::array();
    for (const SlushScale::Point& point : cue.points())
        points.push_back({{"bath_mc", point.bath.count}, {"slush_ms", point.slush.count()}});
    return {{"usual_ms", cue.usual().count()}, {"at", std::move(points)}};
}

constexpr WholeRange kBath{-10'000, 100'000, "m°C"};
constexpr WholeRange kMostMs{1, 86'400'000, "ms"};

/// Else its taps tell of no thaw: two at once, or one of another day.
bool isOfThaw(const LoggedThaw& open)
{
    const auto after = wholeOf(open.slush, kThousand);
    return after >= kMostMs.from && after <= kMostMs.to;
}

double thousandthsIn(JsonObject& object, std::string_view key, const WholeRange& range)
{
    return static_cast<double>(object.whole(key, range)) / kThousand;
}

LoggedDip dipIn(JsonObject& object)
{
    LoggedDip dip;
    dip.ampoules = static_cast<int>(object.whole("ampoules", {1, 100, ""}));
    dip.start = thousandthsIn(object, "start_mc", kBath);
    dip.end = thousandthsIn(object, "end_mc", kBath);
    object.noOthers();
    return dip;
}

LoggedThaw openIn(JsonObject& object)
{
    const auto length = [&object](std::string_view key) {
        return static_cast<double>(object.whole(key, {1, 40'000, "µm"})) / kMetre;
    };
    LoggedThaw open;
    open.bath = thousandthsIn(object, "bath_mc", kBath);
    open.slush = thousandthsIn(object, "opened_ms", kMostMs);
    open.shape = {length("diameter_um"), length("wall_um"),
                  static_cast<double>(object.whole("fill_ul", {1, 50'000, "µL"})) / kCubicMetre};
    object.noOthers();
    return open;
}

std::optional<LearnedFigure> figureIn(JsonObject& root, std::string_view key, double units)
{
    auto object = root.objectIfAny(key);
    if (!object)
        return std::nullopt;
    LearnedFigure figure;
    figure.stand = object->word<FitStand>("stand");
    figure.pulls = static_cast<int>(object->whole("pulls", {1, 1'000, ""}));
    figure.value = static_cast<double>(object->whole("value", {1, kAnyFigure.to, ""})) / units;
    figure.rms = thousandthsIn(*object, "rms", kAnyFigure);
    if (object->has("low"))
        figure.interval = {static_cast<double>(object->whole("low", kAnyFigure)) / units,
                           static_cast<double>(object->whole("high", kAnyFigure)) / units};
    object->noOthers();
    return figure;
}

std::shared_ptr<const SlushScale> cueIn(JsonObject& root)
{
    auto object = root.objectIfAny("cue");
    if (!object)
        return nullptr;
    const Millis usual(object->whole("usual_ms", kMostMs));
    std::vector<SlushScale::Point> points;
    for (JsonObject& point : object->objects("at", 1, 40)) {
        const MilliCelsius bath{point.whole("bath_mc", kBath)};
        if (!points.empty() && bath <= points.back().bath) {
            point.refuse("bath_mc", "more than the one before");
            return nullptr;
        }
        points.push_back({bath, Millis(point.whole("slush_ms", kMostMs))});
        point.noOthers();
    }
    object->noOthers();
    const bool isWhole =
        usual > Millis::zero() && !points.empty() && points.front().slush > Millis::zero();
    return isWhole ? std::make_shared<const SlushScale>(usual, std::move(points)) : nullptr;
}

}  // namespace

std::optional<LearnedFigure> learnedMass(const HeatRules& heat, const std::vector<LoggedDip>& dips)
{
    const auto fit = fittedMass(budgetOf(heat, 0), dips);
    if (!fit)
        return std::nullopt;
    const int pulls = static_cast<int>(dips.size());
    const auto sureTo = fit->interval ? std::optional(std::max(fit->mass - fit->interval->low,
                                                               fit->interval->high - fit->mass) /
                                                      fit->mass)
                                      : std::nullopt;
    return LearnedFigure{fitStand(pulls, sureTo, kWidestMass), pulls, fit->mass, fit->interval,
                         fit->rms};
}

// Times that no film coefficient of the range gives are told by the range's end.
std::optional<LearnedFigure> learnedFilm(const HeatRules& heat,
                                         const std::vector<LoggedThaw>& opens)
{
    const int pulls = static_cast<int>(opens.size());
    const auto fit = fittedFilm(thawSettingOf(heat, 0), opens);
    if (!fit && fit.error() == FilmFault::NoData)
        return std::nullopt;
    if (!fit)
        return LearnedFigure{pulls < kFewestPulls ? FitStand::TooFew : FitStand::Implausible,
                             pulls,
                             fit.error() == FilmFault::TooFast ? kFilmRange.high : kFilmRange.low,
                             {},
                             0};
    const FitStand stand = fitStand(pulls, fit->sureTo, kWidestTime);
    const bool isOdd = stand == FitStand::Used && !isPlausible(fit->film, opens);
    return LearnedFigure{isOdd ? FitStand::Implausible : stand, pulls, fit->film, fit->interval,
                         fit->rms};
}

HeatRules heatWith(HeatRules heat, const std::optional<LearnedFigure>& mass,
                   const std::optional<LearnedFigure>& film)
{
    if (mass && mass->stand == FitStand::Used)
        heat.waterGrams = wholeOf(mass->value, kThousand);
    if (film && film->stand == FitStand::Used)
        heat.film = wholeOf(film->value, 1);
    return heat;
}

BathLearned learnedFrom(std::vector<LoggedDip> dips, std::vector<LoggedThaw> opens,
                        const Card& card)
{
    std::erase_if(opens, [](const LoggedThaw& open) { return !isOfThaw(open); });
    keepLast(dips);
    keepLast(opens);
    const HeatRules& heat = card.content().heat;
    BathLearned learned{.dips = std::move(dips),
                        .opens = std::move(opens),
                        .mass = {},
                        .film = {},
                        .card = card.hash(),
                        .cue = {}};
    learned.mass = learnedMass(heat, learned.dips);
    learned.film = learnedFilm(heat, learned.opens);
    if (learned.film && learned.film->stand == FitStand::Used)
        learned.cue = std::make_shared<const SlushScale>(heat, card.content().bath.target,
                                                         learned.film->value);
    return learned;
}

std::string documentOf(const BathLearned& learned)
{
    Json json{{"card", learned.card.text},
              {"dips", listOf(learned.dips)},
              {"opens", listOf(learned.opens)}};
    if (learned.mass)
        json["mass_g"] = jsonOf(*learned.mass, kThousand);
    if (learned.film)
        json["film_w_m2k"] = jsonOf(*learned.film, 1);
    if (learned.cue)
        json["cue"] = jsonOf(*learned.cue);
    return json.dump();
}

Result<BathLearned, DocumentFault> bathLearnedFrom(std::string_view document)
{
    StrictJson json(document);
    JsonObject root = json.root();
    BathLearned learned;
    learned.card = {root.text("card", 64)};
    for (JsonObject& dip : root.objects("dips", 0, kMostLearned))
        learned.dips.push_back(dipIn(dip));
    for (JsonObject& open : root.objects("opens", 0, kMostLearned))
        learned.opens.push_back(openIn(open));
    learned.mass = figureIn(root, "mass_g", kThousand);
    learned.film = figureIn(root, "film_w_m2k", 1);
    learned.cue = cueIn(root);
    root.noOthers();
    if (json.fault())
        return failure(*json.fault());
    return learned;
}

}  // namespace bathside
