#include "ui/text/stores.h"

#include <QCoreApplication>
#include <QLocale>

#include "core/base/day.h"
#include "ui/text/numbers.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct StoreText {
    Q_DECLARE_TR_FUNCTIONS(Store)
};

QString piecesText(const Stock& of, std::int64_t count)
{
    const int n = static_cast<int>(count);
    switch (of.kind) {
        case StockKind::Ampoule:
            return StoreText::tr("%n ampoule(s)", "in the stores", n);
        case StockKind::Diluent:
            return StoreText::tr("%n bag(s)", "in the stores", n);
        case StockKind::Consumable:
            return StoreText::tr("%n piece(s)", "in the stores", n);
    }
    Q_UNREACHABLE();
}

QString dosesText(std::int64_t count)
{
    return StoreText::tr("%n dose(s)", "in the stores", static_cast<int>(count));
}

QString expectedText(IntakeExpects expected)
{
    switch (expected) {
        case IntakeExpects::Utf8:
            return StoreText::tr("a text file in UTF-8");
        case IntakeExpects::ClosedQuote:
            return StoreText::tr("a quote that is closed at the end of its cell");
        case IntakeExpects::HeadLine:
            return StoreText::tr("a first line that names the columns");
        case IntakeExpects::KnownColumn:
            return StoreText::tr(
                "one of kind, item, lot, doses, volume_ml, count, expires, titre_pfu, vessel, "
                "canister, cane, delivery");
        case IntakeExpects::ColumnOnce:
            return StoreText::tr("each column once");
        case IntakeExpects::NeededColumn:
            return StoreText::tr("that column");
        case IntakeExpects::AsManyCells:
            return StoreText::tr("no more cells than columns");
        case IntakeExpects::KindWord:
            return StoreText::tr("ampoule, diluent or consumable");
        case IntakeExpects::Something:
            return StoreText::tr("a value, which this kind needs");
        case IntakeExpects::Nothing:
            return StoreText::tr("nothing, as this kind has no such value");
        case IntakeExpects::KnownComponent:
            return StoreText::tr("a component of the procedure card");
        case IntakeExpects::PlainText:
            return StoreText::tr("a short text on one line");
        case IntakeExpects::WholeNumber:
            return StoreText::tr("a whole number, at least 1");
        case IntakeExpects::Millilitres:
            return StoreText::tr("millilitres above 0, with at most three decimals");
        case IntakeExpects::Day:
            return StoreText::tr("a day as YYYY-MM-DD");
        case IntakeExpects::AsBefore:
            return StoreText::tr("what the stores have of that lot");
    }
    Q_UNREACHABLE();
}

}  // namespace

QString wordOf(StockKind kind)
{
    switch (kind) {
        case StockKind::Ampoule:
            return StoreText::tr("ampoules");
        case StockKind::Diluent:
            return StoreText::tr("diluent");
        case StockKind::Consumable:
            return StoreText::tr("consumables");
    }
    Q_UNREACHABLE();
}

QString wordOf(DiscardReason why)
{
    switch (why) {
        case DiscardReason::Used:
            return StoreText::tr("used", "why something left the stores");
        case DiscardReason::Broken:
            return StoreText::tr("broken", "why something left the stores");
        case DiscardReason::Expired:
            return StoreText::tr("expired", "why something left the stores");
        case DiscardReason::Thawed:
            return StoreText::tr("thawed", "why something left the stores");
        case DiscardReason::Other:
            return StoreText::tr("another reason", "why something left the stores");
    }
    Q_UNREACHABLE();
}

QString wordOf(LotStanding standing)
{
    switch (standing) {
        case LotStanding::Fit:
            return StoreText::tr("fit for use", "a lot");
        case LotStanding::Expired:
            return StoreText::tr("expired", "a lot");
        case LotStanding::Quarantined:
            return StoreText::tr("in quarantine", "a lot");
        case LotStanding::Unknown:
            return StoreText::tr("unknown", "a lot");
    }
    Q_UNREACHABLE();
}

