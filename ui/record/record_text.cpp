#include "ui/record/record_text.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <cstring>
#include <system_error>

#include "ui/text/copies.h"
#include "ui/text/faults.h"
#include "ui/text/numbers.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

struct RecordText {
    Q_DECLARE_TR_FUNCTIONS(RecordText)
};

QString number(std::int64_t value) { return countText(value, QLocale()); }

QList<Field> headFields(const Verification& chain)
{
    return {{RecordText::tr("entries"), number(chain.count)},
            {RecordText::tr("last sound entry"), number(chain.head.seq)},
            {RecordText::tr("its hash"), hexText(chain.head.hash)},
            {RecordText::tr("seals"), number(chain.seals)}};
}

/// What the clock did, where that is worth knowing: no flaw, as the order of the entries is kept.
QList<Field> clockFields(const Verification& chain)
{
    if (chain.setBacks == 0)
        return {};
    return {{RecordText::tr("the clock"),
             chain.setBacks == 1
                 ? RecordText::tr("set back once, at entry %1; the order of the entries is kept")
                       .arg(chain.firstSetBack)
                 : RecordText::tr("set back %1 times, first at entry %2; the order of the entries "
                                  "is kept")
                       .arg(chain.setBacks)
                       .arg(chain.firstSetBack)}};
}

/// Where the record goes on from a file that was damaged.
QList<Field> originFields(const Verification& chain)
{
    if (!chain.continues)
        return {};
    return {{RecordText::tr("goes on from"),
             RecordText::tr("%1, which was damaged after entry %2", "a file; a number")
                 .arg(fromCore(chain.continues->file))
                 .arg(chain.continues->head.seq)}};
}

/// What is wrong, the worst first; empty when it is sound.
QString wrongWith(const VerifyAnswer& answer)
{
    if (answer.chain.flaw)
        return RecordText::tr("The record is NOT sound. First at entry %1: %2",
                              "number, followed by a sentence")
            .arg(answer.chain.flaw->seq)
            .arg(flawText(*answer.chain.flaw));
    if (answer.chain.badSeal)
        return RecordText::tr("The seal at entry %1 is NOT good: %2",
                              "number, followed by a sentence")
            .arg(answer.chain.badSeal->seq)
            .arg(sealFlawText(answer.chain.badSeal->flaw));
    if (answer.trouble)
        return RecordText::tr("The record could not be read to its end. %1",
                              "followed by a sentence")
            .arg(faultText(*answer.trouble));
    if (!answer.indexesAgree)
        return RecordText::tr(
            "The entries are sound; the indexes could not be compared with them.");
    if (!*answer.indexesAgree)
        return RecordText::tr("The entries are sound, but the indexes do not agree with them.");
    return {};
}

QString systemText(std::int64_t errorNumber)
{
    const std::error_code error(static_cast<int>(errorNumber), std::system_category());
    return QString::fromStdString(error.message());
}

}  // namespace

QString wordOf(Group group)
{
    switch (group) {
        case Group::All:
            return RecordText::tr("everything");
        case Group::Ampoules:
            return RecordText::tr("ampoules");
        case Group::Bags:
            return RecordText::tr("bags");
        case Group::Lines:
            return RecordText::tr("lines");
        case Group::Bath:
            return RecordText::tr("bath");
        case Group::Shift:
            return RecordText::tr("shift and checks");
        case Group::Alarms:
            return RecordText::tr("alarms");
        case Group::Deviations:
            return RecordText::tr("deviations and corrections");
        case Group::Station:
            return RecordText::tr("station");
        case Group::Stores:
            return RecordText::tr("stores");
        case Group::People:
            return RecordText::tr("people and signatures");
    }
    Q_UNREACHABLE();
}

QString daysText(const DayRange& days)
{
    if (days.first == days.last)
        return dayText(days.first);
    return RecordText::tr("%1 to %2", "first day, last day")
        .arg(dayText(days.first), dayText(days.last));
}

QString wishText(const DayWish& wish)
{
    QStringList parts;
    if (wish.group != Group::All)
        parts.append(wordOf(wish.group));
    if (!wish.person.empty())
        parts.append(RecordText::tr("person %1").arg(fromCore(wish.person)));
    if (!wish.bag.empty())
        parts.append(RecordText::tr("bag %1").arg(fromCore(wish.bag)));
    if (!wish.lot.empty())
        parts.append(RecordText::tr("lot %1").arg(fromCore(wish.lot)));
    return parts.isEmpty()
               ? QString()
               : RecordText::tr("only %1", "what is shown").arg(parts.join(QStringLiteral(", ")));
}

QString flawText(const Flaw& flaw)
{
    switch (flaw.kind) {
        case FlawKind::Unreadable:
            return RecordText::tr("it cannot be read.");
        case FlawKind::NotCanonical:
            return RecordText::tr("it is not written the way the station writes.");
        case FlawKind::BadTime:
            return RecordText::tr("its time is no time.");
        case FlawKind::BadHash:
            return RecordText::tr("it was changed after it was written, or the one before it was.");
        case FlawKind::Missing:
            return RecordText::tr("it is missing.");
        case FlawKind::Reordered:
            return RecordText::tr("it is not in its place.");
        case FlawKind::Duplicate:
            return RecordText::tr("it is there twice.");
        case FlawKind::ForeignStation:
            return RecordText::tr("it comes from another station.");
        case FlawKind::Unlisted:
            return RecordText::tr("it is not on the list that came with the record.");
        case FlawKind::HeadMismatch:
            return RecordText::tr("it is not the one that was noted elsewhere.");
        case FlawKind::Truncated:
            return RecordText::tr("the record ends before it.");
    }
    Q_UNREACHABLE();
}

