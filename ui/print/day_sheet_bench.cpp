// The tables of bags, ampoules and the bath, and the columns of their times.

#include <QCoreApplication>

#include "ui/print/day_sheet_cells.h"
#include "ui/print/day_sheet_tables.h"
#include "ui/text/review.h"
#include "ui/text/subjects.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

struct DayText {
    Q_DECLARE_TR_FUNCTIONS(DaySheet)
};

using Cell = SheetTable::Cell;
using Row = SheetTable::Row;

QString joined(const QStringList& parts) { return parts.join(QStringLiteral(", ")); }

/// What is over stands out by its sign, its word and its weight.
Cell overCell(const QString& text, bool isOver)
{
    return {isOver ? DayText::tr("! %1 OVER", "a time that passed its limit").arg(text) : text,
            isOver};
}

Cell tookCell(const SheetTime& time)
{
    if (!time.took)
        return overCell(kNone, time.isOver);
    QStringList parts{durationText(std::chrono::floor<Millis>(time.took->time))};
    if (!time.isTimed)
        parts.append(DayText::tr("not tapped", "a step whose time is not known"));
    if (!time.took->certain)
        parts.append(DayText::tr("uncertain", "a time across a restart"));
    return overCell(joined(parts), time.isOver);
}

QString limitText(const SheetTime& time) { return time.limit ? durationText(*time.limit) : kNone; }

QString lotsText(const BagContent& content)
{
    QStringList lots;
    for (const auto& [lot, count] : content.lots)
        lots.append(QStringLiteral("%1\u00a0× %2 %3")
                        .arg(count)
                        .arg(idText(lot.first), idText(lot.second)));
    return lots.isEmpty() ? kNone : joined(lots);
}

QString diluentText(const Bag& bag)
{
    QStringList parts{volumeText(bag.volume), idText(bag.diluentLot)};
    if (bag.temperature)
        parts.append(temperatureText(*bag.temperature));
    return joined(parts);
}

QString hungText(const Bag& bag, const std::string& zone)
{
    if (!bag.hung || !bag.line)
        return kNone;
    return QStringLiteral("%1 %2").arg(idText(*bag.line), timeText(bag.hung, zone));
}

/// How it ended; on hold, too, where it is.
QString downText(const Bag& bag, const std::string& zone)
{
    QStringList parts;
    if (const BagHold* hold = bag.held())
        parts.append(DayText::tr("ON HOLD %1: %2", "since when, why")
                         .arg(localTimeText(hold->moment.at.wall, zone), wordOf(hold->why)));
    if (bag.down)
        parts.append(DayText::tr("%1 %2, %3 left", "when, why, how much was left in the bag")
                         .arg(localTimeText(bag.down->moment.at.wall, zone), wordOf(bag.down->why),
                              volumeText(bag.down->left)));
    return parts.isEmpty() ? DayText::tr("not down", "a bag") : parts.join(QStringLiteral("; "));
}

Row holdRow(const Bag& bag, const BagHold& hold, const std::string& zone)
{
    const auto& released = hold.released;
    const QString why =
        hold.words.empty() ? wordOf(hold.why) : joined({wordOf(hold.why), fromCore(hold.words)});
    return {{idText(bag.id), true},
            {localTimeText(hold.moment.at.wall, zone)},
            {why},
            {released ? localDateTimeText(released->moment.at.wall, zone)
                      : DayText::tr("! NOT DECIDED", "on a bag on hold"),
             !released},
            {released ? idText(released->by) : kNone},
            {released ? dispositionText(released->words) : kNone}};
}

QString remarkOf(const SheetAmpoule& ampoule)
{
    if (ampoule.lost)
        return DayText::tr("lost: %1").arg(wordOf(*ampoule.lost));
    return ampoule.bag ? idText(*ampoule.bag) : DayText::tr("in no bag");
}

Cell verdictCell(const SheetBath& bath)
{
    if (!bath.verdict)
        return {DayText::tr("! no reading that counts"), true};
    const bool isOut = bath.isOver || *bath.verdict == Verdict::Outside;
    const QString word = wordOf(*bath.verdict);
    return {isOut ? QStringLiteral("! %1").arg(word.toUpper()) : word, isOut};
}

Row bathRow(const SheetBath& bath, const std::string& zone)
{
    const auto& reading = bath.reading;
    const QString indicated = reading && reading->raw ? temperatureText(*reading->raw) : kNone;
    QString corrected = kNone;
    if (reading && reading->corrected && reading->expanded)
        corrected = QStringLiteral("%1\u00a0± %2\u00a0°C")
                        .arg(scaledText(reading->corrected->count, 3, 2, QLocale()),
                             scaledText(reading->expanded->count, 3, 2, QLocale()));
    return {{QString::number(bath.pull)},
            {timeText(bath.at, zone)},
            {reading ? idText(reading->probe) : kNone},
            {indicated},
            {corrected},
            verdictCell(bath)};
}

