#include "core/replay/script.h"

#include <cmath>
#include <set>

#include "core/base/day.h"
#include "core/base/rfc3339.h"
#include "core/replay/verbs.h"

namespace bathside {
namespace {

constexpr std::size_t kShort = kShortText, kLong = kLongText;
constexpr WholeRange kNumbers{1, 999, ""};
constexpr WholeRange kSeqs{1, 1'000'000'000'000, ""};  // of entries
constexpr NumberRange kMillilitres{0, 100'000, "mL"};
constexpr NumberRange kCelsius{-200, 200, "°C"};

std::optional<BagId> bagIn(JsonObject& entry)
{
    return entry.has("bag") ? std::optional(BagId{entry.text("bag", kShort)}) : std::nullopt;
}

std::string textOr(JsonObject& entry, std::string_view key, std::size_t longest)
{
    return entry.has(key) ? entry.text(key, longest) : std::string();
}

bool flagOr(JsonObject& entry, std::string_view key)
{
    return entry.has(key) ? entry.flag(key) : true;
}

MicroLitres millilitres(JsonObject& entry, std::string_view key)
{
    return {std::llround(entry.number(key, kMillilitres) * 1000)};
}

WallTime instant(JsonObject& entry, std::string_view key)
{
    const auto at = fromRfc3339(entry.text(key, kShort));
    if (!at)
        entry.refuse(key, "an RFC 3339 date-time with its offset");
    return at.value_or(WallTime{});
}

std::vector<AmpouleTaken> ampoulesTaken(JsonObject& entry)
{
    std::vector<AmpouleTaken> taken;
    if (!entry.listsObjects("ampoules")) {
        for (const auto no : entry.wholes("ampoules", 99, kNumbers))
            taken.push_back({static_cast<int>(no), {}, {}});
        return taken;
    }
    for (JsonObject& one : entry.objects("ampoules", 0, 99)) {
        const auto no = one.wholeIfAny("no", kNumbers).value_or(0);
        taken.push_back({static_cast<int>(no),
                         {textOr(one, "component", kShort)},
                         {textOr(one, "lot", kShort)}});
        one.noOthers();
    }
    return taken;
}

Statement moveOn(JsonObject& entry, Step step)
{
    MoveOn move{.step = step, .ampoules = {}, .bag = {}};
    if (entry.has("ampoules")) {
        for (const auto no : entry.wholes("ampoules", 99, kNumbers))
            move.ampoules.push_back(static_cast<int>(no));
    }
    if (step == Step::Bagged)
        move.bag = bagIn(entry);
    return Intent(move);
}

Statement startBag(JsonObject& entry)
{
    StartBag start{.bag = {entry.text("bag", kShort)},
                   .volume = millilitres(entry, "volume_ml"),
                   .diluentLot = {textOr(entry, "diluent_lot", kShort)},
                   .temperature = {}};
    if (entry.has("temperature_c"))
        start.temperature =
            MilliCelsius{std::llround(entry.number("temperature_c", kCelsius) * 1000)};
    return Intent(start);
}

Statement reading(JsonObject& entry)
{
    const ProbeId probe{entry.text("probe", kShort)};
    if (entry.has("fault"))
        return Intent(TakeReading{probe, entry.word<ReadingFault>("fault")});
    return Intent(TakeReading{
        probe, MilliCelsius{std::llround(entry.number("indicated_c", kCelsius) * 1000)}});
}

Statement openShift(JsonObject& entry)
{
    const std::string at = entry.text("t", kShort);  // its date is the local day
    OpenShiftEntry open{{entry.text("zone", kShort),
                         {entry.text("person", kShort)},
                         dayFrom(std::string_view(at).substr(0, 10))},
                        false};
    if (entry.has("checks")) {
        open.allChecks = entry.text("checks", kShort) == "all-ok";
        if (!open.allChecks)
            entry.refuse("checks", "\"all-ok\"");
    }
    return open;
}

Statement correct(JsonObject& entry)
{
    return CorrectEntry{
        .of = entry.text("of", kShort),
        .ampoule = static_cast<int>(entry.wholeIfAny("ampoule", kNumbers).value_or(0)),
        .field = entry.text("field", kShort),
        .value = entry.scalar("value", kShort),
        .why = textOr(entry, "why", kLong)};
}

// --- the stores
// ------------------------------------------------------------------------------------

std::chrono::sys_days day(JsonObject& entry, std::string_view key)
{
    const auto found = dayFrom(entry.text(key, kShort));
    if (!found)
        entry.refuse(key, "a day, YYYY-MM-DD");
    return found.value_or(std::chrono::sys_days());
}

Millis timeOfDay(JsonObject& entry, std::string_view key)
{
    const auto time = timeOfDayFrom(entry.text(key, kShort));
    if (!time)
        entry.refuse(key, "a time of day, HH:MM:SS or HH:MM:SS.mmm");
    return time.value_or(Millis());
}

Stock stock(JsonObject& entry)
{
    Stock of{.kind = entry.word<StockKind>("kind"),
             .item = textOr(entry, "item", kShort),
             .lot = {textOr(entry, "lot", kShort)},
             .volume = {}};
    if (entry.has("volume_ml"))
        of.volume = millilitres(entry, "volume_ml");
    return of;
}

std::int64_t pieces(JsonObject& entry) { return entry.whole("count", {0, 1'000'000, "pieces"}); }

Statement receive(JsonObject& entry)
{
    constexpr WholeRange kPerPiece{1, 1'000'000'000, ""};
    StoreReceived line{.of = stock(entry),
                       .place = textOr(entry, "at", kLong),
                       .count = pieces(entry),
                       .doses = entry.wholeIfAny("doses", kPerPiece),
                       .expires = {},
                       .titre = entry.wholeIfAny("titre_pfu", kPerPiece),
                       .delivery = {}};
    if (entry.has("expires"))
        line.expires = day(entry, "expires");
    if (entry.has("delivery"))
        line.delivery = entry.text("delivery", kShort);
    return Intent(Receive{{std::move(line)}});
}

Statement delivery(JsonObject& entry)
{
    constexpr std::size_t kMostLines = 1'000;
    DeliveryEntry delivery{entry.text("file", kShort), {}};
    for (const std::string& line : entry.texts("csv", kMostLines, kLong))
        delivery.csv += line + "\r\n";
    return delivery;
}

std::optional<std::string> placeIfAny(JsonObject& entry)
{
    return entry.has("at") ? std::optional(entry.text("at", kLong)) : std::nullopt;
}

Statement planLine(JsonObject& entry)
{
    constexpr WholeRange kBirds{1, 10'000'000, "birds"};
    LinePlanned plan{.line = {entry.text("line", kShort)}, .breaks = {}, .removed = false};
    if (entry.has("removed") && entry.flag("removed")) {
        plan.removed = true;
        return Intent(PlanLine{plan});
    }
    plan.birds = entry.whole("birds", kBirds);
    plan.birdsPerHour = entry.whole("rate_per_hour", kBirds);
    plan.start = timeOfDay(entry, "start");
    if (entry.has("breaks")) {
        for (JsonObject& one : entry.objects("breaks", 0, 40)) {
            plan.breaks.push_back({timeOfDay(one, "from"), timeOfDay(one, "to")});
            one.noOthers();
        }
    }
    return Intent(PlanLine{plan});
}

// The verbs of a script, each with how its keys are read.
Verbs ownVerbs()
{
    using J = JsonObject&;
    return {
        {"open-shift", openShift},
        {"close-shift", [](J) { return Intent(CloseShift{}); }},
        {"duty", [](J e) { return Intent(TakeDuty{{e.text("person", kShort)}}); }},
        {"check",
         [](J e) {
             const CheckId check{e.text("name", kShort)};
             const bool ok = flagOr(e, "ok");
             const auto value =
                 e.has("value") ? std::optional(e.scalar("value", kShort)) : std::nullopt;
             return Intent(RecordCheck{check, ok, value});
         }},
        {"override",
         [](J e) {
             return Intent(OverrideCheck{{e.text("name", kShort)}, textOr(e, "why", kLong)});
         }},
        {"reading", reading},
        {"probe",
         [](J e) {
             const ProbeId probe{e.text("probe", kShort)};
             return Intent(DescribeProbe{probe, e.document("description")});
         }},
        {"water-changed", [](J e) { return Intent(ChangeWater{textOr(e, "why", kLong)}); }},
        {"start-bag", startBag},
        {"inspected",
         [](J e) {
             return Intent(InspectBag{bagIn(e), flagOr(e, "ok")});
         }},
        {"diluent-drawn",
         [](J e) {
             const auto volume =
                 e.has("volume_ml") ? std::optional(millilitres(e, "volume_ml")) : std::nullopt;
             return Intent(DrawDiluent{bagIn(e), volume});
         }},
        {"mixed", [](J e) { return Intent(MixBag{bagIn(e)}); }},
        {"hang",
         [](J e) {
             return Intent(HangBag{bagIn(e), {e.text("line", kShort)}});
         }},
        {"swirl", [](J e) { return Intent(SwirlBag{bagIn(e)}); }},
        {"hold",
         [](J e) {
             const auto bag = bagIn(e);
             const auto why = e.text("why", kLong);
             const auto reason = named<HoldReason>(why);
             return Intent(
                 HoldBag{bag, reason.value_or(HoldReason::Other), reason ? std::string() : why});
         }},
        {"release",
         [](J e) {
             return Intent(
                 ReleaseBag{bagIn(e),
                            {textOr(e, "by", kShort)},
                            textOr(e, "why", kLong),
                            e.has("of") ? std::optional(e.whole("of", kSeqs)) : std::nullopt});
         }},
        {"bag-down",
         [](J e) {
             const auto why = e.word<DownReason>("why");
             const auto left = e.has("left_ml") ? millilitres(e, "left_ml") : MicroLitres{};
             return Intent(TakeBagDown{bagIn(e), why, left});
         }},
        {"out-of-cryogen", [](J e) { return Intent(TakeOut{ampoulesTaken(e)}); }},
        {"in-bath", [](J e) { return moveOn(e, Step::Bath); }},
        {"opened", [](J e) { return moveOn(e, Step::Opened); }},
        {"in-diluent", [](J e) { return moveOn(e, Step::Diluent); }},
        {"rinsed", [](J e) { return moveOn(e, Step::Rinsed); }},
        {"in-bag", [](J e) { return moveOn(e, Step::Bagged); }},
        {"lost",
         [](J e) {
             const auto no = static_cast<int>(e.whole("ampoule", kNumbers));
             return Intent(LoseAmpoule{no, e.word<LossReason>("why")});
         }},
        {"cane-exposed",
         [](J e) {
             const auto place = e.text("place", kShort);
             return Intent(ExposeCane{
                 place, Millis(std::llround(e.number("seconds", {0, 86'400, "s"}) * 1000))});
         }},
        {"next-pull", [](J e) { return Intent(PlanPull{instant(e, "start")}); }},
        {"birds",
         [](J e) {
             const auto line = lineIn(e);
             return Intent(CountBirds{line, e.whole("count", {0, 1'000'000'000, "birds"})});
         }},
        {"needle", [](J e) { return Intent(ChangeNeedle{lineIn(e)}); }},
        {"line-stop", [](J e) { return Intent(StopLine{lineIn(e)}); }},
        {"line-go", [](J e) { return Intent(GoLine{lineIn(e)}); }},
        {"heard", [](J e) { return Intent(HearAlarm{textOr(e, "alarm", kLong)}); }},
        {"take-back", [](J e) { return Intent(TakeBack{textOr(e, "why", kLong)}); }},
        {"correct", correct},
        {"answer",
         [](J e) {
             const auto question = e.text("question", kLong);
             return Intent(Answer{question, e.scalar("choice", kShort)});
         }},
        {"scan", [](J e) { return Intent(Scan{e.text("text", kLong)}); }},
        {"note", [](J e) { return Intent(MakeNote{e.text("text", kLong)}); }},
        {"receive", receive},
        {"delivery", delivery},
        {"move-stock",
         [](J e) {
             const Stock of = stock(e);
             return Intent(
                 MoveStock{of, textOr(e, "from", kLong), textOr(e, "to", kLong), pieces(e)});
         }},
        {"count-stock",
         [](J e) {
             const Stock of = stock(e);
             return Intent(CountStock{of, textOr(e, "at", kLong), pieces(e)});
         }},
        {"discard-stock",
         [](J e) {
             const Stock of = stock(e);
             return Intent(
                 DiscardStock{of, textOr(e, "at", kLong), pieces(e), e.word<DiscardReason>("why")});
         }},
        {"quarantine",
         [](J e) {
             const Stock of = stock(e);
             return Intent(QuarantineLot{of, placeIfAny(e), textOr(e, "why", kLong)});
         }},
        {"release-lot",
         [](J e) {
             const Stock of = stock(e);
             return Intent(ReleaseLot{of, {textOr(e, "by", kShort)}, textOr(e, "why", kLong)});
         }},
        {"allow-lot",
         [](J e) {
             const Stock of = stock(e);
             return Intent(AllowLot{of, {textOr(e, "by", kShort)}, textOr(e, "why", kLong)});
         }},
        {"choose-lot",
         [](J e) {
             return Intent(
                 ChooseLot{{e.text("component", kShort)}, {e.text("lot", kShort)}, placeIfAny(e)});
         }},
        {"plan-line", planLine},
        {"restart", [](J e) { return RestartEntry{flagOr(e, "synchronised")}; }},
    };
}

const Verbs& verbs()
{
    static const Verbs all = [] {
        Verbs made = ownVerbs();
        addCheckVerbs(made);
        addPeopleVerbs(made);
        return made;
    }();
    return all;
}

std::string listOfVerbs()
{
    std::string list = "one of";
    for (const auto& [verb, reader] : verbs())
        list += (list.size() > 6 ? ", " : " ") + verb;
    return list;
}

/// The verb and what it is about: two such entries within the lock are one tap.
PlaceId placeOf(const std::string& verb, JsonObject& entry)
{
    std::string place = "script " + verb;
    for (const std::string_view key :
         {"bag",      "line", "name",   "person", "probe",   "ampoule",   "ampoules",
          "question", "of",   "kind",   "item",   "lot",     "component", "at",
          "from",     "to",   "vessel", "limit",  "subject", "meaning"}) {
        if (entry.has(key))
            place += " " + entry.textOf(key);
    }
    return {place};
}

Result<ScriptEntry, DocumentFault> entryFrom(std::string_view text)
{
    StrictJson document(text);
    JsonObject object = document.root();
    if (document.fault())
        return failure(*document.fault());
    ScriptEntry entry;
    entry.at = instant(object, "t");
    entry.verb = object.text("do", kShort);
    entry.id = textOr(object, "id", kShort);
    if (object.has("expect")) {
        entry.refused = object.text("expect", kShort) == "refused";
        if (!entry.refused)
            object.refuse("expect", "\"refused\"");
    }
    if (const auto verb = verbs().find(entry.verb); verb != verbs().end())
        entry.statement = verb->second(object);
    else
        object.refuse("do", listOfVerbs());
    entry.place = placeOf(entry.verb, object);
    object.noOthers();
    if (document.fault())
        return failure(*document.fault());
    return entry;
}

template <typename T>
const T* intentOf(const ScriptEntry& entry)
{
    const auto* intent = std::get_if<Intent>(&entry.statement);
    return intent ? std::get_if<T>(intent) : nullptr;
}

/// Whether a statement of kind T about that bag follows before the next bag is started.
template <typename T>
bool follows(const std::vector<ScriptEntry>& entries, std::size_t start, const BagId& bag)
{
    for (std::size_t i = start + 1; i < entries.size() && !intentOf<StartBag>(entries[i]); ++i) {
        const T* meant = intentOf<T>(entries[i]);
        if (meant && (!meant->bag || *meant->bag == bag))
            return true;
    }
    return false;
}

ScriptEntry implied(const ScriptEntry& start, std::string verb, Intent intent)
{
    ScriptEntry entry;
    entry.line = start.line;
    entry.at = start.at;
    entry.place = {"script " + verb + " " +
                   std::get<StartBag>(std::get<Intent>(start.statement)).bag.text};
    entry.verb = std::move(verb);
    entry.statement = std::move(intent);
    return entry;
}

std::vector<ScriptEntry> writtenOut(const std::vector<ScriptEntry>& entries)
{
    std::vector<ScriptEntry> all;
    std::size_t start = 0;
    for (std::size_t i = 0; i < entries.size(); ++i) {
        all.push_back(entries[i]);
        if (intentOf<StartBag>(entries[i]))
            start = i;
        const auto* bag = intentOf<StartBag>(entries[start]);
        const auto* inspected = intentOf<InspectBag>(entries[i]);
        const bool starts = bag && start == i && !entries[i].refused;
        const bool goesOn = bag && inspected && inspected->ok && !entries[i].refused;
        const bool inspects = starts && !follows<InspectBag>(entries, i, bag->bag);
        if (inspects)
            all.push_back(implied(entries[start], "inspected", InspectBag{bag->bag, true}));
        if ((inspects || goesOn) && !follows<DrawDiluent>(entries, start, bag->bag))
            all.push_back(implied(entries[start], "diluent-drawn", DrawDiluent{bag->bag, {}}));
        if (goesOn)
            all.back().at = entries[i].at;
    }
    return all;
}

}  // namespace

Result<std::vector<ScriptEntry>, ScriptFault> scriptFrom(std::string_view text)
{
    std::vector<ScriptEntry> entries;
    std::set<std::string> ids;
    int line = 0;
    while (!text.empty()) {
        ++line;
        const auto end = text.find('\n');
        std::string_view one = text.substr(0, end);
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        if (one.find_first_not_of(" \t\r") == std::string_view::npos)
            continue;
        auto entry = entryFrom(one);
        if (!entry)
            return failure(ScriptFault{line, entry.error()});
        entry->line = line;
        if (!entry->id.empty() && !ids.insert(entry->id).second)
            return failure(ScriptFault{line, {"id", entry->id, "an id that no line before has"}});
        entries.push_back(std::move(*entry));
    }
    if (entries.empty())
        return failure(ScriptFault{1, {"", "nothing", "at least one entry"}});
    return writtenOut(entries);
}

}  // namespace bathside
