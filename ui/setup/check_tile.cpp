#include "ui/setup/check_tile.h"

#include <QPainter>

#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {

struct CheckTile::Rooms {
    QRectF mark, standing, words;
};

CheckStanding standingOf(const Bench& bench, const CheckId& check)
{
    const auto found = bench.checks.find(check);
    if (found == bench.checks.end())
        return CheckStanding::Open;
    if (!found->second.overridden.empty())
        return CheckStanding::Overridden;
    return found->second.ok ? CheckStanding::Ok : CheckStanding::NotOk;
}

QString standingText(CheckStanding standing, bool blocking)
{
    switch (standing) {
        case CheckStanding::Open:
            return blocking ? CheckTile::tr("needed", "a check without which no bag starts")
                            : CheckTile::tr("open", "a check not done yet");
        case CheckStanding::Ok:
            return CheckTile::tr("ok");
        case CheckStanding::NotOk:
            return CheckTile::tr("not ok");
        case CheckStanding::Overridden:
            return CheckTile::tr("waived", "a check overridden with a reason");
    }
    Q_UNREACHABLE();
}

Role roleOf(CheckStanding standing, bool blocking)
{
    switch (standing) {
        case CheckStanding::Open:
            return blocking ? Role::HeadsUp : Role::Neutral;
        case CheckStanding::Ok:
            return Role::Good;
        case CheckStanding::NotOk:
            return Role::Limit;
        case CheckStanding::Overridden:
            return Role::HeadsUp;
    }
    Q_UNREACHABLE();
}

Mark markOf(CheckStanding standing)
{
    switch (standing) {
        case CheckStanding::Open:
            return Mark::None;  // an empty box is drawn
        case CheckStanding::Ok:
            return Mark::Tick;
        case CheckStanding::NotOk:
            return Mark::Cross;
        case CheckStanding::Overridden:
            return Mark::Arrow;
    }
    Q_UNREACHABLE();
}

void CheckTile::setCheck(const QString& words, CheckStanding standing, bool blocking)
{
    m_standing = standing;
    setWord(words);
    setLine(standingText(standing, blocking));
    setRole(ui::roleOf(standing, blocking));
    update();
}

CheckTile::Rooms CheckTile::rooms() const
{
    constexpr double kSideMm = 22, kMarkMm = 7;
    const Metrics& metrics = theme().metrics();
    const double by = metrics.px(1.2);
    const QRectF in = QRectF(rect()).adjusted(by, by, -by, -by);
    const double side = metrics.px(kSideMm), mark = metrics.px(kMarkMm);
    const double line = heightOf(2, Metrics::kSmall, Weight::Regular) + 1;
    const double top = in.top() + (in.height() - mark - line) / 2;
    Rooms at;
    at.mark = QRectF(in.left() + (side - mark) / 2, top, mark, mark);
    at.standing = QRectF(in.left(), top + mark, side, line);
    at.words = in.adjusted(side + metrics.px(1), 0, 0, 0);
    return at;
}

QList<PlacedText> CheckTile::texts() const
{
    const Rooms at = rooms();
    const QColor ink = shownTone().ink;
    return {{word(),
             at.words,
             Qt::AlignLeft | Qt::AlignVCenter,
             {4, Metrics::kSmall, Weight::Strong},
             ink},
            {line(),
             at.standing,
             Qt::AlignCenter,
             {Metrics::kSmall, Metrics::kSmall, Weight::Regular, 2},
             ink}};
}

void CheckTile::paintMarks(QPainter& painter) const
{
    const Rooms at = rooms();
    const QColor ink = shownTone().ink;
    if (m_standing != CheckStanding::Open)
        return drawMark(painter, at.mark, ui::markOf(m_standing), ink);
    const double thick = theme().metrics().px(0.8);
    painter.setPen(QPen(ink, thick));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(at.mark.adjusted(thick, thick, -thick, -thick));
}

}  // namespace bathside::ui
