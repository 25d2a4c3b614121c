#include <QCoreApplication>

#include "ui/text/fact_sentences.h"
#include "ui/text/fact_text.h"
#include "ui/text/numbers.h"
#include "ui/text/review.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

QString of(const QString& sentence, AmpouleRef ampoule)
{
    return sentence.arg(ampoule.no).arg(ampoule.pull);
}

// A step that a later one implied has an order and no time of its own.
QString timed(const QString& sentence, bool timed)
{
    return timed
               ? sentence
               : FactText::tr("%1 Implied by a later step, not timed.", "added to a whole sentence")
                     .arg(sentence);
}

}  // namespace

QString sentenceOf(const BagStarted& fact)
{
    const QString bag = idText(fact.bag), volume = volumeText(fact.volume),
                  lot = idText(fact.diluentLot);
    if (!fact.temperature)
        return FactText::tr("Bag %1 was started: %2, diluent lot %3.").arg(bag, volume, lot);
    return FactText::tr("Bag %1 was started: %2, diluent lot %3, at %4.")
        .arg(bag, volume, lot, temperatureText(*fact.temperature));
}

QString sentenceOf(const BagInspected& fact)
{
    return fact.ok ? FactText::tr("Bag %1 was inspected and is good.").arg(idText(fact.bag))
                   : FactText::tr("Bag %1 was inspected and is not good.").arg(idText(fact.bag));
}

QString sentenceOf(const DiluentDrawn& fact)
{
    return FactText::tr("%1 of diluent were drawn from bag %2.", "volume, bag")
        .arg(volumeText(fact.volume), idText(fact.bag));
}

QString sentenceOf(const BagMixed& fact)
{
    return FactText::tr("Bag %1 was mixed.").arg(idText(fact.bag));
}
QString sentenceOf(const BagSwirled& fact)
{
    return FactText::tr("Bag %1 was swirled.").arg(idText(fact.bag));
}

QString sentenceOf(const BagHung& fact)
{
    return FactText::tr("Bag %1 was hung on line %2.").arg(idText(fact.bag), idText(fact.line));
}

QString sentenceOf(const BagHeld& fact)
{
    const QString bag = idText(fact.bag), why = wordOf(fact.why);
    if (!fact.words || fact.words->empty())
        return FactText::tr("Bag %1 was put on hold: %2.", "bag, reason").arg(bag, why);
    return FactText::tr("Bag %1 was put on hold: %2, %3.", "bag, reason, more words")
        .arg(bag, why, fromCore(*fact.words));
}

QString sentenceOf(const BagReleased& fact)
{
    return FactText::tr("%1 ended the hold of bag %2: %3.", "who, bag, what was decided")
        .arg(idText(fact.by), idText(fact.bag), dispositionText(fact.why));
}

QString sentenceOf(const BagDown& fact)
{
    return FactText::tr("Bag %1 was taken down: %2, %3 left.", "bag, reason, volume")
        .arg(idText(fact.bag), wordOf(fact.why), volumeText(fact.left));
}

QString sentenceOf(const AmpouleOut& fact)
{
    return of(FactText::tr("Ampoule %1 of pull %2 came out of the cryogen: %3, lot %4.",
                           "ampoule, pull, component, lot"),
              fact.ampoule)
        .arg(idText(fact.component), idText(fact.lot));
}

QString sentenceOf(const AmpouleInBath& fact)
{
    return timed(of(FactText::tr("Ampoule %1 of pull %2 went into the bath."), fact.ampoule),
                 fact.timed);
}

QString sentenceOf(const AmpouleOpened& fact)
{
    return timed(of(FactText::tr("Ampoule %1 of pull %2 was opened."), fact.ampoule), fact.timed);
}

QString sentenceOf(const AmpouleInDiluent& fact)
{
    return timed(of(FactText::tr("Ampoule %1 of pull %2 went into diluent."), fact.ampoule),
                 fact.timed);
}

QString sentenceOf(const AmpouleRinsed& fact)
{
    return timed(of(FactText::tr("Ampoule %1 of pull %2 was rinsed."), fact.ampoule), fact.timed);
}

QString sentenceOf(const AmpouleBagged& fact)
{
    return timed(of(FactText::tr("Ampoule %1 of pull %2 went into bag %3."), fact.ampoule)
                     .arg(idText(fact.bag)),
                 fact.timed);
}

QString sentenceOf(const AmpouleLost& fact)
{
    return of(FactText::tr("Ampoule %1 of pull %2 was lost: %3.", "ampoule, pull, reason"),
              fact.ampoule)
        .arg(wordOf(fact.why));
}

QString sentenceOf(const CaneExposed& fact)
{
    return FactText::tr(
               "The cane at %1 was out of the cryogen for %2; what stays on it is in quarantine.")
        .arg(fromCore(fact.place), durationText(fact.time));
}

QString sentenceOf(const PullPlanned& fact)
{
    return FactText::tr("The next pull is planned for %1.")
        .arg(localDateTimeText(fact.start, "UTC"));
}

}  // namespace bathside::ui
