#include "ui/print/day_sheet_pages.h"

#include <QCoreApplication>
#include <QLocale>

#include "core/scan/own_code.h"
#include "ui/print/day_sheet_tables.h"
#include "ui/text/cautions.h"
#include "ui/text/numbers.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

struct DayText {
    Q_DECLARE_TR_FUNCTIONS(DaySheet)
};

QString daysText(const DaySheet& sheet)
{
    if (sheet.first == sheet.last)
        return dayText(sheet.first);
    return DayText::tr("%1 to %2", "days").arg(dayText(sheet.first), dayText(sheet.last));
}

QString headText(const DaySheet& sheet)
{
    return QStringLiteral("%1:%2").arg(sheet.head.seq).arg(fromCore(toHex(sheet.head.hash)));
}

/// The site by its card: the last one in force.
QString siteText(const DaySheet& sheet)
{
    for (auto shift = sheet.shifts.rbegin(); shift != sheet.shifts.rend(); ++shift) {
        if (shift->card && !shift->card->content().site.empty())
            return fromCore(shift->card->content().site);
    }
    return DayText::tr("no site named");
}

SheetWriter::Frame frameOf(const DaySheet& sheet)
{
    constexpr qsizetype kShown = 16;  // digits of the hash
    const QString hash = fromCore(toHex(sheet.head.hash)).left(kShown);
    return {.title = DayText::tr("Day sheet: %1", "a day").arg(daysText(sheet)),
            .note = DayText::tr("%1 · station %2 · %3", "site, station, time zone")
                        .arg(siteText(sheet), idText(sheet.station), fromCore(sheet.zone)),
            .banner = sheet.rehearsal ? DayText::tr("REHEARSAL: not for birds") : QString(),
            .foot = DayText::tr("Bathside %1 · record %2:%3…", "version, entries, hash")
                        .arg(fromCore(sheet.version))
                        .arg(sheet.head.seq)
                        .arg(hash)};
}

QString shiftText(const SheetShift& shift)
{
    const QString opened = localDateTimeText(shift.opened, shift.zone);
    if (!shift.closed)
        return DayText::tr("%1, still open", "when a shift was opened").arg(opened);
    return DayText::tr("%1 to %2", "times of a shift")
        .arg(opened, localDateTimeText(*shift.closed, shift.zone));
}

void writeAbout(SheetWriter& writer, const DaySheet& sheet)
{
    SheetWriter::Facts facts{{DayText::tr("Site"), siteText(sheet)},
                             {DayText::tr("Station"), idText(sheet.station)},
                             {DayText::tr("Time zone"), fromCore(sheet.zone)},
                             {DayText::tr("Entries"), countText(sheet.entries, QLocale())}};
    for (const SheetShift& shift : sheet.shifts)
        facts.emplace_back(DayText::tr("Shift"), shiftText(shift));
    facts.emplace_back(DayText::tr("Head of the record"), headText(sheet));
    const auto code = codeOf(sheet);
    if (code)
        facts.emplace_back(QString(),
                           DayText::tr("Keep this sheet apart from the station. Scanned there on "
                                       "any page, the code tells whether the record is still the "
                                       "one that was printed."));
    writer.facts(facts, code ? barcodeOf(Symbology::QrCode, *code) : std::nullopt);
    if (code)
        writer.facts({{DayText::tr("The code says"), fromCore(*code)}});
    if (sheet.shifts.empty())
        writer.paragraph(DayText::tr("No shift was opened on this day."), Weight::Strong);
}

void writeCard(SheetWriter& writer, const SheetShift& shift)
{
    if (!shift.card) {
        writer.paragraph(DayText::tr("The procedure card of this shift is not in this file: no "
                                     "limits and no checks are shown. Its hash: %1")
                             .arg(shift.cardHash.text.empty() ? QStringLiteral("–")
                                                              : fromCore(shift.cardHash.text)),
                         Weight::Strong);
        return;
    }
    const Card::Content& card = shift.card->content();
    writer.facts({{DayText::tr("Procedure card"),
                   DayText::tr("%1, version %2").arg(fromCore(card.name)).arg(card.version)},
                  {DayText::tr("Card's hash"), fromCore(shift.card->hash().text)},
                  {DayText::tr("Approved"), shift.isCardApproved
                                                ? DayText::tr("by a shift lead's signature")
                                                : DayText::tr("not by a signature on record")}});
}

