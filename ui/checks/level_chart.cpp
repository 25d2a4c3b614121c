#include "ui/checks/level_chart.h"

#include <QDate>
#include <QLocale>
#include <QPainter>
#include <algorithm>

#include "ui/checks/check_words.h"
#include "ui/text/time.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kScaleMm = 22, kLineMm = 0.6, kDotMm = 1.1;

QString litresText(double litres) { return figure(litres, 1, QStringLiteral("L")); }

QString dateText(WallTime at, const std::string& zone)
{
    const std::chrono::year_month_day day(localDay(at, zone));
    const QDate date(static_cast<int>(day.year()), static_cast<int>(unsigned(day.month())),
                     static_cast<int>(unsigned(day.day())));
    return QLocale().toString(date, QLocale::ShortFormat);
}

double heightAt(const QRectF& room, const LevelSeries& levels, double litres)
{
    return room.bottom() - room.height() * litres / levels.fullest;
}

}  // namespace

LevelSeries levelsOf(const VesselLog& log, const std::string& zone)
{
    LevelSeries levels;
    if (!log.vessel)
        return levels;
    levels.minimum = log.vessel->minimum;
    levels.fullest = log.vessel->dipstick.fullest();
    for (const Dip& dip : log.dips) {
        if (const auto litres = log.vessel->dipstick.litresAt(static_cast<double>(dip.millimetres)))
            levels.points.push_back({dip.at, *litres, dip.filled});
    }
    if (levels.points.empty())
        return levels;
    levels.from = dateText(levels.points.front().at, zone);
    levels.to = dateText(levels.points.back().at, zone);
    return levels;
}

void paintLevels(QPainter& painter, const QRectF& room, const LevelSeries& levels)
{
    const Palette& palette = theme().palette();
    const Metrics& metrics = theme().metrics();
    painter.fillRect(room, palette.panel());
    const double minimum = heightAt(room, levels, levels.minimum);
    painter.setPen(QPen(theme().tone(Role::Limit).edge, metrics.px(kLineMm), Qt::DashLine));
    painter.drawLine(QPointF(room.left(), minimum), QPointF(room.right(), minimum));
    if (levels.points.empty())
        return;
    const auto first = levels.points.front().at;
    const auto span = std::max(Millis(1), levels.points.back().at - first);
    const auto placeOf = [&](const LevelSeries::Point& point) {
        const double share =
            static_cast<double>((point.at - first).count()) / static_cast<double>(span.count());
        return QPointF(room.left() + share * room.width(), heightAt(room, levels, point.litres));
    };
    for (std::size_t i = 0; i < levels.points.size(); ++i) {
        const QPointF here = placeOf(levels.points[i]);
        painter.setPen(QPen(palette.ink(), metrics.px(kLineMm)));
        if (i > 0 && !levels.points[i].filled)
            painter.drawLine(placeOf(levels.points[i - 1]), here);
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette.ink());
        painter.drawEllipse(here, metrics.px(kDotMm), metrics.px(kDotMm));
    }
}

LevelChart::LevelChart(QWidget* parent) : Control(parent)
{
    setObjectName(QStringLiteral("checks.levels"));
}

void LevelChart::show(LevelSeries levels)
{
    m_levels = std::move(levels);
    suggestAccessibleName(m_levels.points.empty() ? QString()
                                                  : litresText(m_levels.points.back().litres));
    update();
}

QRectF LevelChart::chart() const
{
    const Metrics& metrics = theme().metrics();
    const double by = metrics.px(Metrics::kInset), words = heightOf(1, Metrics::kSmall, {});
    return QRectF(rect()).adjusted(metrics.px(kScaleMm), by + words / 2, -2 * by, -(by + words));
}

QList<PlacedText> LevelChart::texts() const
{
    if (m_levels.fullest <= 0)
        return {};
    const TextWish wish{Metrics::kSmall, Metrics::kSmall, Weight::Regular, 1};
    const QRectF room = chart();
    const QColor ink = theme().palette().softInk();
    const double high = heightOf(1, Metrics::kSmall, Weight::Regular);
    const auto beside = [&](double litres) {
        const double y = heightAt(room, m_levels, litres);
        return QRectF(0, y - high / 2, room.left() - theme().metrics().px(1), high);
    };
    const auto right = Qt::AlignRight | Qt::AlignVCenter;
    QList<PlacedText> texts{
        {litresText(m_levels.fullest), beside(m_levels.fullest), right, wish, ink},
        {litresText(m_levels.minimum), beside(m_levels.minimum), right, wish, ink}};
    const QRectF low(room.left(), room.bottom() + theme().metrics().px(1), room.width(), high);
    texts.append({m_levels.from, low, Qt::AlignLeft | Qt::AlignVCenter, wish, ink});
    if (m_levels.to != m_levels.from)
        texts.append({m_levels.to, low, right, wish, ink});
    return texts;
}

void LevelChart::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (m_levels.fullest > 0)
        paintLevels(painter, chart(), m_levels);
    drawAll(painter, texts());
}

}  // namespace bathside::ui
