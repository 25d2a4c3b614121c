#include "ui/record/entry_text.h"

#include <QCoreApplication>
#include <QLocale>

#include "core/base/rfc3339.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

struct EntryText {
    Q_DECLARE_TR_FUNCTIONS(RecordText)
};

QString whoText(const Entry& entry)
{
    if (!entry.person)
        return EntryText::tr("Entry %1 by the station itself.").arg(entry.seq);
    const QString who = entry.person->proof == Proof::Proven
                            ? EntryText::tr("Entry %1 by %2, proven by PIN.", "number, initials")
                            : EntryText::tr("Entry %1 by %2, claimed.", "number, initials");
    return who.arg(entry.seq).arg(idText(entry.person->id));
}

/// In seconds, as the record has it in µs.
QString bootText(Micros boot)
{
    const auto ms = std::chrono::floor<Millis>(boot).count();
    return QLocale().toString(static_cast<double>(ms) / 1000, 'f', 3);
}

/// What the entries at both ends of a link are to each other.
struct Bond {
    QString forth = EntryText::tr("linked");  // what it points at
    QString back = EntryText::tr("linked");   // what points at it
};

Bond bondOf(const FactCorrected&)
{
    return {EntryText::tr("what it corrects"), EntryText::tr("its correction")};
}
Bond bondOf(const FactTakenBack&)
{
    return {EntryText::tr("what it takes back"), EntryText::tr("what took it back")};
}
Bond bondOf(const DeviationFound&)
{
    return {EntryText::tr("it follows from this"), EntryText::tr("a deviation from it")};
}
Bond bondOf(const Rejudged&)
{
    return {EntryText::tr("it follows from this"), EntryText::tr("judged anew by it")};
}
Bond bondOf(const DeviationReviewed&)
{
    return {EntryText::tr("the deviation reviewed"), EntryText::tr("its review")};
}
Bond bondOf(const NoteCommented&)
{
    return {EntryText::tr("the note"), EntryText::tr("a comment on it")};
}
Bond bondOf(const RecordSigned&)
{
    return {EntryText::tr("what is signed"), EntryText::tr("its signature")};
}
Bond bondOf(const auto&) { return {}; }

}  // namespace

QString aboutText(const DayRow& row, const std::string& zone)
{
    return whoText(row.entry) + u' ' +
           EntryText::tr("Local time %1, boot clock %2 s.")
               .arg(localTimeText(row.entry.at, zone), bootText(row.entry.boot));
}

QString bondText(const DayRow& row, const DayRow* other)
{
    const bool points = !other || row.about.entries.contains(other->entry.seq);
    const DayRow& pointing = points ? row : *other;
    const Bond bond = pointing.fact ? std::visit([](const auto& fact) { return bondOf(fact); },
                                                 static_cast<const AnyFact&>(*pointing.fact))
                                    : Bond{};
    const QString said = points ? bond.forth : bond.back;
    return other ? said : EntryText::tr("%1, on another day").arg(said);
}

Sheet sheetOf(const DayRow& row, const std::string& zone)
{
    const Entry& entry = row.entry;
    QList<Field> fields{
        {EntryText::tr("kind"), fromCore(entry.kind)},
        {EntryText::tr("local time"), localDateTimeText(entry.at, zone)},
        {EntryText::tr("UTC"), QString::fromStdString(toRfc3339(entry.at))},
        {EntryText::tr("boot clock"),
         EntryText::tr("%1 µs since the computer's start").arg(entry.boot.count())},
        {EntryText::tr("person"),
         entry.person ? EntryText::tr("%1 (%2)", "initials, how sure the record is of it")
                            .arg(idText(entry.person->id), wordOf(entry.person->proof))
                      : EntryText::tr("none: the station itself")},
        {EntryText::tr("hash"), hexText(entry.hash)},
    };
    if (entry.byReceipt)
        fields.append({EntryText::tr("time of"),
                       EntryText::tr("receipt: the tap's own time was not plausible")});
    fields.append({EntryText::tr("exact text"), QString::fromStdString(canonicalText(entry))});
    return {Role::Neutral,
            EntryText::tr("Entry %1: %2", "number, sentence").arg(entry.seq).arg(sentenceOf(row)),
            fields};
}

}  // namespace bathside::ui
