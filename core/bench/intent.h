#pragma once

// Intents: what a person (or the program itself) means to say. Imperatives; each may be refused.
//
// Where a bag, a line or ampoules may be left out, the only one that fits is meant.

#include <chrono>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/base/ids.h"
#include "core/base/one_of.h"
#include "core/base/units.h"
#include "core/facts/facts.h"

namespace bathside {

// clang-format off
// --- people ------------------------------------------------------------------------------------------
/// `day`: the local one in that zone; none: UTC's.
struct OpenShift { std::string zone; PersonId person; std::optional<std::chrono::sys_days> day{}; };
struct CloseShift {};
struct TakeDuty { PersonId person; };
struct RecordCheck { CheckId check; bool ok = true; std::optional<std::string> value; };
struct OverrideCheck { CheckId check; std::string why; };
struct TakeReading { ProbeId probe; std::variant<MilliCelsius, ReadingFault> value; };
struct ChangeWater { std::string why; };

struct StartBag { BagId bag; MicroLitres volume; LotId diluentLot; std::optional<MilliCelsius> temperature; };
struct InspectBag { std::optional<BagId> bag; bool ok = true; };
struct DrawDiluent { std::optional<BagId> bag; std::optional<MicroLitres> volume; };  // none: the card's
struct MixBag { std::optional<BagId> bag; };
struct HangBag { std::optional<BagId> bag; LineId line; };
struct SwirlBag { std::optional<BagId> bag; };
struct HoldBag { std::optional<BagId> bag; HoldReason why{}; std::string words; };
/// `of`: the hold's entry, where a shift before left it undecided; its bag is none of today's.
struct ReleaseBag { std::optional<BagId> bag; PersonId by; std::string why; std::optional<Seq> of{}; };
/// `by`: a shift lead who signs it, as what becomes of a bag that was decided on.
struct TakeBagDown { std::optional<BagId> bag; DownReason why{}; MicroLitres left; std::optional<PersonId> by{}; };

/// One ampoule leaving the cryogen. Number 0: the next free one. Component empty: the recipe's first
/// that the bag being made up lacks; lot empty: as the last one of that component.
struct AmpouleTaken { int no = 0; ComponentId component; LotId lot; };
struct TakeOut { std::vector<AmpouleTaken> ampoules; };
/// `step` is any but `Out`. `ampoules` empty: all of the open pull that can; `bag` only for `Bagged`.
struct MoveOn { Step step{}; std::vector<int> ampoules; std::optional<BagId> bag; };
struct LoseAmpoule { int ampoule = 0; LossReason why{}; };
struct ExposeCane { std::string place; Millis time{}; };
struct PlanPull { WallTime start{}; };

struct CountBirds { std::optional<LineId> line; std::int64_t total = 0; };
struct ChangeNeedle { std::optional<LineId> line; };
struct StopLine { std::optional<LineId> line; };
struct GoLine { std::optional<LineId> line; };
/// `measured`: see DoseChecked; where it is given, it says whether the dose is good, not `ok`.
struct CheckDose { std::optional<LineId> line; bool ok = true; std::optional<std::string> measured{}; };
/// `targetPerMille` only counts where the card has no target of its own.
struct CheckBirds { std::optional<LineId> line; std::int64_t looked = 0; std::int64_t good = 0;
                    std::optional<std::int64_t> targetPerMille{}; };

struct DescribeVessel { VesselId vessel; std::string document; };
struct DipVessel { VesselId vessel; std::int64_t millimetres = 0; bool filled = false; };

struct PlanLine { LinePlanned plan; };

/// One delivery, taken whole or not at all.
struct Receive { std::vector<StoreReceived> lines; };
struct MoveStock { Stock of; std::string from, to; std::int64_t count = 0; };
struct CountStock { Stock of; std::string place; std::int64_t count = 0; };
struct DiscardStock { Stock of; std::string place; std::int64_t count = 0; DiscardReason why{}; };
struct QuarantineLot { Stock of; std::optional<std::string> place; std::string why; };
struct ReleaseLot { Stock of; PersonId by; std::string why; };
struct AllowLot { Stock of; PersonId by; std::string why; };
struct ChooseLot { ComponentId component; LotId lot; std::optional<std::string> place; };

struct HearAlarm { std::string alarm; };  // empty: all that sound
struct TakeBack { std::string why; };
/// `of`: seqs of this shift's events. `field`: at (RFC 3339), ampoule, bag, lot, component, line, count, place,
/// expires (YYYY-MM-DD), broken (true, false), volume_ml, left_ml, temperature_c; see amend.h.
struct Correct { std::vector<Seq> of; std::string field; std::string value; std::string why; };
struct Answer { std::string question; std::string choice; };
struct MakeNote { std::string text; };
struct Scan { std::string text; };

// --- people, review, seals -----------------------------------------------------------------------------
// What asks for a proof of who it is names the person: the station has seen the PIN (core/people).
struct ListPerson { PersonListed as; std::optional<PersonId> by; };  // `by`: none for the first shift lead
struct SetPin { PersonId person; std::optional<PersonId> by{}; };  // `by`: who proved it; none: a lead begins again (D18)
struct RefusePin { PersonId person; };
struct Sign { PersonId person; Meaning meaning{}; std::vector<Seq> of; std::string words; };
struct ReviewDeviation { PersonId by; DeviationReviewed as; };
struct CommentNote { PersonId by; NoteCommented as; };
struct ApproveCard { PersonId by; CardHash card; };
struct ChooseBaseline { PersonId by; BaselineChosen as; };

// --- the program itself --------------------------------------------------------------------------------
struct AdoptCard { std::string document; };
struct DescribeProbe { ProbeId probe; std::string document; };
struct StartStation { std::string version; std::string head; bool rehearsal = false; bool synchronised = false;
                      std::optional<Millis> offset; };
struct StopStation {};
struct NoteClockStep { Millis by{}; };
struct RaiseAlarm { std::string alarm; Level level{}; Subject subject; };
struct NoteSounded { std::string alarm; Level level{}; std::string device; Millis late{}; };
struct EndAlarm { std::string alarm; };
struct ProveSound { std::string device; };
struct LoseSound { std::string device; };
struct FindSound { std::string device; };
struct NoteStoreFailure { StoreFault fault{}; std::int64_t errorNumber = 0; std::string spool; };
struct NoteStoreRecovery { std::int64_t merged = 0; std::string spool; };
struct NoteSealed { DaySealed seal; };
struct NoteWitness { SealWitnessed seen; };
struct NoteBackup { BackupMade made; };
struct NoteContinued { TrailContinued from; };

// clang-format on
using AnyIntent = std::variant<
    OpenShift, CloseShift, TakeDuty, RecordCheck, OverrideCheck, TakeReading, ChangeWater, StartBag,
    InspectBag, DrawDiluent, MixBag, HangBag, SwirlBag, HoldBag, ReleaseBag, TakeBagDown, TakeOut,
    MoveOn, LoseAmpoule, ExposeCane, PlanPull, CountBirds, ChangeNeedle, StopLine, GoLine,
    CheckDose, HearAlarm, TakeBack, Correct, Answer, MakeNote, Scan, AdoptCard, DescribeProbe,
    StartStation, StopStation, NoteClockStep, RaiseAlarm, NoteSounded, EndAlarm, ProveSound,
    LoseSound, FindSound, NoteStoreFailure, NoteStoreRecovery, PlanLine, Receive, MoveStock,
    CountStock, DiscardStock, QuarantineLot, ReleaseLot, AllowLot, ChooseLot, CheckBirds,
    DescribeVessel, DipVessel, ListPerson, SetPin, RefusePin, Sign, ReviewDeviation, CommentNote,
    ApproveCard, NoteSealed, NoteWitness, NoteBackup, ChooseBaseline, NoteContinued>;

/// One of them, as `Fact` is one of the facts: made, copied, moved and destroyed in intent.cpp.
struct Intent : AnyIntent {
    template <OneOf<AnyIntent> T>
    Intent(T intent) : Intent(&intent, kPlaceIn<T, AnyIntent>)
    {
    }
    Intent();
    Intent(const Intent&);
    Intent(Intent&&) noexcept;
    Intent& operator=(const Intent&);
    Intent& operator=(Intent&&) noexcept;
    ~Intent();

private:
    Intent(void* value, std::size_t place);
};

/// The intent's word, as scripts and refused taps write it.
[[nodiscard]] std::string_view nameOf(const Intent& intent);

}  // namespace bathside
