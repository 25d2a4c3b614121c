#include "ui/text/short_facts.h"

#include <QCoreApplication>
#include <QStringList>
#include <map>

#include "ui/text/numbers.h"
#include "ui/text/subjects.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

struct ShortText {
    Q_DECLARE_TR_FUNCTIONS(ShortFact)
};

QString bagText(const BagId& bag) { return subjectText(subjectOf(bag)); }
QString lineText(const LineId& line) { return subjectText(subjectOf(line)); }

QString brief(const ShiftOpened&) { return ShortText::tr("shift open"); }
QString brief(const ShiftClosed&) { return ShortText::tr("shift closed"); }
QString brief(const DutyTaken& f) { return ShortText::tr("on duty: %1").arg(idText(f.person)); }
QString brief(const CheckRecorded& f)
{
    return f.ok ? ShortText::tr("check done") : ShortText::tr("check failed");
}
QString brief(const CheckOverridden&) { return ShortText::tr("check overridden"); }
QString brief(const ReadingTaken& f)
{
    const auto value = f.corrected ? f.corrected : f.raw;
    return value ? ShortText::tr("bath %1", "a temperature").arg(temperatureText(*value))
                 : ShortText::tr("bath: no reading");
}
QString brief(const BathChanged&) { return ShortText::tr("bath water changed"); }
QString brief(const BagStarted& f) { return ShortText::tr("%1 started").arg(bagText(f.bag)); }
QString brief(const BagInspected& f)
{
    return f.ok ? ShortText::tr("%1 inspected").arg(bagText(f.bag))
                : ShortText::tr("%1 not good").arg(bagText(f.bag));
}
QString brief(const DiluentDrawn& f)
{
    return ShortText::tr("%1: diluent drawn").arg(bagText(f.bag));
}
QString brief(const BagMixed& f) { return ShortText::tr("%1 mixed").arg(bagText(f.bag)); }
QString brief(const BagHung& f)
{
    return ShortText::tr("%1 on %2", "bag, line").arg(bagText(f.bag), lineText(f.line));
}
QString brief(const BagSwirled& f) { return ShortText::tr("%1 swirled").arg(bagText(f.bag)); }
QString brief(const BagHeld& f) { return ShortText::tr("%1 on hold").arg(bagText(f.bag)); }
QString brief(const BagReleased& f) { return ShortText::tr("%1 released").arg(bagText(f.bag)); }
QString brief(const BagDown& f) { return ShortText::tr("%1 down").arg(bagText(f.bag)); }
QString brief(const AmpouleLost& f)
{
    return ShortText::tr("ampoule %1: %2", "number, why it was lost")
        .arg(f.ampoule.no)
        .arg(wordOf(f.why));
}
QString brief(const CaneExposed&) { return ShortText::tr("cane exposed"); }
QString brief(const PullPlanned&) { return ShortText::tr("next pull planned"); }
QString brief(const BirdsCounted& f)
{
    return ShortText::tr("%1: birds counted").arg(lineText(f.line));
}
QString brief(const NeedleChanged& f)
{
    return ShortText::tr("%1: needle changed").arg(lineText(f.line));
}
QString brief(const LineStopped& f) { return ShortText::tr("%1 stopped").arg(lineText(f.line)); }
QString brief(const LineGoing& f) { return ShortText::tr("%1 going").arg(lineText(f.line)); }
QString brief(const DoseChecked& f)
{
    return ShortText::tr("%1: dose checked").arg(lineText(f.line));
}
QString brief(const BirdsChecked& f)
{
    return ShortText::tr("%1: birds looked at").arg(lineText(f.line));
}
QString brief(const VesselDescribed&) { return ShortText::tr("vessel described"); }
QString brief(const VesselDipped& f)
{
    return f.filled ? ShortText::tr("vessel filled") : ShortText::tr("vessel level read");
}
QString brief(const PersonListed& f)
{
    return ShortText::tr("%1 listed", "a person").arg(idText(f.person));
}
QString brief(const PinSet&) { return ShortText::tr("PIN set"); }
QString brief(const PinRefused&) { return ShortText::tr("PIN not right"); }
QString brief(const RecordSigned&) { return ShortText::tr("signed"); }
QString brief(const DeviationReviewed&) { return ShortText::tr("deviation reviewed"); }
QString brief(const ReviewCarried&) { return {}; }
QString brief(const NoteCommented&) { return ShortText::tr("note commented on"); }
QString brief(const CardApproved&) { return ShortText::tr("card approved"); }
QString brief(const DaySealed&) { return ShortText::tr("record sealed"); }
QString brief(const SealWitnessed& f)
{
    return f.agrees ? ShortText::tr("seal agrees") : ShortText::tr("seal does not agree");
}
QString brief(const BackupMade&) { return ShortText::tr("copy made"); }
QString brief(const BaselineChosen& fact)
{
    return fact.isWithdrawal() ? ShortText::tr("baseline withdrawn")
                               : ShortText::tr("chart limits chosen");
}
QString brief(const TrailContinued&) { return ShortText::tr("record goes on"); }
QString brief(const LinePlanned& f) { return ShortText::tr("%1 planned").arg(lineText(f.line)); }
QString brief(const StoreReceived&) { return ShortText::tr("stores: received"); }
QString brief(const StoreMoved&) { return ShortText::tr("stores: moved"); }
QString brief(const StoreCounted&) { return ShortText::tr("stores: counted"); }
QString brief(const StoreDiscarded&) { return ShortText::tr("stores: taken out"); }
QString brief(const LotQuarantined& f)
{
    return ShortText::tr("lot %1 in quarantine").arg(idText(f.of.lot));
}
QString brief(const LotReleased& f)
{
    return ShortText::tr("lot %1 released").arg(idText(f.of.lot));
}
QString brief(const LotAllowed& f) { return ShortText::tr("lot %1 allowed").arg(idText(f.of.lot)); }
QString brief(const LotChosen& f) { return ShortText::tr("lot %1 chosen").arg(idText(f.lot)); }
QString brief(const DeviationFound&) { return ShortText::tr("deviation"); }
QString brief(const Rejudged&) { return ShortText::tr("judged again"); }
QString brief(const AlarmHeard&) { return ShortText::tr("alarm heard"); }
QString brief(const FactCorrected&) { return ShortText::tr("corrected"); }
QString brief(const FactTakenBack&) { return ShortText::tr("taken back"); }
QString brief(const QuestionAnswered&) { return ShortText::tr("answered"); }
QString brief(const NoteMade&) { return ShortText::tr("note made"); }
QString brief(const TapRefused&) { return ShortText::tr("not taken", "a tap was refused"); }
QString brief(const CodeScanned&) { return ShortText::tr("scanned"); }
QString brief(const SoundProven&) { return ShortText::tr("sound heard"); }