QString itemText(const Stock& of)
{
    if (of.kind != StockKind::Diluent)
        return fromCore(of.item);
    return of.volume
               ? StoreText::tr("diluent %1", "the volume of a bag").arg(volumeText(*of.volume))
               : StoreText::tr("diluent");
}

QString stockText(const Stock& of)
{
    if (of.lot.empty())
        return itemText(of);
    return StoreText::tr("%1, lot %2", "component or diluent, its lot")
        .arg(itemText(of), idText(of.lot));
}

QString placeWords(const std::string& place)
{
    return place.empty() ? StoreText::tr("no place named") : fromCore(place);
}

QString quarantineText(const std::string& why)
{
    return why == kCaneExposed ? StoreText::tr("the cane was out of the cryogen too long")
                               : fromCore(why);
}

QString isoDayText(std::chrono::sys_days day) { return fromCore(toText(day)); }

QString warningText(const StoreWarning& warning)
{
    const QString what = stockText(warning.of);
    const bool inDoses = warning.of.kind == StockKind::Ampoule;
    switch (warning.kind) {
        case StoreWarningKind::TooLittle:
            return StoreText::tr("%1: %2 too few for what is planned.")
                .arg(what,
                     inDoses ? dosesText(warning.amount) : piecesText(warning.of, warning.amount));
        case StoreWarningKind::Expired:
            return StoreText::tr("%1: expired, and %2 still there.")
                .arg(what, piecesText(warning.of, warning.amount));
        case StoreWarningKind::Quarantined:
            return StoreText::tr("%1: %2 in quarantine.")
                .arg(what, piecesText(warning.of, warning.amount));
        case StoreWarningKind::NearExpiry:
            return StoreText::tr("%1: good for %n more day(s).", "a lot near its expiry",
                                 static_cast<int>(warning.amount))
                .arg(what);
    }
    Q_UNREACHABLE();
}

QString faultText(const IntakeFault& fault)
{
    const QString found = fault.found.empty()
                              ? StoreText::tr("nothing", "found in a cell")
                              : StoreText::tr("“%1”", "found in a cell").arg(fromCore(fault.found));
    if (fault.column.empty())
        return StoreText::tr("Line %1: expected %2.")
            .arg(fault.line)
            .arg(expectedText(fault.expected));
    return StoreText::tr("Line %1, column %2: found %3, expected %4.")
        .arg(fault.line)
        .arg(fromCore(fault.column), found, expectedText(fault.expected));
}

QString wordOf(Outcome outcome)
{
    switch (outcome) {
        case Outcome::DoesNotAddUp:
            return StoreText::tr("does not add up");
        case Outcome::NotCounted:
            return StoreText::tr("not counted");
        case Outcome::AddsUp:
            return StoreText::tr("adds up");
    }
    Q_UNREACHABLE();
}

QString whatText(const Reckoning& row)
{
    switch (row.what) {
        case Reckoned::Pulls:
            return StoreText::tr("ampoules out = in bags + lost");
        case Reckoned::Pieces:
            return stockText(row.of);
        case Reckoned::Doses:
            return StoreText::tr("doses of %1: made up, used and left").arg(itemText(row.of));
        case Reckoned::Volume:
            return StoreText::tr("volume: birds × dose, and what is gone");
    }
    Q_UNREACHABLE();
}

QString figureText(const Reckoning& row, std::int64_t figure)
{
    const bool isVolume = row.what == Reckoned::Volume;
    return isVolume ? volumeText(MicroLitres{figure}) : countText(figure, QLocale());
}

QString differenceText(const Reckoning& row)
{
    const std::int64_t difference = row.difference();
    const QString text = figureText(row, std::abs(difference));
    if (difference == 0)
        return text;
    return (difference < 0 ? QStringLiteral("−") : QStringLiteral("+")) + text;
}

}  // namespace bathside::ui
