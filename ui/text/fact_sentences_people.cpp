#include <QCoreApplication>
#include <QLocale>

#include "ui/text/fact_sentences.h"
#include "ui/text/fact_text.h"
#include "ui/text/numbers.h"
#include "ui/text/review.h"
#include "ui/text/subjects.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

/// As much of a hash as two people compare by eye.
QString startOf(const std::string& hash) { return fromCore(hash.substr(0, 12)); }

}  // namespace

QString sentenceOf(const VesselDescribed& fact)
{
    return FactText::tr("Vessel %1 is described anew.").arg(idText(fact.vessel));
}

QString sentenceOf(const VesselDipped& fact)
{
    return fact.filled ? FactText::tr("Vessel %1 was filled; its dipstick shows %2 mm.")
                             .arg(idText(fact.vessel), number(fact.millimetres))
                       : FactText::tr("Vessel %1: the dipstick shows %2 mm.")
                             .arg(idText(fact.vessel), number(fact.millimetres));
}

QString sentenceOf(const PersonListed& fact)
{
    const QString id = idText(fact.person), name = fromCore(fact.name);
    return fact.departed ? FactText::tr("%1 (%2) works here no more.").arg(name, id)
                         : FactText::tr("%1 (%2) is listed as %3.", "name, initials, role")
                               .arg(name, id, wordOf(fact.role));
}

QString sentenceOf(const PinSet& fact)
{
    return FactText::tr("%1 has a new PIN.").arg(idText(fact.person));
}

QString sentenceOf(const PinRefused& fact)
{
    return FactText::tr("A PIN was given that is not that of %1.").arg(idText(fact.person));
}

QString sentenceOf(const RecordSigned& fact)
{
    const QString words = fromCore(fact.words);
    QStringList entries;
    for (const Seq seq : fact.of)
        entries.append(QString::number(seq));
    const QString said = entries.isEmpty()
                             ? FactText::tr("Signed: %1.", "meaning").arg(wordOf(fact.meaning))
                             : FactText::tr("Signed: %1, entry %2.", "meaning, what was signed")
                                   .arg(wordOf(fact.meaning), entries.join(QStringLiteral(", ")));
    return words.isEmpty() ? said : said + u' ' + words;
}

QString sentenceOf(const DeviationReviewed& fact)
{
    const QString words = fact.words.empty() ? QString() : u' ' + fromCore("(" + fact.words + ")");
    return FactText::tr("Deviation of event %1 reviewed. Cause: %2. Action: %3.")
        .arg(QString::number(fact.of), causeText(fact.cause) + words, actionText(fact.action));
}

QString sentenceOf(const ReviewCarried&)
{
    return FactText::tr("Deviations that nobody has reviewed yet were carried into this shift.");
}

QString sentenceOf(const NoteCommented& fact)
{
    return FactText::tr("On the note of event %1: %2")
        .arg(QString::number(fact.of), fromCore(fact.text));
}

QString sentenceOf(const CardApproved& fact)
{
    return FactText::tr("The card %1 is approved; it holds from the next bag.", "hash")
        .arg(startOf(fact.card.text));
}

QString sentenceOf(const DaySealed& fact)
{
    return FactText::tr("The record was sealed after %1 events; its head is %2.", "count, hash")
        .arg(number(fact.count), startOf(fact.head));
}

QString sentenceOf(const SealWitnessed& fact)
{
    return fact.agrees
               ? FactText::tr("A printed seal of %1 events was read back: the record agrees.")
                     .arg(number(fact.count))
               : FactText::tr(
                     "A printed seal of %1 events was read back: the record does NOT agree.")
                     .arg(number(fact.count));
}

QString sentenceOf(const BackupMade& fact)
{
    return FactText::tr("A copy of the record was made and verified: %1.")
        .arg(fromCore(fact.place));
}

QString sentenceOf(const BaselineChosen& fact)
{
    if (fact.isWithdrawal())
        return FactText::tr("The baseline of the chart \"%1\" was withdrawn.")
            .arg(fromCore(fact.chart));
    return FactText::tr("The limits of the chart \"%1\" come from events %2 to %3.")
        .arg(fromCore(fact.chart), number(fact.from), number(fact.to));
}

QString sentenceOf(const TrailContinued& fact)
{
    return FactText::tr("This record goes on where %1 was still sound, after %2 events.")
        .arg(fromCore(fact.file), number(fact.count));
}

}  // namespace bathside::ui