// A step of one ampoule, as when several take it together.
QString step(Step step, const QString& numbers)
{
    return ShortText::tr("%1 %2", "step, numbers of ampoules").arg(wordOf(step), numbers);
}
QString brief(const AmpouleOut& f) { return step(Step::Out, QString::number(f.ampoule.no)); }
QString brief(const AmpouleInBath& f) { return step(Step::Bath, QString::number(f.ampoule.no)); }
QString brief(const AmpouleOpened& f) { return step(Step::Opened, QString::number(f.ampoule.no)); }
QString brief(const AmpouleInDiluent& f)
{
    return step(Step::Diluent, QString::number(f.ampoule.no));
}
QString brief(const AmpouleRinsed& f) { return step(Step::Rinsed, QString::number(f.ampoule.no)); }
QString brief(const AmpouleBagged& f) { return step(Step::Bagged, QString::number(f.ampoule.no)); }

QString brief(const CardAdopted&) { return ShortText::tr("card adopted"); }
QString brief(const ProbeDescribed&) { return ShortText::tr("thermometer noted"); }

// The program's own: nothing that a person did.
QString brief(const StationStarted&) { return {}; }
QString brief(const StationStopped&) { return {}; }
QString brief(const ClockStepped&) { return {}; }
QString brief(const ClockChecked&) { return {}; }
QString brief(const StoreFailed&) { return {}; }
QString brief(const StoreRecovered&) { return {}; }
QString brief(const SoundLost&) { return {}; }
QString brief(const SoundFound&) { return {}; }
QString brief(const StoreCarried&) { return {}; }
QString brief(const BathCarried&) { return {}; }
QString brief(const AlarmRaised&) { return {}; }
QString brief(const AlarmSounded&) { return {}; }
QString brief(const AlarmEnded&) { return {}; }

struct StepTaken {
    Step step{};
    int ampoule = 0;
    bool timed = true;
};

std::optional<StepTaken> stepOf(const Fact& fact)
{
    if (const auto* f = std::get_if<AmpouleOut>(&fact))
        return StepTaken{Step::Out, f->ampoule.no, true};
    if (const auto* f = std::get_if<AmpouleInBath>(&fact))
        return StepTaken{Step::Bath, f->ampoule.no, f->timed};
    if (const auto* f = std::get_if<AmpouleOpened>(&fact))
        return StepTaken{Step::Opened, f->ampoule.no, f->timed};
    if (const auto* f = std::get_if<AmpouleInDiluent>(&fact))
        return StepTaken{Step::Diluent, f->ampoule.no, f->timed};
    if (const auto* f = std::get_if<AmpouleRinsed>(&fact))
        return StepTaken{Step::Rinsed, f->ampoule.no, f->timed};
    if (const auto* f = std::get_if<AmpouleBagged>(&fact))
        return StepTaken{Step::Bagged, f->ampoule.no, f->timed};
    return std::nullopt;
}

}  // namespace

QString shortText(const Fact& fact)
{
    return std::visit([](const auto& one) { return brief(one); }, fact);
}

// Steps first, each with its ampoules; implied ones are left out. Then the rest, each word once.
QString shortText(std::span<const Fact> facts)
{
    std::map<Step, QStringList> steps;
    QStringList parts, others;
    for (const Fact& fact : facts) {
        const auto taken = stepOf(fact);
        if (taken && taken->timed)
            steps[taken->step].append(QString::number(taken->ampoule));
        else if (!taken)
            others.append(shortText(fact));
    }
    for (const auto& [kind, ampoules] : steps)
        parts.append(step(kind, ampoules.join(QStringLiteral(", "))));
    others.removeAll(QString());
    others.removeDuplicates();
    return (parts + others).join(QStringLiteral(", "));
}

}  // namespace bathside::ui
