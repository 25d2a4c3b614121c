#pragma once

// One sentence for each kind of fact. A kind without one does not compile (facts.cpp visits them
// all).

#include <QString>

#include "core/facts/facts.h"

namespace bathside::ui {

// The station and what the day is judged by: fact_sentences_station.cpp
[[nodiscard]] QString sentenceOf(const StationStarted& fact);
[[nodiscard]] QString sentenceOf(const StationStopped& fact);
[[nodiscard]] QString sentenceOf(const ClockStepped& fact);
[[nodiscard]] QString sentenceOf(const ClockChecked& fact);
[[nodiscard]] QString sentenceOf(const StoreFailed& fact);
[[nodiscard]] QString sentenceOf(const StoreRecovered& fact);
[[nodiscard]] QString sentenceOf(const SoundProven& fact);
[[nodiscard]] QString sentenceOf(const SoundLost& fact);
[[nodiscard]] QString sentenceOf(const SoundFound& fact);
[[nodiscard]] QString sentenceOf(const CardAdopted& fact);
[[nodiscard]] QString sentenceOf(const ProbeDescribed& fact);

// The shift, the bath and the lines: fact_sentences_shift.cpp
[[nodiscard]] QString sentenceOf(const ShiftOpened& fact);
[[nodiscard]] QString sentenceOf(const ShiftClosed& fact);
[[nodiscard]] QString sentenceOf(const DutyTaken& fact);
[[nodiscard]] QString sentenceOf(const CheckRecorded& fact);
[[nodiscard]] QString sentenceOf(const CheckOverridden& fact);
[[nodiscard]] QString sentenceOf(const ReadingTaken& fact);
[[nodiscard]] QString sentenceOf(const BathChanged& fact);
[[nodiscard]] QString sentenceOf(const BirdsCounted& fact);
[[nodiscard]] QString sentenceOf(const NeedleChanged& fact);
[[nodiscard]] QString sentenceOf(const LineStopped& fact);
[[nodiscard]] QString sentenceOf(const LineGoing& fact);
[[nodiscard]] QString sentenceOf(const DoseChecked& fact);
[[nodiscard]] QString sentenceOf(const BirdsChecked& fact);

// Bags and ampoules: fact_sentences_bench.cpp
[[nodiscard]] QString sentenceOf(const BagStarted& fact);
[[nodiscard]] QString sentenceOf(const BagInspected& fact);
[[nodiscard]] QString sentenceOf(const DiluentDrawn& fact);
[[nodiscard]] QString sentenceOf(const BagMixed& fact);
[[nodiscard]] QString sentenceOf(const BagHung& fact);
[[nodiscard]] QString sentenceOf(const BagSwirled& fact);
[[nodiscard]] QString sentenceOf(const BagHeld& fact);
[[nodiscard]] QString sentenceOf(const BagReleased& fact);
[[nodiscard]] QString sentenceOf(const BagDown& fact);
[[nodiscard]] QString sentenceOf(const AmpouleOut& fact);
[[nodiscard]] QString sentenceOf(const AmpouleInBath& fact);
[[nodiscard]] QString sentenceOf(const AmpouleOpened& fact);
[[nodiscard]] QString sentenceOf(const AmpouleInDiluent& fact);
[[nodiscard]] QString sentenceOf(const AmpouleRinsed& fact);
[[nodiscard]] QString sentenceOf(const AmpouleBagged& fact);
[[nodiscard]] QString sentenceOf(const AmpouleLost& fact);
[[nodiscard]] QString sentenceOf(const CaneExposed& fact);
[[nodiscard]] QString sentenceOf(const PullPlanned& fact);

// What is planned, and the stores: fact_sentences_stores.cpp
[[nodiscard]] QString sentenceOf(const LinePlanned& fact);
[[nodiscard]] QString sentenceOf(const StoreReceived& fact);
[[nodiscard]] QString sentenceOf(const StoreMoved& fact);
[[nodiscard]] QString sentenceOf(const StoreCounted& fact);
[[nodiscard]] QString sentenceOf(const StoreDiscarded& fact);
[[nodiscard]] QString sentenceOf(const LotQuarantined& fact);
[[nodiscard]] QString sentenceOf(const LotReleased& fact);
[[nodiscard]] QString sentenceOf(const LotAllowed& fact);
[[nodiscard]] QString sentenceOf(const LotChosen& fact);
[[nodiscard]] QString sentenceOf(const StoreCarried& fact);
[[nodiscard]] QString sentenceOf(const BathCarried& fact);

// The vessel, people, the review, seals: fact_sentences_people.cpp
[[nodiscard]] QString sentenceOf(const VesselDescribed& fact);
[[nodiscard]] QString sentenceOf(const VesselDipped& fact);
[[nodiscard]] QString sentenceOf(const PersonListed& fact);
[[nodiscard]] QString sentenceOf(const PinSet& fact);
[[nodiscard]] QString sentenceOf(const PinRefused& fact);
[[nodiscard]] QString sentenceOf(const RecordSigned& fact);
[[nodiscard]] QString sentenceOf(const DeviationReviewed& fact);
[[nodiscard]] QString sentenceOf(const ReviewCarried& fact);
[[nodiscard]] QString sentenceOf(const NoteCommented& fact);
[[nodiscard]] QString sentenceOf(const CardApproved& fact);
[[nodiscard]] QString sentenceOf(const DaySealed& fact);
[[nodiscard]] QString sentenceOf(const SealWitnessed& fact);
[[nodiscard]] QString sentenceOf(const BackupMade& fact);
[[nodiscard]] QString sentenceOf(const BaselineChosen& fact);
[[nodiscard]] QString sentenceOf(const TrailContinued& fact);

// Judgements, alarms, mending and words: fact_sentences_after.cpp
[[nodiscard]] QString sentenceOf(const DeviationFound& fact);
[[nodiscard]] QString sentenceOf(const Rejudged& fact);
[[nodiscard]] QString sentenceOf(const AlarmRaised& fact);
[[nodiscard]] QString sentenceOf(const AlarmSounded& fact);
[[nodiscard]] QString sentenceOf(const AlarmHeard& fact);
[[nodiscard]] QString sentenceOf(const AlarmEnded& fact);
[[nodiscard]] QString sentenceOf(const FactCorrected& fact);
[[nodiscard]] QString sentenceOf(const FactTakenBack& fact);
[[nodiscard]] QString sentenceOf(const QuestionAnswered& fact);
[[nodiscard]] QString sentenceOf(const NoteMade& fact);
[[nodiscard]] QString sentenceOf(const TapRefused& fact);
[[nodiscard]] QString sentenceOf(const CodeScanned& fact);

}  // namespace bathside::ui
