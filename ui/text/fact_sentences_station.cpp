#include <QCoreApplication>

#include "ui/text/fact_sentences.h"
#include "ui/text/fact_text.h"
#include "ui/text/faults.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
QString sentenceOf(const StationStarted& fact)
{
    return fact.rehearsal
               ? FactText::tr("The station started for a rehearsal, version %1.")
                     .arg(fromCore(fact.version))
               : FactText::tr("The station started, version %1.").arg(fromCore(fact.version));
}

QString sentenceOf(const StationStopped&) { return FactText::tr("The station stopped."); }

QString sentenceOf(const ClockStepped& fact)
{
    const QString by = durationText(fact.by < Millis::zero() ? -fact.by : fact.by);
    return fact.by < Millis::zero() ? FactText::tr("The wall clock was put back by %1.").arg(by)
                                    : FactText::tr("The wall clock was put forward by %1.").arg(by);
}

QString sentenceOf(const ClockChecked& fact)
{
    return fact.synchronised ? FactText::tr("The wall clock is synchronised.")
                             : FactText::tr("The wall clock is not synchronised.");
}

QString sentenceOf(const StoreFailed& fact)
{
    return FactText::tr("The record failed. %1", "followed by the sentence that says why")
        .arg(faultText({fact.fault, fact.errorNumber}));
}

QString sentenceOf(const StoreRecovered& fact)
{
    return FactText::tr("The record works again; %n event(s) were brought in.", "",
                        static_cast<int>(fact.merged));
}

QString sentenceOf(const SoundProven& fact)
{
    if (fact.device.empty())
        return FactText::tr("The alarm was heard.");
    return FactText::tr("The alarm was heard from %1.", "a loudspeaker").arg(fromCore(fact.device));
}

QString sentenceOf(const SoundLost& fact)
{
    if (fact.device.empty())
        return FactText::tr("The sound was lost.");
    return FactText::tr("The sound was lost on %1.", "a loudspeaker").arg(fromCore(fact.device));
}

QString sentenceOf(const SoundFound& fact)
{
    if (fact.device.empty())
        return FactText::tr("The sound is back.");
    return FactText::tr("The sound is back on %1.", "a loudspeaker").arg(fromCore(fact.device));
}

QString sentenceOf(const CardAdopted&) { return FactText::tr("A procedure card was adopted."); }

QString sentenceOf(const ProbeDescribed& fact)
{
    return FactText::tr("Thermometer %1 was described.").arg(idText(fact.probe));
}

}  // namespace bathside::ui
