#pragma once

// Facts: what happened, in the past tense, with only what cannot be derived.
//
// Each fact names its kind in the trail and its members once; writing, reading and comparing follow
// from that (codec.h). Numbers are whole, in small units, which the member's name in the trail
// carries. Once released, a fact is never changed or removed: a new one is added, and an added
// member is optional. (Spec: the trail, kinds of event.)

#include <chrono>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/base/ids.h"
#include "core/base/one_of.h"
#include "core/base/time.h"
#include "core/base/units.h"
#include "core/facts/stock.h"
#include "core/facts/subject.h"
#include "core/facts/words.h"

namespace bathside {

/// From one time of a day to another, [from, to), both counted from its local midnight.
struct DaySpan {
    Millis from{}, to{};
    friend bool operator==(const DaySpan&, const DaySpan&) = default;
};

/// Birds that a line did since its last good dose check.
struct UnprovenBirds {
    LineId line;
    std::int64_t birds = 0;
    friend bool operator==(const UnprovenBirds&, const UnprovenBirds&) = default;
};

/// A JSON document within a payload, as its canonical text.
struct Document {
    std::string text;
    friend bool operator==(const Document&, const Document&) = default;
};

// A fact's kind, and its members in one list: `see("name in the trail", member)`.
// clang-format off
#define BATHSIDE_FACT(kind, ...)                                   \
    static constexpr std::string_view kKind = kind;                \
    template <typename Self, typename See>                         \
    static void members([[maybe_unused]] Self& self, [[maybe_unused]] See&& see) { __VA_ARGS__ }

// --- the station ---------------------------------------------------------------------------------
struct StationStarted { std::string version; std::string head; bool rehearsal = false;
    BATHSIDE_FACT("station.started", see("version", self.version); see("head", self.head); see("rehearsal", self.rehearsal);) };
struct StationStopped {
    BATHSIDE_FACT("station.stopped", ) };
struct ClockStepped { Millis by{};
    BATHSIDE_FACT("clock.stepped", see("by_ms", self.by);) };
struct ClockChecked { bool synchronised = false; std::optional<Millis> offset;
    BATHSIDE_FACT("clock.checked", see("synchronised", self.synchronised); see("offset_ms", self.offset);) };
struct StoreFailed { StoreFault fault{}; std::int64_t errorNumber = 0; std::string spool;
    BATHSIDE_FACT("store.failed", see("fault", self.fault); see("errno", self.errorNumber); see("spool", self.spool);) };
struct StoreRecovered { std::int64_t merged = 0; std::string spool;
    BATHSIDE_FACT("store.recovered", see("merged", self.merged); see("spool", self.spool);) };
struct SoundProven { std::string device;
    BATHSIDE_FACT("sound.proven", see("device", self.device);) };
struct SoundLost { std::string device;
    BATHSIDE_FACT("sound.lost", see("device", self.device);) };
struct SoundFound { std::string device;
    BATHSIDE_FACT("sound.found", see("device", self.device);) };

// --- what the day is judged by ---------------------------------------------------------------------
struct CardAdopted { Document document;
    BATHSIDE_FACT("card.adopted", see("document", self.document);) };
struct ProbeDescribed { ProbeId probe; Document document;
    BATHSIDE_FACT("probe.described", see("probe", self.probe); see("document", self.document);) };

// --- the shift -------------------------------------------------------------------------------------
/// `unproven`: what the shifts before leave to the next dose check of each line; none: nothing.
struct ShiftOpened { std::string zone; CardHash card; std::optional<std::chrono::sys_days> day{};  // local; none: UTC's
                     std::optional<std::vector<UnprovenBirds>> unproven{};
    BATHSIDE_FACT("shift.opened", see("zone", self.zone); see("card", self.card); see("day", self.day);
                  see("unproven", self.unproven);) };
struct ShiftClosed { std::int64_t out = 0; std::int64_t bagged = 0; std::int64_t lost = 0; std::int64_t bags = 0;
    BATHSIDE_FACT("shift.closed", see("ampoules_out", self.out); see("ampoules_bagged", self.bagged);
                  see("ampoules_lost", self.lost); see("bags", self.bags);) };
struct DutyTaken { PersonId person;
    BATHSIDE_FACT("duty.taken", see("person", self.person);) };
struct CheckRecorded { CheckId check; bool ok = true; std::optional<std::string> value;
    BATHSIDE_FACT("check.recorded", see("check", self.check); see("ok", self.ok); see("value", self.value);) };
struct CheckOverridden { CheckId check; std::string why;
    BATHSIDE_FACT("check.overridden", see("check", self.check); see("why", self.why);) };

// --- the bath --------------------------------------------------------------------------------------
struct ReadingTaken { ProbeId probe; std::optional<MilliCelsius> raw, corrected, expanded; std::optional<Verdict> verdict;
                      std::optional<ReadingFault> fault;  // set: this is not a reading, and why
    BATHSIDE_FACT("reading.taken", see("probe", self.probe); see("raw_mc", self.raw); see("corrected_mc", self.corrected);
                  see("u_mc", self.expanded); see("verdict", self.verdict); see("fault", self.fault);) };
struct BathChanged { std::string why;
    BATHSIDE_FACT("bath.changed", see("why", self.why);) };

// --- bags ------------------------------------------------------------------------------------------
struct BagStarted { BagId bag; MicroLitres volume; LotId diluentLot; std::optional<MilliCelsius> temperature;
    BATHSIDE_FACT("bag.started", see("bag", self.bag); see("volume_ul", self.volume); see("diluent_lot", self.diluentLot);
                  see("temperature_mc", self.temperature);) };
struct BagInspected { BagId bag; bool ok = true;
    BATHSIDE_FACT("bag.inspected", see("bag", self.bag); see("ok", self.ok);) };
struct DiluentDrawn { BagId bag; MicroLitres volume;
    BATHSIDE_FACT("diluent.drawn", see("bag", self.bag); see("volume_ul", self.volume);) };
struct BagMixed { BagId bag;
    BATHSIDE_FACT("bag.mixed", see("bag", self.bag);) };
struct BagHung { BagId bag; LineId line;  // a second time: moved
    BATHSIDE_FACT("bag.hung", see("bag", self.bag); see("line", self.line);) };
struct BagSwirled { BagId bag;
    BATHSIDE_FACT("bag.swirled", see("bag", self.bag);) };
struct BagHeld { BagId bag; HoldReason why{}; std::optional<std::string> words;
    BATHSIDE_FACT("bag.held", see("bag", self.bag); see("why", self.why); see("words", self.words);) };
struct BagReleased { BagId bag; PersonId by; std::string why; std::optional<Seq> of{};  // the hold, where a shift before had it
    BATHSIDE_FACT("bag.released", see("bag", self.bag); see("by", self.by); see("why", self.why); see("of", self.of);) };
struct BagDown { BagId bag; DownReason why{}; MicroLitres left;
    BATHSIDE_FACT("bag.down", see("bag", self.bag); see("why", self.why); see("left_ul", self.left);) };

// --- ampoules --------------------------------------------------------------------------------------
struct AmpouleOut { AmpouleRef ampoule; ComponentId component; LotId lot;
    BATHSIDE_FACT("ampoule.out", see("pull", self.ampoule.pull); see("ampoule", self.ampoule.no);
                  see("component", self.component); see("lot", self.lot);) };
struct AmpouleInBath { AmpouleRef ampoule; bool timed = true;
    BATHSIDE_FACT("ampoule.bath", see("pull", self.ampoule.pull); see("ampoule", self.ampoule.no); see("timed", self.timed);) };
struct AmpouleOpened { AmpouleRef ampoule; bool timed = true;
    BATHSIDE_FACT("ampoule.opened", see("pull", self.ampoule.pull); see("ampoule", self.ampoule.no); see("timed", self.timed);) };
struct AmpouleInDiluent { AmpouleRef ampoule; bool timed = true;
    BATHSIDE_FACT("ampoule.diluent", see("pull", self.ampoule.pull); see("ampoule", self.ampoule.no); see("timed", self.timed);) };
struct AmpouleRinsed { AmpouleRef ampoule; bool timed = true;
    BATHSIDE_FACT("ampoule.rinsed", see("pull", self.ampoule.pull); see("ampoule", self.ampoule.no); see("timed", self.timed);) };
struct AmpouleBagged { AmpouleRef ampoule; BagId bag; bool timed = true;
    BATHSIDE_FACT("ampoule.bagged", see("pull", self.ampoule.pull); see("ampoule", self.ampoule.no); see("bag", self.bag);
                  see("timed", self.timed);) };
struct AmpouleLost { AmpouleRef ampoule; LossReason why{};
    BATHSIDE_FACT("ampoule.lost", see("pull", self.ampoule.pull); see("ampoule", self.ampoule.no); see("why", self.why);) };
struct CaneExposed { std::string place; Millis time{};
    BATHSIDE_FACT("cane.exposed", see("place", self.place); see("time_ms", self.time);) };
struct PullPlanned { WallTime start{};
    BATHSIDE_FACT("pull.planned", see("start", self.start);) };

// --- lines -----------------------------------------------------------------------------------------
struct BirdsCounted { LineId line; std::int64_t total = 0;
    BATHSIDE_FACT("line.birds", see("line", self.line); see("total", self.total);) };
struct NeedleChanged { LineId line;
    BATHSIDE_FACT("line.needle", see("line", self.line);) };
struct LineStopped { LineId line;
    BATHSIDE_FACT("line.stopped", see("line", self.line);) };
struct LineGoing { LineId line;
    BATHSIDE_FACT("line.going", see("line", self.line);) };
/// `measured`: what was weighed or collected, see core/checks/dose_measured.h.
struct DoseChecked { LineId line; bool ok = true; std::optional<Document> measured{};
    BATHSIDE_FACT("dose.checked", see("line", self.line); see("ok", self.ok); see("measured", self.measured);) };
/// Birds looked at after their injection, and how many of them had it well; what share was to, and with which confidence that
/// was to be shown.
struct BirdsChecked { LineId line; std::int64_t looked = 0; std::int64_t good = 0;
                      std::optional<std::int64_t> targetPerMille{}; std::optional<std::int64_t> confidencePerMille{};
    BATHSIDE_FACT("birds.checked", see("line", self.line); see("looked", self.looked); see("good", self.good);
                  see("target_per_mille", self.targetPerMille); see("confidence_per_mille", self.confidencePerMille);) };

/// What the day plans for a line, times from local midnight of its day; a second time: instead of the first.
struct LinePlanned { LineId line; std::int64_t birds = 0; std::int64_t birdsPerHour = 0; Millis start{}; std::vector<DaySpan> breaks{};
                     bool removed = false;
    BATHSIDE_FACT("line.planned", see("line", self.line); see("birds", self.birds); see("birds_per_hour", self.birdsPerHour);
                  see("start_ms", self.start); see("breaks_ms", self.breaks); see("removed", self.removed);) };

/// What the pulls so far say of the bath, see core/bath/learned.h.
struct BathCarried { Document document;
    BATHSIDE_FACT("bath.carried", see("document", self.document);) };

// --- the cryogen vessel --------------------------------------------------------------------------------
/// Its dipstick's table and what it is held to, see core/checks/vessel_log.h.
struct VesselDescribed { VesselId vessel; Document document;
    BATHSIDE_FACT("vessel.described", see("vessel", self.vessel); see("document", self.document);) };
/// What the dipstick shows; `filled`: cryogen was added since the reading before.
struct VesselDipped { VesselId vessel; std::int64_t millimetres = 0; bool filled = false;
    BATHSIDE_FACT("vessel.dipped", see("vessel", self.vessel); see("level_mm", self.millimetres); see("filled", self.filled);) };

// --- stores ------------------------------------------------------------------------------------------
struct StoreReceived { Stock of; std::string place; std::int64_t count = 0; std::optional<std::int64_t> doses;
                       std::optional<std::chrono::sys_days> expires; std::optional<std::int64_t> titre{};  // per dose, by its certificate
                       std::optional<std::string> delivery{};
    BATHSIDE_FACT("store.received", Stock::members(self.of, see); see("place", self.place); see("count", self.count);
                  see("doses", self.doses); see("expires", self.expires); see("titre_pfu", self.titre);
                  see("delivery", self.delivery);) };
struct StoreMoved { Stock of; std::string from, to; std::int64_t count = 0;
    BATHSIDE_FACT("store.moved", Stock::members(self.of, see); see("from", self.from); see("to", self.to); see("count", self.count);) };
struct StoreCounted { Stock of; std::string place; std::int64_t count = 0;
    BATHSIDE_FACT("store.counted", Stock::members(self.of, see); see("place", self.place); see("count", self.count);) };
struct StoreDiscarded { Stock of; std::string place; std::int64_t count = 0; DiscardReason why{};
    BATHSIDE_FACT("store.discarded", Stock::members(self.of, see); see("place", self.place); see("count", self.count);
                  see("why", self.why);) };
struct LotQuarantined { Stock of; std::optional<std::string> place; std::string why;  // no place: wherever it is
    BATHSIDE_FACT("lot.quarantined", Stock::members(self.of, see); see("place", self.place); see("why", self.why);) };
struct LotReleased { Stock of; PersonId by; std::string why;
    BATHSIDE_FACT("lot.released", Stock::members(self.of, see); see("by", self.by); see("why", self.why);) };
struct LotAllowed { Stock of; PersonId by; std::string why;  // until the shift's end
    BATHSIDE_FACT("lot.allowed", Stock::members(self.of, see); see("by", self.by); see("why", self.why);) };
struct LotChosen { ComponentId component; LotId lot; std::optional<std::string> place;
    BATHSIDE_FACT("lot.chosen", see("component", self.component); see("lot", self.lot); see("place", self.place);) };
/// What the stores hold when a shift opens, so that its fold needs nothing older.
struct StoreCarried { Document document;
    BATHSIDE_FACT("store.carried", see("document", self.document);) };

// --- judgements and alarms ---------------------------------------------------------------------------
/// `over`: by how much, in the limit's own unit (ms, m°C or birds); 0 is a limit just reached.
struct DeviationFound { LimitName limit{}; Subject subject; std::optional<BagId> bag; std::int64_t over = 0; std::vector<Seq> from;
    BATHSIDE_FACT("deviation", see("limit", self.limit); see("subject", self.subject); see("bag", self.bag);
                  see("over", self.over); see("from", self.from);) };
/// A correction changed a judgement: `over` is the new amount, none where the limit is kept after all.
struct Rejudged { LimitName limit{}; Subject subject; std::optional<BagId> bag; std::optional<std::int64_t> over; std::vector<Seq> from;
    BATHSIDE_FACT("rejudged", see("limit", self.limit); see("subject", self.subject); see("bag", self.bag);
                  see("over", self.over); see("from", self.from);) };
struct AlarmRaised { std::string alarm; Level level{}; Subject subject;
    BATHSIDE_FACT("alarm.raised", see("alarm", self.alarm); see("level", self.level); see("subject", self.subject);) };
struct AlarmSounded { std::string alarm; Level level{}; std::string device; Millis late{};
    BATHSIDE_FACT("alarm.sounded", see("alarm", self.alarm); see("level", self.level); see("device", self.device);
                  see("late_ms", self.late);) };
struct AlarmHeard { std::string alarm;
    BATHSIDE_FACT("alarm.heard", see("alarm", self.alarm);) };
struct AlarmEnded { std::string alarm;
    BATHSIDE_FACT("alarm.ended", see("alarm", self.alarm);) };

// --- people, review, seals -----------------------------------------------------------------------------
/// Who somebody is, from now on; a second time: instead of the first.
struct PersonListed { PersonId person; std::string name; Role role{}; bool departed = false;
    BATHSIDE_FACT("person.listed", see("person", self.person); see("name", self.name); see("role", self.role);
                  see("left", self.departed);) };
/// A new PIN; what it is checked against stands outside the trail (D18).
struct PinSet { PersonId person;
    BATHSIDE_FACT("pin.set", see("person", self.person);) };
struct PinRefused { PersonId person;
    BATHSIDE_FACT("pin.refused", see("person", self.person);) };
/// By the person of the event, proven; `of`: the events it is about, none where it is the shift.
struct RecordSigned { Meaning meaning{}; std::vector<Seq> of; std::string words;
    BATHSIDE_FACT("record.signed", see("meaning", self.meaning); see("of", self.of); see("words", self.words);) };
struct DeviationReviewed { Seq of = 0; std::string cause; std::string words; std::string action;
    BATHSIDE_FACT("deviation.reviewed", see("of", self.of); see("cause", self.cause); see("words", self.words);
                  see("action", self.action);) };
/// The deviations that nobody has reviewed when a shift opens, so that they stay in sight.
struct ReviewCarried { Document document;
    BATHSIDE_FACT("review.carried", see("document", self.document);) };
struct NoteCommented { Seq of = 0; std::string text;
    BATHSIDE_FACT("note.commented", see("of", self.of); see("text", self.text);) };
struct CardApproved { CardHash card;
    BATHSIDE_FACT("card.approved", see("card", self.card);) };
/// `head`: of the last event before this one, after `count` events; `signature` (Ed25519) over its 32 bytes, hex.
struct DaySealed { std::int64_t count = 0; std::string head; std::string key; std::string signature;
    BATHSIDE_FACT("day.sealed", see("count", self.count); see("head", self.head); see("key", self.key);
                  see("signature", self.signature);) };
/// A printed seal was read back: whether the chain has that head at that count.
struct SealWitnessed { std::int64_t count = 0; std::string head; bool agrees = false;
    BATHSIDE_FACT("seal.witnessed", see("count", self.count); see("head", self.head); see("agrees", self.agrees);) };
struct BackupMade { std::string place; std::int64_t count = 0; std::string head;
    BATHSIDE_FACT("backup.made", see("place", self.place); see("count", self.count); see("head", self.head);) };

/// The stretch of the record from which a chart's limits come, both ends included; 0 to 0: from none any more.
struct BaselineChosen { std::string chart; Seq from = 0; Seq to = 0;
    [[nodiscard]] bool isWithdrawal() const { return from == 0 && to == 0; }
    BATHSIDE_FACT("baseline.chosen", see("chart", self.chart); see("from", self.from); see("to", self.to);) };
/// The first event of a file that goes on where a damaged one, `file`, was still sound.
struct TrailContinued { std::int64_t count = 0; std::string head; std::string file;
    BATHSIDE_FACT("trail.continued", see("count", self.count); see("head", self.head); see("file", self.file);) };

// --- mending and words -------------------------------------------------------------------------------
struct FactCorrected { Seq seq = 0; std::string field; std::string value; std::string why;
    BATHSIDE_FACT("fact.corrected", see("seq", self.seq); see("field", self.field); see("value", self.value); see("why", self.why);) };
struct FactTakenBack { std::vector<Seq> seqs; std::optional<std::string> why;
    BATHSIDE_FACT("fact.taken-back", see("seqs", self.seqs); see("why", self.why);) };
struct QuestionAnswered { std::string question; std::string choice;
    BATHSIDE_FACT("question.answered", see("question", self.question); see("choice", self.choice);) };
struct NoteMade { std::string text;
    BATHSIDE_FACT("note.made", see("text", self.text);) };
struct TapRefused { std::string tap; std::string why;
    BATHSIDE_FACT("tap.refused", see("tap", self.tap); see("why", self.why);) };
struct CodeScanned { std::string text;
    BATHSIDE_FACT("code.scanned", see("text", self.text);) };

#undef BATHSIDE_FACT
// clang-format on

using AnyFact = std::variant<
    StationStarted, StationStopped, ClockStepped, ClockChecked, StoreFailed, StoreRecovered,
    SoundProven, SoundLost, SoundFound, CardAdopted, ProbeDescribed, ShiftOpened, ShiftClosed,
    DutyTaken, CheckRecorded, CheckOverridden, ReadingTaken, BathChanged, BagStarted, BagInspected,
    DiluentDrawn, BagMixed, BagHung, BagSwirled, BagHeld, BagReleased, BagDown, AmpouleOut,
    AmpouleInBath, AmpouleOpened, AmpouleInDiluent, AmpouleRinsed, AmpouleBagged, AmpouleLost,
    CaneExposed, PullPlanned, BirdsCounted, NeedleChanged, LineStopped, LineGoing, DoseChecked,
    DeviationFound, Rejudged, AlarmRaised, AlarmSounded, AlarmHeard, AlarmEnded, FactCorrected,
    FactTakenBack, QuestionAnswered, NoteMade, TapRefused, CodeScanned, LinePlanned, StoreReceived,
    StoreMoved, StoreCounted, StoreDiscarded, LotQuarantined, LotReleased, LotAllowed, LotChosen,
    StoreCarried, BirdsChecked, VesselDescribed, VesselDipped, PersonListed, PinSet, PinRefused,
    RecordSigned, DeviationReviewed, ReviewCarried, NoteCommented, CardApproved, DaySealed,
    SealWitnessed, BackupMade, BaselineChosen, TrailContinued, BathCarried>;

/// One of them. A variant like any other to `std::visit` and its kin; made, copied, moved and
/// destroyed in facts.cpp, so that not every file has to build that for fifty types.
struct Fact : AnyFact {
    template <OneOf<AnyFact> T>
    Fact(T fact) : Fact(&fact, kPlaceIn<T, AnyFact>)
    {
    }
    Fact();
    Fact(const Fact&);
    Fact(Fact&&) noexcept;
    Fact& operator=(const Fact&);
    Fact& operator=(Fact&&) noexcept;
    ~Fact();

private:
    Fact(void* value, std::size_t place);
};

[[nodiscard]] std::string_view kindOf(const Fact& fact);

}  // namespace bathside
