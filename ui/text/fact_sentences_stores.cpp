#include <QCoreApplication>
#include <QLocale>

#include "ui/text/fact_sentences.h"
#include "ui/text/fact_text.h"
#include "ui/text/numbers.h"
#include "ui/text/stores.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
QString sentenceOf(const LinePlanned& fact)
{
    if (fact.removed)
        return FactText::tr("Line %1 is planned no more.").arg(idText(fact.line));
    return FactText::tr("Line %1 is planned: %2 birds at %3 an hour.")
        .arg(idText(fact.line), number(fact.birds), number(fact.birdsPerHour));
}

QString sentenceOf(const StoreReceived& fact)
{
    return FactText::tr("Received: %1 of %2, at %3.", "how many, what, place")
        .arg(number(fact.count), stockText(fact.of), placeWords(fact.place));
}

QString sentenceOf(const StoreMoved& fact)
{
    return FactText::tr("Moved: %1 of %2, from %3 to %4.", "how many, what, places")
        .arg(number(fact.count), stockText(fact.of), placeWords(fact.from), placeWords(fact.to));
}

QString sentenceOf(const StoreCounted& fact)
{
    return FactText::tr("Counted: %1 of %2, at %3.", "how many, what, place")
        .arg(number(fact.count), stockText(fact.of), placeWords(fact.place));
}

QString sentenceOf(const StoreDiscarded& fact)
{
    return FactText::tr("Taken out of the stores: %1 of %2, from %3. Reason: %4.",
                        "how many, what, place, why")
        .arg(number(fact.count), stockText(fact.of), placeWords(fact.place), wordOf(fact.why));
}

QString sentenceOf(const LotQuarantined& fact)
{
    const QString why = fromCore(fact.why);
    return fact.place
               ? FactText::tr("Put in quarantine: %1 at %2. Reason: %3.")
                     .arg(stockText(fact.of), placeWords(*fact.place), why)
               : FactText::tr("Put in quarantine: %1. Reason: %2.").arg(stockText(fact.of), why);
}

QString sentenceOf(const LotReleased& fact)
{
    return FactText::tr("%1 released %2 from quarantine. Reason: %3.")
        .arg(idText(fact.by), stockText(fact.of), fromCore(fact.why));
}

QString sentenceOf(const LotAllowed& fact)
{
    return FactText::tr("%1 allowed %2 for this shift. Reason: %3.")
        .arg(idText(fact.by), stockText(fact.of), fromCore(fact.why));
}

QString sentenceOf(const LotChosen& fact)
{
    return FactText::tr("The next ampoules of %1 are of lot %2.")
        .arg(idText(fact.component), idText(fact.lot));
}

QString sentenceOf(const BathCarried&)
{
    return FactText::tr("What the pulls so far say of the bath was carried into this shift.");
}

QString sentenceOf(const StoreCarried&)
{
    return FactText::tr("The balance of the stores was carried into this shift.");
}

}  // namespace bathside::ui