void writeTemperatures(SheetWriter& writer, const SheetShift& shift)
{
    writer.heading(DayText::tr("Water bath at each pull"));
    if (shift.card) {
        const BathRules& bath = shift.card->content().bath;
        writer.paragraph(DayText::tr("Target %1, tolerance %2; a reading is inside only where its "
                                     "uncertainty leaves no doubt.")
                             .arg(temperatureText(bath.target), temperatureText(bath.tolerance)));
    }
    writer.table(bathsTable(shift));
    for (const auto& probe : shift.probes)
        writer.paragraph(probeText(*probe));
}

void writeTimes(SheetWriter& writer, const SheetShift& shift)
{
    writer.heading(DayText::tr("Ampoules: times against their limits"));
    writer.table(ampoulesTable(shift));
    if (!shift.ampoules.empty()) {
        writer.heading(DayText::tr("Chart of times, as shares of their limits"));
        writer.columns(ampouleColumns(shift));
    }
    if (!shift.bags.empty())
        writer.columns(bagColumns(shift));
}

void writeDeviations(SheetWriter& writer, const DaySheet& sheet, const SheetShift& shift,
                     const std::string& language)
{
    writer.heading(DayText::tr("Deviations"));
    writer.table(deviationsTable(shift, sheet.people, language));
    for (const Deviation& deviation : shift.kept)
        writer.paragraph(keptText(deviation));
    if (shift.carried.empty())
        return;
    writer.heading(DayText::tr("Deviations of earlier shifts that were open"));
    writer.table(carriedTable(shift, sheet.people, language));
}

void writeShift(SheetWriter& writer, const DaySheet& sheet, const SheetShift& shift,
                const std::string& language)
{
    writer.heading(DayText::tr("Shift opened %1").arg(localDateTimeText(shift.opened, shift.zone)));
    writeCard(writer, shift);
    writer.heading(DayText::tr("Planned and done"));
    writer.table(linesTable(shift));
    writeDeviations(writer, sheet, shift, language);
    writer.heading(DayText::tr("Set-up checks"));
    writer.table(checksTable(shift, language));
    writer.heading(DayText::tr("Bags"));
    writer.table(bagsTable(shift));
    if (const SheetTable holds = holdsTable(shift); !holds.rows.empty())
        writer.table(holds);
    writeTimes(writer, shift);
    writeTemperatures(writer, shift);
    writer.heading(DayText::tr("Stores reckoned up"));
    writer.table(sumsTable(shift));
    writer.heading(DayText::tr("Notes"));
    writer.table(notesTable(shift));
}

void writeSeals(SheetWriter& writer, const DaySheet& sheet)
{
    writer.heading(DayText::tr("Seal"));
    if (sheet.seals.empty())
        writer.paragraph(DayText::tr("This day is not sealed."));
    for (const SheetSeal& seal : sheet.seals)
        writer.facts({{DayText::tr("Sealed"), DayText::tr("%1, by entry %2")
                                                  .arg(localDateTimeText(seal.at, sheet.zone))
                                                  .arg(seal.seq)},
                      {DayText::tr("Sealed head"),
                       QStringLiteral("%1:%2").arg(seal.seal.count).arg(fromCore(seal.seal.head))},
                      {DayText::tr("Public key"), fromCore(seal.seal.key)},
                      {DayText::tr("Signature"), fromCore(seal.seal.signature)}});
}

void writeEnd(SheetWriter& writer, const DaySheet& sheet)
{
    writer.heading(DayText::tr("Signatures"));
    writer.table(signaturesTable(sheet));
    writeSeals(writer, sheet);
    writer.heading(DayText::tr("Cautions"));
    writer.paragraph(cautionsText());
}

}  // namespace

std::optional<std::string> codeOf(const DaySheet& sheet)
{
    if (sheet.head.seq < 1)
        return std::nullopt;
    return textOf(SealCode{sheet.head.seq, toHex(sheet.head.hash)});
}

PaperPages pagesOf(const DaySheet& sheet, Paper paper, const std::string& language)
{
    SheetWriter writer(paper, frameOf(sheet));
    writeAbout(writer, sheet);
    for (const SheetShift& shift : sheet.shifts)
        writeShift(writer, sheet, shift, language);
    writeEnd(writer, sheet);
    return writer.pages();
}

}  // namespace bathside::ui