std::optional<double> shareOf(const SheetTime& time)
{
    if (!time.took || !time.limit || time.limit->count() <= 0)
        return std::nullopt;
    return static_cast<double>(time.took->time.count()) /
           static_cast<double>(Micros(*time.limit).count());
}

QString limitWord() { return DayText::tr("limit", "beside a line of a chart"); }

}  // namespace

SheetTable bagsTable(const SheetShift& shift)
{
    SheetTable table{{{DayText::tr("bag"), 0.05},
                      {DayText::tr("diluent: volume, lot, temperature"), 0.13},
                      {DayText::tr("ampoules"), 0.18},
                      {DayText::tr("first in"), 0.075},
                      {DayText::tr("mixed"), 0.075},
                      {DayText::tr("hung on"), 0.09},
                      {DayText::tr("down"), 0.14},
                      {DayText::tr("birds"), 0.06},
                      {DayText::tr("in use"), 0.11},
                      {DayText::tr("limit"), 0.09}},
                     {},
                     DayText::tr("No bag was made up.")};
    for (const SheetBag& row : shift.bags) {
        const Bag& bag = row.bag;
        table.rows.push_back({{idText(bag.id), true},
                              {diluentText(bag)},
                              {lotsText(row.content)},
                              {timeText(bag.firstDiluent, shift.zone)},
                              {timeText(bag.mixed, shift.zone)},
                              {hungText(bag, shift.zone)},
                              {downText(bag, shift.zone), bag.held() != nullptr},
                              {row.birds ? countOf(*row.birds) : kNone},
                              tookCell(row.age),
                              {limitText(row.age)}});
    }
    return table;
}

SheetTable holdsTable(const SheetShift& shift)
{
    SheetTable table{{{DayText::tr("bag"), 0.08},
                      {DayText::tr("on hold since"), 0.14},
                      {DayText::tr("why"), 0.28},
                      {DayText::tr("decided"), 0.16},
                      {DayText::tr("by"), 0.08},
                      {DayText::tr("decision"), 0.26}},
                     {},
                     {}};
    for (const SheetBag& row : shift.bags) {
        for (const BagHold& hold : row.bag.holds)
            table.rows.push_back(holdRow(row.bag, hold, shift.zone));
    }
    return table;
}

SheetTable ampoulesTable(const SheetShift& shift)
{
    SheetTable table{{{DayText::tr("pull/no."), 0.08},
                      {DayText::tr("component"), 0.13},
                      {DayText::tr("lot"), 0.09},
                      {DayText::tr("out"), 0.09},
                      {DayText::tr("out to bath"), 0.13},
                      {DayText::tr("limit"), 0.07},
                      {DayText::tr("bath to diluent"), 0.2},
                      {DayText::tr("limit"), 0.11},
                      {DayText::tr("bag"), 0.1}},
                     {},
                     DayText::tr("No ampoule came out of the cryogen.")};
    for (const SheetAmpoule& row : shift.ampoules) {
        table.rows.push_back({{QStringLiteral("%1/%2").arg(row.ref.pull).arg(row.ref.no), true},
                              {idText(row.component)},
                              {idText(row.lot)},
                              {localTimeText(row.out, shift.zone)},
                              tookCell(row.toBath),
                              {limitText(row.toBath)},
                              tookCell(row.toDiluent),
                              {limitText(row.toDiluent)},
                              {remarkOf(row), row.lost.has_value()}});
    }
    return table;
}

SheetTable bathsTable(const SheetShift& shift)
{
    SheetTable table{{{DayText::tr("pull"), 0.08},
                      {DayText::tr("in bath"), 0.14},
                      {DayText::tr("thermometer"), 0.16},
                      {DayText::tr("indicated"), 0.14},
                      {DayText::tr("corrected ± U (k = 2)"), 0.22},
                      {DayText::tr("verdict"), 0.26}},
                     {},
                     DayText::tr("There was no pull.")};
    for (const SheetBath& bath : shift.baths)
        table.rows.push_back(bathRow(bath, shift.zone));
    return table;
}

SheetColumns ampouleColumns(const SheetShift& shift)
{
    SheetColumns columns{
        DayText::tr("By pull and ampoule. Filled: out to bath. Open: bath to diluent. "
                    "The thick line is the limit; ! is over it."),
        limitWord(),
        {}};
    for (const SheetAmpoule& row : shift.ampoules)
        columns.each.push_back({QStringLiteral("%1/%2").arg(row.ref.pull).arg(row.ref.no),
                                shareOf(row.toBath), shareOf(row.toDiluent),
                                row.toBath.isOver || row.toDiluent.isOver});
    return columns;
}

SheetColumns bagColumns(const SheetShift& shift)
{
    SheetColumns columns{
        DayText::tr("Bags in use: from the first ampoule in diluent until down."), limitWord(), {}};
    for (const SheetBag& row : shift.bags)
        columns.each.push_back({idText(row.bag.id), shareOf(row.age), {}, row.age.isOver});
    return columns;
}

}  // namespace bathside::ui
