#include <QCoreApplication>
#include <QLocale>

#include "ui/text/fact_sentences.h"
#include "ui/text/fact_text.h"
#include "ui/text/numbers.h"
#include "ui/text/subjects.h"
#include "ui/text/words.h"

namespace bathside::ui {
QString sentenceOf(const ShiftOpened& fact)
{
    return FactText::tr("The shift opened, local time of %1.").arg(fromCore(fact.zone));
}

QString sentenceOf(const ShiftClosed& fact)
{
    return FactText::tr("The shift closed: ampoules out %1, in bags %2, lost %3; bags %4.")
        .arg(fact.out)
        .arg(fact.bagged)
        .arg(fact.lost)
        .arg(fact.bags);
}

QString sentenceOf(const DutyTaken& fact)
{
    return FactText::tr("%1 came on duty.").arg(idText(fact.person));
}

QString sentenceOf(const CheckRecorded& fact)
{
    const QString check = idText(fact.check);
    if (fact.value)
        return fact.ok ? FactText::tr("Check \"%1\" is done: %2.").arg(check, fromCore(*fact.value))
                       : FactText::tr("Check \"%1\" failed: %2.").arg(check, fromCore(*fact.value));
    return fact.ok ? FactText::tr("Check \"%1\" is done.").arg(check)
                   : FactText::tr("Check \"%1\" failed.").arg(check);
}

QString sentenceOf(const CheckOverridden& fact)
{
    return FactText::tr("Check \"%1\" was overridden. Reason: %2.")
        .arg(idText(fact.check), fromCore(fact.why));
}

QString sentenceOf(const ReadingTaken& fact)
{
    if (fact.fault)
        return FactText::tr("Bath: no reading. %1", "followed by the sentence that says why")
            .arg(wordOf(*fact.fault));
    const auto value = fact.corrected ? fact.corrected : fact.raw;
    const QString verdict = wordOf(fact.verdict.value_or(Verdict::Undecided));
    if (!value)
        return FactText::tr("Bath: no reading.");
    const QString number =
        fact.expanded ? temperatureText(*value, *fact.expanded) : temperatureText(*value);
    return FactText::tr("Bath: %1, %2.", "temperature, verdict").arg(number, verdict);
}

QString sentenceOf(const BathChanged& fact)
{
    return FactText::tr("The bath water was changed. Reason: %1.").arg(fromCore(fact.why));
}

QString sentenceOf(const BirdsCounted& fact)
{
    return FactText::tr("Line %1: %2 birds in all.")
        .arg(idText(fact.line), countText(fact.total, QLocale()));
}

QString sentenceOf(const NeedleChanged& fact)
{
    return FactText::tr("Line %1: the needle was changed.").arg(idText(fact.line));
}
QString sentenceOf(const LineStopped& fact)
{
    return FactText::tr("Line %1 stopped.").arg(idText(fact.line));
}
QString sentenceOf(const LineGoing& fact)
{
    return FactText::tr("Line %1 is going again.").arg(idText(fact.line));
}

QString sentenceOf(const DoseChecked& fact)
{
    return fact.ok
               ? FactText::tr("Line %1: the dose was checked and is right.").arg(idText(fact.line))
               : FactText::tr("Line %1: the dose was checked and is wrong.").arg(idText(fact.line));
}

QString sentenceOf(const BirdsChecked& fact)
{
    const QString said = FactText::tr("Line %1: of %2 birds looked at, %3 were vaccinated well.")
                             .arg(idText(fact.line))
                             .arg(fact.looked)
                             .arg(fact.good);
    if (!fact.targetPerMille || !fact.confidencePerMille)
        return said;
    return FactText::tr("%1 To be shown: %2 %, with %3 % confidence.",
                        "what was looked at; a share")
        .arg(said, scaledText(*fact.targetPerMille, 1, 1, QLocale()),
             scaledText(*fact.confidencePerMille, 1, 1, QLocale()));
}

}  // namespace bathside::ui
