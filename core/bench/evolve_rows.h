#pragma once

// The table behind `evolve`: one row a fact, in the file of what it is about. None may refuse;
// facts that leave the bench alone are listed too, so that a new kind stops the build until someone
// has decided what it does. Amendments work on the journal (state.h).

#include "core/bench/bench.h"

namespace bathside::folds {

// clang-format off
// evolve_station.cpp
void on(Bench&, const Event&, const StationStarted&);   void on(Bench&, const Event&, const ClockChecked&);
void on(Bench&, const Event&, const ClockStepped&);     void on(Bench&, const Event&, const StoreFailed&);
void on(Bench&, const Event&, const StoreRecovered&);   void on(Bench&, const Event&, const SoundProven&);
void on(Bench&, const Event&, const SoundLost&);        void on(Bench&, const Event&, const SoundFound&);
void on(Bench&, const Event&, const CardAdopted&);      void on(Bench&, const Event&, const ProbeDescribed&);
void on(Bench&, const Event&, const VesselDescribed&);  void on(Bench&, const Event&, const VesselDipped&);
void on(Bench&, const Event&, const CardApproved&);     void on(Bench&, const Event&, const DaySealed&);
void on(Bench&, const Event&, const BackupMade&);
void on(Bench&, const Event&, const BaselineChosen&);
inline void on(Bench&, const Event&, const TrailContinued&) {}

// evolve_shift.cpp
void on(Bench&, const Event&, const ShiftOpened&);      void on(Bench&, const Event&, const ShiftClosed&);
void on(Bench&, const Event&, const DutyTaken&);        void on(Bench&, const Event&, const CheckRecorded&);
void on(Bench&, const Event&, const CheckOverridden&);  void on(Bench&, const Event&, const ReadingTaken&);
void on(Bench&, const Event&, const BathChanged&);        void on(Bench&, const Event&, const PersonListed&);

// evolve_bags.cpp
void on(Bench&, const Event&, const BagStarted&);       void on(Bench&, const Event&, const BagInspected&);
void on(Bench&, const Event&, const DiluentDrawn&);     void on(Bench&, const Event&, const BagMixed&);
void on(Bench&, const Event&, const BagHung&);          void on(Bench&, const Event&, const BagSwirled&);
void on(Bench&, const Event&, const BagHeld&);          void on(Bench&, const Event&, const BagReleased&);
void on(Bench&, const Event&, const BagDown&);

// evolve_pull.cpp
void on(Bench&, const Event&, const AmpouleOut&);       void on(Bench&, const Event&, const AmpouleInBath&);
void on(Bench&, const Event&, const AmpouleOpened&);    void on(Bench&, const Event&, const AmpouleInDiluent&);
void on(Bench&, const Event&, const AmpouleRinsed&);    void on(Bench&, const Event&, const AmpouleBagged&);
void on(Bench&, const Event&, const AmpouleLost&);      void on(Bench&, const Event&, const CaneExposed&);
void on(Bench&, const Event&, const PullPlanned&);

// evolve_lines.cpp
void on(Bench&, const Event&, const BirdsCounted&);     void on(Bench&, const Event&, const NeedleChanged&);
void on(Bench&, const Event&, const LineStopped&);      void on(Bench&, const Event&, const LineGoing&);
void on(Bench&, const Event&, const DoseChecked&);      void on(Bench&, const Event&, const LinePlanned&);
void on(Bench&, const Event&, const BirdsChecked&);

// evolve_after.cpp
void on(Bench&, const Event&, const DeviationFound&);   void on(Bench&, const Event&, const Rejudged&);
void on(Bench&, const Event&, const AlarmRaised&);      void on(Bench&, const Event&, const AlarmSounded&);
void on(Bench&, const Event&, const AlarmHeard&);       void on(Bench&, const Event&, const AlarmEnded&);
void on(Bench&, const Event&, const QuestionAnswered&);

// The stores have their own fold (core/stores), which `evolve` asks for every fact.
inline void on(Bench&, const Event&, const StoreReceived&) {}
inline void on(Bench&, const Event&, const StoreMoved&) {}
inline void on(Bench&, const Event&, const StoreCounted&) {}
inline void on(Bench&, const Event&, const StoreDiscarded&) {}
inline void on(Bench&, const Event&, const StoreCarried&) {}
inline void on(Bench&, const Event&, const LotQuarantined&) {}
inline void on(Bench&, const Event&, const LotReleased&) {}
inline void on(Bench&, const Event&, const LotAllowed&) {}
inline void on(Bench&, const Event&, const LotChosen&) {}

// So have people (core/people) and reviews (core/review).
inline void on(Bench&, const Event&, const PinSet&) {}
inline void on(Bench&, const Event&, const PinRefused&) {}
inline void on(Bench&, const Event&, const RecordSigned&) {}
inline void on(Bench&, const Event&, const DeviationReviewed&) {}
inline void on(Bench&, const Event&, const ReviewCarried&) {}
inline void on(Bench&, const Event&, const NoteCommented&) {}

void on(Bench&, const Event&, const BathCarried&);
inline void on(Bench&, const Event&, const SealWitnessed&) {}
inline void on(Bench&, const Event&, const StationStopped&) {}
inline void on(Bench&, const Event&, const FactCorrected&) {}
inline void on(Bench&, const Event&, const FactTakenBack&) {}
inline void on(Bench&, const Event&, const NoteMade&) {}
inline void on(Bench&, const Event&, const TapRefused&) {}
inline void on(Bench&, const Event&, const CodeScanned&) {}
// clang-format on

// What several rows need.
[[nodiscard]] Moment momentOf(const Event& event, bool timed = true);
[[nodiscard]] Bag* bagIn(Bench& bench, const BagId& id);
/// The line, known from this event on if it was not.
[[nodiscard]] Line& lineIn(Bench& bench, const LineId& id, const Event& event);
/// The longer of the gap so far and this one.
void widen(std::optional<Gap>& gap, std::int64_t amount, Seq from, Seq to);
/// Other water: what was read of the old one counts no more.
void forgetWater(Bench& bench, const Event& event);

}  // namespace bathside::folds
