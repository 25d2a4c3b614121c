#include "ui/stores/lot_tile.h"

#include <QLocale>
#include <QPainter>

#include "ui/text/numbers.h"
#include "ui/text/stores.h"
#include "ui/text/subjects.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

Mark markFor(LotLook look)
{
    switch (look) {
        case LotLook::Fit:
            return Mark::Ring;
        case LotLook::NearExpiry:
            return Mark::Hourglass;
        case LotLook::Expired:
            return Mark::Slab;
        case LotLook::Quarantined:
            return Mark::Cross;
        case LotLook::Allowed:
            return Mark::Arrow;
        case LotLook::Empty:
            return Mark::None;
        case LotLook::Impossible:
            return Mark::Burst;
    }
    Q_UNREACHABLE();
}

QString placesText(const StockLot& lot)
{
    if (lot.places.empty())
        return {};
    if (lot.places.size() == 1)
        return placeWords(lot.places.begin()->first);
    return LotTile::tr("at %n place(s)", "where a lot stands", static_cast<int>(lot.places.size()));
}

/// Without the word for a lot, for which a tile has no room.
QString nameText(const Stock& of)
{
    return of.lot.empty() ? itemText(of)
                          : QStringLiteral("%1 · %2").arg(itemText(of), idText(of.lot));
}

QString expiryText(const StockLot& lot, bool next)
{
    QStringList parts;
    if (next)
        parts.append(LotTile::tr("next", "the next ampoules are of this lot"));
    if (lot.expires)
        parts.append(LotTile::tr("good to %1", "expiry").arg(isoDayText(*lot.expires)));
    return parts.join(QStringLiteral(" · "));
}

}  // namespace

struct LotTile::Rooms {
    QRectF mark, standing, words, expiry, places, count;
};

LotLook lookOf(const Stores& stores, const StockLot& lot, std::chrono::sys_days day,
               std::int64_t nearDays)
{
    if (lot.balance() < 0)
        return LotLook::Impossible;
    if (lot.balance() == 0)
        return LotLook::Empty;
    const LotStanding stands = standing(stores, lot.of, day);
    if (stands != LotStanding::Fit && stores.allowed.contains(lot.of))
        return LotLook::Allowed;
    if (stands == LotStanding::Quarantined)
        return LotLook::Quarantined;
    if (stands == LotStanding::Expired)
        return LotLook::Expired;
    const bool isNear = lot.expires && (*lot.expires - day).count() <= nearDays;
    return isNear ? LotLook::NearExpiry : LotLook::Fit;
}

QString lookText(LotLook look)
{
    switch (look) {
        case LotLook::Fit:
            return wordOf(LotStanding::Fit);
        case LotLook::NearExpiry:
            return LotTile::tr("near expiry");
        case LotLook::Expired:
            return wordOf(LotStanding::Expired);
        case LotLook::Quarantined:
            return wordOf(LotStanding::Quarantined);
        case LotLook::Allowed:
            return LotTile::tr("allowed today");
        case LotLook::Empty:
            return LotTile::tr("none left");
        case LotLook::Impossible:
            return LotTile::tr("count it");
    }
    Q_UNREACHABLE();
}

Role roleOf(LotLook look)
{
    switch (look) {
        case LotLook::Fit:
            return Role::Good;
        case LotLook::NearExpiry:
        case LotLook::Allowed:
            return Role::HeadsUp;
        case LotLook::Expired:
        case LotLook::Quarantined:
            return Role::Limit;
        case LotLook::Empty:
            return Role::Quiet;
        case LotLook::Impossible:
            return Role::Overrun;
    }
    Q_UNREACHABLE();
}

void LotTile::setLot(const StockLot& lot, LotLook look, bool next)
{
    m_of = lot.of;
    m_look = look;
    m_standing = lookText(look);
    m_count = countText(lot.balance(), QLocale());
    setWord(nameText(lot.of));
    m_expiry = expiryText(lot, next);
    setLine(placesText(lot));
    setRole(ui::roleOf(look));
    setChosen(next);
    setAccessibleName(
        QStringList{word(), m_count, m_standing, m_expiry, line()}.join(QStringLiteral(", ")));
    update();
}

LotTile::Rooms LotTile::rooms() const
{
    constexpr double kSideMm = 25, kMarkMm = 7, kCountMm = 13;
    const Metrics& metrics = theme().metrics();
    const double by = metrics.px(1.2);
    const QRectF in = QRectF(rect()).adjusted(by, by, -by, -by);
    const double side = metrics.px(kSideMm), mark = metrics.px(kMarkMm),
                 count = metrics.px(kCountMm);
    const double line = heightOf(2, Metrics::kSmall, Weight::Regular) + 1;
    const double top = in.top() + (in.height() - mark - line) / 2;
    const double name = heightOf(1, 4, Weight::Strong);
    Rooms at;
    at.mark = QRectF(in.left() + (side - mark) / 2, top, mark, mark);
    at.standing = QRectF(in.left(), top + mark, side, line);
    at.count = QRectF(in.right() - count, in.top(), count, in.height());
    if (isChosen())  // below its tick
        at.count.adjust(0, metrics.px(5), 0, 0);
    const QRectF middle = in.adjusted(side + metrics.px(1), 0, -count - metrics.px(1), 0);
    at.words = QRectF(middle.left(), middle.top(), middle.width(), name);
    const double small = heightOf(1, Metrics::kSmall, Weight::Regular) + 1;
    const double expiry = m_expiry.isEmpty() ? 0 : small;
    at.expiry = QRectF(middle.left(), at.words.bottom(), middle.width(), expiry);
    at.places = middle.adjusted(0, name + expiry, 0, 0);
    return at;
}

QList<PlacedText> LotTile::texts() const
{
    const Rooms at = rooms();
    const QColor ink = shownTone().ink;
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    return {
        {word(), at.words, left, {4, Metrics::kSmall, Weight::Strong, 1}, ink},
        {m_expiry, at.expiry, left, {Metrics::kSmall, Metrics::kSmall, Weight::Regular, 1}, ink},
        {line(), at.places, left, {Metrics::kSmall, Metrics::kSmall, Weight::Regular, 2}, ink},
        {m_standing,
         at.standing,
         Qt::AlignCenter,
         {Metrics::kSmall, Metrics::kSmall, Weight::Regular, 2},
         ink},
        {m_count, at.count, Qt::AlignCenter, {7, Metrics::kSmall, Weight::Strong, 1}, ink}};
}

void LotTile::paintMarks(QPainter& painter) const
{
    drawMark(painter, rooms().mark, markFor(m_look), shownTone().ink);
}

}  // namespace bathside::ui
