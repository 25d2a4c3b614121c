// What the timeline says where: heads, bars, hours, and the picture in one string.

#include <QLocale>
#include <algorithm>

#include "ui/plan/bar_look.h"
#include "ui/plan/stacked.h"
#include "ui/plan/timeline_view.h"
#include "ui/text/numbers.h"
#include "ui/text/plan_words.h"
#include "ui/text/subjects.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

using Kind = TimelineBar::Kind;

constexpr TextWish kSmallText{Metrics::kSmall, Metrics::kSmall, Weight::Regular, 1};
constexpr auto kLeft = Qt::AlignLeft | Qt::AlignVCenter;

/// Beside a bar that is too narrow for its words: until the next one in its lane.
QRectF roomAfter(const PlacedRow& row, std::size_t number)
{
    const PlacedBar& placed = row.bars[number];
    double end = row.track.right();
    for (std::size_t i = number + 1; i < row.bars.size(); ++i) {
        if (row.bars[i].bar.lane == placed.bar.lane)
            end = std::min(end, row.bars[i].plate.left());
    }
    const double by = theme().metrics().px(0.8), left = placed.plate.right() + by;
    return {left, placed.plate.top(), end - by - left, placed.plate.height()};
}

QString stateOf(const TimelineBar& bar, const PlanClock& clock)
{
    if (bar.small)
        return TimelineView::tr("only %1", "margin of a bag: minutes")
            .arg(marginText(bar.margin()));
    if (bar.kind == Kind::Open)
        return TimelineView::tr("empty %1", "bag that hangs: time").arg(clock.text(bar.to));
    return bar.kind == Kind::Mixed ? TimelineView::tr("mixed", "a bag") : QString();
}

}  // namespace

QList<QStringList> TimelineView::words(const TimelineBar& bar) const
{
    const QString name = bagText(*m_day, bar.place), volume = volumeText(bar.volume);
    if (bar.kind == Kind::Making)
        return {{QStringLiteral("%1 %2").arg(m_clock.text(bar.from), name)}, {name}};
    const QString birds = countText(bar.birds, QLocale()), many = tr("%1 birds").arg(birds);
    const QString both = QStringLiteral("%1 · %2").arg(name, volume);
    const QString state = stateOf(bar, m_clock);
    QList<QStringList> wishes;
    if (!state.isEmpty())
        wishes = {{both, many, state},
                  {both, birds, state},
                  {both, state},
                  {volume, state},
                  {name, state},
                  {name + QStringLiteral(" · ") + state},
                  {state}};
    return wishes + QList<QStringList>{{both, many}, {both, birds}, {volume, many}, {volume, birds},
                                       {both},       {volume},      {name}};
}

QString TimelineView::fault(const TimelineRow& row) const
{
    if (row.hasPlan)
        return {};
    return row.line ? reasonText(m_day->today.input, m_day->plan.lines[*row.line].error().front())
                    : benchText(*m_day);
}

void TimelineView::addHead(QList<PlacedText>& texts, const PlacedRow& row) const
{
    const QColor ink = theme().palette().ink();
    const auto& line = m_timeline.rows[row.row].line;
    if (!line) {
        texts.append({tr("bench"), row.head, kLeft, {4, Metrics::kSmall, Weight::Strong, 1}, ink});
        return;
    }
    const plan::Line& planned = m_day->today.input.lines[*line];
    const double name = row.head.width() * 0.25;
    texts.append({fromCore(planned.name),
                  QRectF(row.head.topLeft(), QSizeF(name, row.head.height())),
                  kLeft,
                  {7, Metrics::kSmall, Weight::Strong, 2},
                  ink});
    const QRectF rest = row.head.adjusted(name, 0, 0, 0);
    const QString birds =
        tr("%1 birds").arg(countText(planned.birds - planned.birdsDone, QLocale()));
    const QString rate =
        tr("%1 per h", "birds an hour").arg(countText(planned.ratePerHour, QLocale()));
    texts += stacked(firstThatFits({{birds, rate}, {birds}}, rest), rest, Qt::AlignLeft, ink);
}

void TimelineView::addBars(QList<PlacedText>& texts, const PlacedRow& row) const
{
    const QString why = fault(m_timeline.rows[row.row]);
    const QColor ink = theme().tone(Role::Limit).ink;
    const double by = theme().metrics().px(2);
    if (!why.isEmpty()) {
        const QRectF room = row.track.adjusted(by + theme().metrics().px(kBarMark), 0, -by, 0);
        const PlacedText text{
            why, room, kLeft, {Metrics::kSmall, Metrics::kSmall, Weight::Strong, 3}, ink};
        texts.append(allFit({text}) ? text
                                    : PlacedText{tr("cannot be done: see the words"), room, kLeft,
                                                 kSmallText, ink});
    }
    for (std::size_t i = 0; i < row.bars.size(); ++i) {
        const PlacedBar& placed = row.bars[i];
        const QRectF room = textRoom(placed), after = roomAfter(row, i);
        const QStringList inside = firstThatFits(words(placed.bar), room);
        if (!inside.isEmpty() || placed.bar.kind != Kind::Making)
            texts += stacked(inside, room, Qt::AlignHCenter, theme().tone(roleOf(placed.bar)).ink);
        else
            texts += stacked(firstThatFits(words(placed.bar), after), after, Qt::AlignLeft,
                             theme().palette().ink());
    }
}

void TimelineView::addLegend(QList<PlacedText>& texts, const TimelineLayout& all) const
{
    texts.append({tr("Under each bar its bag's life: solid until the last bird, dotted to its "
                     "limit. Hatched: break."),
                  all.legend, kLeft, kSmallText, theme().palette().softInk()});
}

QList<PlacedText> TimelineView::texts() const
{
    QList<PlacedText> texts;
    const TimelineLayout all = layout();
    for (const auto& hour : all.hours) {
        if (rect().contains(hour.text.toAlignedRect()) &&
            !(all.now && std::abs(*all.now - hour.x) < hour.text.width()))
            texts.append({m_clock.text(hour.at), hour.text, Qt::AlignCenter, kSmallText,
                          theme().palette().softInk()});
    }
    if (all.now) {
        const double half = theme().metrics().px(9);
        const QRectF room(std::min(*all.now - half, width() - 2 * half), all.axis.top(), 2 * half,
                          all.axis.height());
        texts.append({m_clock.text(m_timeline.now),
                      room,
                      Qt::AlignCenter,
                      {4, Metrics::kSmall, Weight::Strong, 1},
                      theme().palette().ink()});
    }
    for (const PlacedRow& row : all.rows) {
        addHead(texts, row);
        addBars(texts, row);
    }
    if (m_day)
        addLegend(texts, all);
    return texts;
}

void TimelineView::describe()
{
    QStringList all;
    for (const TimelineRow& row : m_timeline.rows) {
        for (const TimelineBar& bar : row.bars)
            all.append(QStringLiteral("%1–%2: %3")
                           .arg(m_clock.text(bar.from), m_clock.text(bar.to),
                                words(bar).first().join(u' ')));
    }
    suggestAccessibleName(all.join(QStringLiteral("; ")));
}

}  // namespace bathside::ui
