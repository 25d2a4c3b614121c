#include "core/card/read.h"

#include <algorithm>
#include <functional>
#include <set>
#include <utility>

#include "core/card/read_check_limits.h"
#include "core/card/read_limits.h"
#include "core/card/read_live_cells.h"
#include "core/card/strict_json.h"
#include "core/trail/hash.h"

namespace bathside {
namespace {

constexpr std::int64_t kSchema = 1;
constexpr std::size_t kLongestName = 80;

constexpr WholeRange kMilliCelsius{-50'000, 150'000, "m°C"};
constexpr WholeRange kDifference{1, 50'000, "m°C"};
constexpr WholeRange kMicroLitres{1, 10'000'000, "µL"};
constexpr WholeRange kFromNone{0, 10'000'000, "µL"};
constexpr WholeRange kWithinADay{0, 86'400'000, "ms"};
constexpr WholeRange kHourMs{0, 3'600'000, "ms"};
constexpr WholeRange kMinuteMs{0, 60'000, "ms"};

Millis millis(JsonObject& object, std::string_view key, const WholeRange& range)
{
    return Millis(object.whole(key, range));
}

MilliCelsius milliCelsius(JsonObject& object, std::string_view key, const WholeRange& range)
{
    return {object.whole(key, range)};
}

bool isLanguage(const std::string& text)
{
    return text.size() == 2 &&
           std::ranges::all_of(text, [](char c) { return c >= 'a' && c <= 'z'; });
}

bool isSlug(const std::string& text)
{
    return std::ranges::all_of(
        text, [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; });
}

}  // namespace

// Reads the document from top to bottom into the card's content.
class CardReader {
public:
    explicit CardReader(std::string_view document) : m_json(document) {}

    [[nodiscard]] Result<Card, CardFault> read()
    {
        JsonObject root = m_json.root();
        readAll(root);
        if (m_json.fault())
            return failure(*m_json.fault());
        CardHash hash{toHex(sha256(m_json.canonical()))};
        return Card(std::move(m_content), m_json.canonical(), std::move(hash));
    }

private:
    void readAll(JsonObject& root)
    {
        root.whole("schema", {kSchema, kSchema, ""});
        m_content.name = root.text("name", kLongestName);
        m_content.version = root.whole("version", {1, 1'000'000, ""});
        m_content.site = root.text("site", kLongestName);
        readLanguages(root);
        readRecipe(root);
        m_content.limits = limitsFrom(root.object("limits"), m_content.languages);
        readBath(root.object("bath"));
        readDiluent(root.object("diluent"));
        readMakeUp(root.object("make_up"));
        readTaps(root.object("taps"));
        if (auto stores = root.objectIfAny("stores"))
            readStores(*stores);
        if (auto plan = root.objectIfAny("plan"))
            readPlan(*plan);
        if (auto heat = root.objectIfAny("heat"))
            readHeat(*heat);
        if (auto cells = root.objectIfAny("live_cells"))
            m_content.liveCells = liveCellsFrom(*cells);
        if (auto limits = root.objectIfAny("check_limits"))
            m_content.checkRules = checkLimitsFrom(*limits, m_content.languages);
        readChecks(root);
        if (auto review = root.objectIfAny("review"))
            readReview(*review);
        root.noOthers();
    }

    void readLanguages(JsonObject& root)
    {
        m_content.languages = root.texts("languages", 10, 2);
        const auto& all = m_content.languages;
        const std::set<std::string> different(all.begin(), all.end());
        if (!std::ranges::all_of(all, isLanguage) || !different.contains("en") ||
            different.size() != all.size())
            root.refuse("languages", "two-letter codes, each once, \"en\" among them");
    }

    void readRecipe(JsonObject& root)
    {
        for (JsonObject& part : root.objects("recipe", 1, 6)) {
            Component component{{part.text("component", 40)}, {}, {}};
            component.exposure = ownTimes(part, "exposure");
            component.thaw = ownTimes(part, "thaw");
            const bool known = std::ranges::any_of(
                m_content.recipe, [&](const Component& other) { return other.id == component.id; });
            if (known)
                part.refuse("component", "each component once");
            part.noOthers();
            m_content.recipe.push_back(std::move(component));
        }
    }

    static std::optional<Thresholds<Millis>> ownTimes(JsonObject& part, std::string_view key)
    {
        auto object = part.objectIfAny(key);
        if (!object)
            return std::nullopt;
        const auto times = ampouleTimesFrom(*object);
        object->noOthers();
        return times;
    }

    void readBath(JsonObject bath)
    {
        BathRules& rules = m_content.bath;
        rules.target = milliCelsius(bath, "target_mc", kMilliCelsius);
        rules.tolerance = milliCelsius(bath, "tolerance_mc", kDifference);
        rules.guardPercent = bath.whole("guard_percent", {0, 1000, "%"});
        rules.settling = millis(bath, "settling_ms", kWithinADay);
        rules.steady = milliCelsius(bath, "steady_mc_per_min", kDifference);
        rules.fastest = milliCelsius(bath, "fastest_mc_per_s", kDifference);
        rules.lowest = milliCelsius(bath, "lowest_mc", kMilliCelsius);
        rules.highest = milliCelsius(bath, "highest_mc", kMilliCelsius);
        if (rules.lowest > rules.target - rules.tolerance)
            bath.refuse("lowest_mc", "at most target_mc less tolerance_mc");
        if (rules.highest < rules.target + rules.tolerance)
            bath.refuse("highest_mc", "at least target_mc and tolerance_mc together");
        end(bath, "bath");
    }

    void readDiluent(JsonObject diluent)
    {
        m_content.diluentLow = milliCelsius(diluent, "lowest_mc", kMilliCelsius);
        m_content.diluentHigh = milliCelsius(diluent, "highest_mc", kMilliCelsius);
        if (m_content.diluentLow > m_content.diluentHigh)
            diluent.refuse("lowest_mc", "at most highest_mc");
        end(diluent, "diluent");
    }

    void readMakeUp(JsonObject makeUp)
    {
        readVolumes(makeUp);
        m_content.ampoulesPerPull =
            static_cast<int>(makeUp.whole("ampoules_per_pull", {1, 12, ""}));
        m_content.handling = millis(makeUp, "handling_ms", kMinuteMs);
        m_content.shortestThaw = millis(makeUp, "shortest_thaw_ms", kHourMs);
        m_content.windowTail = millis(makeUp, "window_tail_ms", kHourMs);
        m_content.pullSoon = millis(makeUp, "pull_soon_ms", kWithinADay);
        if (m_content.shortestThaw >
            m_content.limits[static_cast<std::size_t>(LimitName::Thaw)].time.at)
            makeUp.refuse("shortest_thaw_ms", "at most limits.thaw.at_ms");
        end(makeUp, "make_up");
    }

    void readVolumes(JsonObject& makeUp)
    {
        for (const std::int64_t volume : makeUp.wholes("bag_volumes_ul", 12, kMicroLitres))
            m_content.bagVolumes.push_back({volume});
        if (!std::ranges::is_sorted(m_content.bagVolumes, std::less_equal()))
            makeUp.refuse("bag_volumes_ul", "each volume once, the smallest first");
        m_content.dose = {makeUp.whole("dose_ul", kMicroLitres)};
        m_content.syringe = {makeUp.whole("syringe_ul", kMicroLitres)};
        m_content.diluentDrawn = {makeUp.whole("diluent_drawn_ul", kMicroLitres)};
        if (m_content.diluentDrawn > m_content.syringe)
            makeUp.refuse("diluent_drawn_ul", "at most syringe_ul");
    }

    void readTaps(JsonObject taps)
    {
        m_content.sameTap = millis(taps, "same_tap_ms", {0, 2000, "ms"});
        m_content.takeBackFree = millis(taps, "take_back_free_ms", kHourMs);
        m_content.hushInWindow = millis(taps, "hush_in_window_ms", kMinuteMs);
        m_content.hushOutside = millis(taps, "hush_outside_ms", kHourMs);
        end(taps, "taps");
    }

    void readStores(JsonObject& stores)
    {
        StoreRules& rules = m_content.stores;
        const auto read = [&stores](std::string_view key, std::int64_t most, std::string_view unit,
                                    std::int64_t& value) {
            value = stores.wholeIfAny(key, {0, most, unit}).value_or(value);
        };
        read("ampoules_off", 1000, "", rules.ampoulesOff);
        read("bags_off", 1000, "", rules.bagsOff);
        read("consumables_off", 10'000, "", rules.consumablesOff);
        read("doses_off_percent", 100, "%", rules.dosesOffPercent);
        read("volume_off_percent", 100, "%", rules.volumeOffPercent);
        read("near_expiry_days", 3650, "days", rules.nearExpiryDays);
        read("prime_loss_ul", kMicroLitres.to, "µL", rules.primeLoss.count);
        end(stores, "stores");
    }

    void readPlan(JsonObject& plan)
    {
        PlanRules& rules = m_content.plan;
        const auto read = [&plan](std::string_view key, Millis& value) {
            value = Millis(plan.wholeIfAny(key, kWithinADay).value_or(value.count()));
        };
        read("dilute_ms", rules.dilute);
        read("hang_ms", rules.hang);
        read("changeover_ms", rules.changeover);
        read("bench_slack_ms", rules.slack);
        read("longest_idle_ms", rules.longestIdle);
        read("prepare_ms", rules.prepare);
        rules.residual = {plan.wholeIfAny("bag_residual_ul", kFromNone).value_or(0)};
        rules.preparers = plan.wholeIfAny("preparers", {1, 20, ""}).value_or(rules.preparers);
        rules.dosesPerAmpoule =
            plan.wholeIfAny("doses_per_ampoule", {1, 100'000, ""}).value_or(rules.dosesPerAmpoule);
        end(plan, "plan");
    }

    void readHeat(JsonObject& heat)
    {
        HeatRules& rules = m_content.heat;
        const auto read = [&heat](std::string_view key, const WholeRange& range,
                                  std::int64_t& value) {
            value = heat.wholeIfAny(key, range).value_or(value);
        };
        read("water_g", {100, 1'000'000, "g"}, rules.waterGrams);
        read("heater_w", {0, 100'000, "W"}, rules.heaterWatts);
        read("holding_w", {0, 100'000, "W"}, rules.holdingWatts);
        read("uptake_ms", {1'000, 600'000, "ms"}, rules.uptakeMs);
        read("fill_ul", {100, 50'000, "µL"}, rules.fill.count);
        read("glass_mg", {0, 100'000, "mg"}, rules.glassMilligrams);
        read("diameter_um", {3'000, 40'000, "µm"}, rules.diameterMicrometres);
        read("wall_um", {100, 3'000, "µm"}, rules.wallMicrometres);
        read("freezing_mc", {-10'000, -500, "m°C"}, rules.freezing.count);
        read("film_w_m2k", {50, 20'000, "W/(m² K)"}, rules.film);
        read("cue_lowest_mc", {10'000, 60'000, "m°C"}, rules.cueLowest.count);
        read("cue_highest_mc", {10'000, 60'000, "m°C"}, rules.cueHighest.count);
        if (rules.wallMicrometres > rules.diameterMicrometres / 4)
            heat.refuse("wall_um", "at most a quarter of diameter_um");
        if (rules.cueLowest > rules.cueHighest)
            heat.refuse("cue_lowest_mc", "at most cue_highest_mc");
        end(heat, "heat");
    }

    void readChecks(JsonObject& root)
    {
        std::set<CheckId> known;
        for (JsonObject& line : root.objects("checks", 0, 40)) {
            Check check{{line.text("check", 40)}, {}, line.flag("blocking")};
            check.words = wordsFrom(line, "words", m_content.languages);
            if (!isSlug(check.id.text))
                line.refuse("check", "lower-case letters, digits and hyphens");
            if (!known.insert(check.id).second)
                line.refuse("check", "each check once");
            line.noOthers();
            m_content.checks.push_back(std::move(check));
        }
    }

    void readReview(JsonObject& review)
    {
        std::set<std::string> known;
        for (JsonObject& line : review.objects("causes", 1, 20)) {
            CauseOnCard cause{line.text("cause", 40), {}};
            cause.words = wordsFrom(line, "words", m_content.languages);
            if (!known.insert(cause.id).second)
                line.refuse("cause", "each cause once");
            line.noOthers();
            m_content.causes.push_back(std::move(cause));
        }
        end(review, "review");
    }

    void end(JsonObject& group, const std::string& name)
    {
        m_content.sources[name] = group.text("source", kLongestSource);
        group.noOthers();
    }

    StrictJson m_json;
    Card::Content m_content;
};

Result<Card, CardFault> cardFrom(std::string_view document) { return CardReader(document).read(); }

}  // namespace bathside