QString sealFlawText(SealFlaw flaw)
{
    switch (flaw) {
        case SealFlaw::NotGenuine:
            return RecordText::tr("it was changed, or not made with the key that it names.");
        case SealFlaw::OtherHead:
            return RecordText::tr("it seals another record than this one.");
        case SealFlaw::OtherKey:
            return RecordText::tr("it was made with another key than the seals before it.");
    }
    Q_UNREACHABLE();
}

QString exportFaultText(const ExportFault& fault)
{
    switch (fault.kind) {
        case ExportFault::Kind::NoSuchZone:
            return RecordText::tr("This computer does not know the time zone of the record.");
        case ExportFault::Kind::NoSuchDay:
            return RecordText::tr("There is no such day in the time zone of the record.");
        case ExportFault::Kind::Incomplete:
            return RecordText::tr("Entry %1 is missing. Verify the record.").arg(fault.seq);
        case ExportFault::Kind::Trail:
            return faultText(fault.trouble);
        case ExportFault::Kind::Sink:
            break;
    }
    if (fault.sink.errorNumber == 0)
        return RecordText::tr("The files could not be written. Choose another place.");
    return RecordText::tr("The files could not be written (%1). Choose another place.",
                          "the system's own words")
        .arg(systemText(fault.sink.errorNumber));
}

QString placeText(const RecordPlace& place)
{
    return place.stick.isEmpty() ? RecordText::tr("this computer") : place.stick;
}

Sheet sheetOf(const VerifyAnswer& answer)
{
    const QString wrong = wrongWith(answer);
    const QList<Field> more = originFields(answer.chain) + clockFields(answer.chain);
    if (!wrong.isEmpty())
        return {Role::Limit, wrong, headFields(answer.chain) + more};
    return {
        Role::Good, RecordText::tr("The record is sound: nothing was changed, left out or put in."),
        headFields(answer.chain) + more +
            QList<Field>{{RecordText::tr("what to do"),
                          RecordText::tr("Write this number and hash down and keep them elsewhere: "
                                         "only so is a record that was cut short found out.")}}};
}

Sheet sheetOf(const ExportAnswer& answer)
{
    if (answer.fault)
        return {Role::Limit,
                RecordText::tr("Not exported. %1").arg(exportFaultText(*answer.fault)),
                {}};
    if (answer.manifest.count == 0)
        return {Role::HeadsUp,
                RecordText::tr("There is no record of %1; nothing was written.")
                    .arg(daysText(answer.days)),
                {}};
    const bool isWhole = !answer.sheetFault;
    QStringList files;
    for (const auto& file : answer.manifest.files)
        files.append(fromCore(file.name));
    Sheet sheet{
        isWhole ? Role::Good : Role::HeadsUp,
        RecordText::tr("%1: %n entries exported.", "a day", static_cast<int>(answer.manifest.count))
            .arg(daysText(answer.days)),
        {{RecordText::tr("folder"), answer.folder},
         {RecordText::tr("files"),
          files.join(QStringLiteral(", ")) + QStringLiteral(", ") +
              QString::fromLatin1(kManifestFile.data(), kManifestFile.size())},
         {RecordText::tr("last entry"), number(answer.manifest.last.seq)},
         {RecordText::tr("its hash"), hexText(answer.manifest.last.hash)},
         {RecordText::tr("signature"),
          answer.manifest.key.empty()
              ? RecordText::tr("none: the station has no key")
              : RecordText::tr("by the key %1").arg(fromCore(answer.manifest.key))}}};
    if (!answer.damaged.empty()) {
        sheet.role = Role::Limit;
        sheet.fields.append({RecordText::tr("cannot be read"),
                             RecordText::tr("%n entries, the first is %1: the sheets are without "
                                            "what they said. Verify the record.",
                                            nullptr, static_cast<int>(answer.damaged.size()))
                                 .arg(answer.damaged.front())});
    }
    if (answer.days.count() > ExportAnswer::kMostDaysOnPaper)
        sheet.fields.append({RecordText::tr("without the day sheet"),
                             RecordText::tr("only exports of %n day(s) at most have it", nullptr,
                                            ExportAnswer::kMostDaysOnPaper)});
    if (!isWhole)
        sheet.fields.append(
            {RecordText::tr("without the day sheet"), faultText(*answer.sheetFault)});
    return sheet;
}

Sheet sheetOf(const SheetAnswer& answer)
{
    if (answer.fault)
        return {
            Role::Limit,
            RecordText::tr("The day sheet was not made. %1").arg(exportFaultText(*answer.fault)),
            {}};
    return {Role::HeadsUp,
            RecordText::tr("There is no record of %1: no day sheet was made.")
                .arg(dayText(answer.date)),
            {}};
}

Sheet sheetOf(const CopyAnswer& answer)
{
    if (answer.trouble) {
        const bool unwritable = answer.trouble->fault == StoreFault::WriteFailed;
        return {
            Role::Limit,
            RecordText::tr("Not copied. %1")
                .arg(unwritable
                         ? exportFaultText(
                               {ExportFault::Kind::Sink, 0, {}, {{}, answer.trouble->errorNumber}})
                         : faultText(*answer.trouble)),
            {}};
    }
    const QList<Field> file{{RecordText::tr("file"), answer.file}};
    if (const QString wrong = wrongWith(answer.check); !wrong.isEmpty())
        return {Role::Limit, RecordText::tr("The copy was written but is not good. %1").arg(wrong),
                file + headFields(answer.check.chain)};
    QString said = RecordText::tr("Copied, read back and found sound.");
    if (!answer.renamed.isEmpty())
        said += u' ' + renamedText(answer.renamed);
    return {Role::Good, said, file + headFields(answer.check.chain)};
}

}  // namespace bathside::ui
