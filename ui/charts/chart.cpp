#include "ui/charts/chart.h"

#include <QAreaSeries>
#include <QChart>
#include <QGraphicsLayout>
#include <QImage>
#include <QLineSeries>
#include <QLocale>
#include <QStringList>
#include <QValueAxis>
#include <algorithm>
#include <cmath>

#include "ui/charts/chart_view.h"
#include "ui/controls/label.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kReadOutMm = 5, kStripMm = 9, kLineMm = 0.5;
constexpr double kTicks = 6;         // at most, on an axis
constexpr double kNearShare = 0.05;  // of what is shown: farther from the finger is not under it

/// 1, 2 or 5 times a power of ten, so that at most `kTicks` of them fit in `range`.
double tickFor(double range)
{
    const double least = range / kTicks;
    const double power = std::pow(10, std::floor(std::log10(least)));
    for (const double step : {1.0, 2.0, 5.0}) {
        if (step * power >= least)
            return step * power;
    }
    return 10 * power;
}

int decimalsOf(double tick)
{
    return std::max(0, static_cast<int>(-std::floor(std::log10(tick) + 1e-9)));
}

void setUp(QValueAxis& axis, const QString& unit, double low, double high)
{
    const double tick = tickFor(high - low);
    axis.setRange(low, high);
    axis.setTickType(QValueAxis::TicksDynamic);
    axis.setTickAnchor(0);
    axis.setTickInterval(tick);
    axis.setLabelFormat(QStringLiteral("%.%1f\u00a0%2").arg(decimalsOf(tick)).arg(unit));
}

void dressAxis(QValueAxis& axis)
{
    const Palette& palette = theme().palette();
    const QFont font = theme().metrics().font(Metrics::kSmall);
    axis.setLabelsFont(font);
    axis.setLabelsColor(palette.ink());
    axis.setGridLinePen(QPen(palette.rule(), 1));
    axis.setLinePen(QPen(palette.softInk(), 1));
}

QString numberText(double value, const ChartAxis& axis)
{
    return QStringLiteral("%1 %2")
        .arg(QLocale().toString(value, 'f', axis.decimals), axis.unit)
        .trimmed();
}

const QPointF* nearest(const ChartLine& line, double x)
{
    const auto found = std::ranges::min_element(
        line.points, {}, [x](const QPointF& point) { return std::abs(point.x() - x); });
    return found == line.points.end() ? nullptr : &*found;
}

}  // namespace

Chart::Chart(const QString& name, QWidget* parent)
    : Control(parent),
      m_readOut(new Label(this)),
      m_chart(new QChart),
      m_across(new QValueAxis(m_chart)),
      m_up(new QValueAxis(m_chart)),
      m_view(new ChartView(m_chart, m_content,
                           {.looked =
                                [this](double x) {
                                    lookAt(x);
                                    emit touched(x);
                                },
                            .zoomed = [this](double by, const QPointF& at) { zoom(by, at); },
                            .moved = [this](const QPointF& by) { move(by); }},
                           this))
{
    setObjectName(name);
    m_readOut->setCapMm(kReadOutMm, Metrics::kSmall);
    m_chart->legend()->hide();
    m_chart->setMargins({});
    m_chart->layout()->setContentsMargins(0, 0, 0, 0);
    m_chart->setBackgroundRoundness(0);
    m_chart->setLocalizeNumbers(true);
    m_chart->addAxis(m_across, Qt::AlignBottom);
    m_chart->addAxis(m_up, Qt::AlignLeft);
    for (QValueAxis* axis : {m_across, m_up})
        axis->setTruncateLabels(false);
    draw();
}

Chart::~Chart() = default;

void Chart::show(const ChartContent& content)
{
    m_content = content;
    m_window.setWhole(QRectF(QPointF(content.across.low, content.up.low),
                             QPointF(content.across.high, content.up.high)));
    draw();
}

void Chart::hideReadOut()
{
    m_hasStrip = false;
    m_readOut->hide();
    place();
}

void Chart::draw()
{
    m_chart->removeAllSeries();
    m_chart->setLocale(QLocale());
    addBands();
    addLines();
    dress();
    follow();
}

void Chart::addBands()
{
    for (const ChartBand& band : m_content.bands) {
        auto* top = new QLineSeries;
        auto* low = new QLineSeries;
        for (const double x : {m_content.across.low, m_content.across.high}) {
            top->append(x, band.high);
            low->append(x, band.low);
        }
        auto* area = new QAreaSeries(top, low);
        top->setParent(area);
        low->setParent(area);
        const Tone& tone = theme().tone(band.role);
        area->setBrush(tone.fill);
        area->setPen(QPen(tone.edge, 1));
        m_chart->addSeries(area);
        area->attachAxis(m_across);
        area->attachAxis(m_up);
    }
}

void Chart::addLines()
{
    for (const ChartLine& line : m_content.lines) {
        auto* series = new QLineSeries;
        series->replace(line.points);
        series->setPen(QPen(theme().palette().ink(), theme().metrics().px(kLineMm),
                            styleOf(line.stroke), Qt::FlatCap, Qt::RoundJoin));
        m_chart->addSeries(series);
        series->attachAxis(m_across);
        series->attachAxis(m_up);
    }
}

void Chart::dress()
{
    const Palette& palette = theme().palette();
    m_chart->setBackgroundBrush(palette.panel());
    m_chart->setBackgroundPen(Qt::NoPen);
    m_view->setBackgroundBrush(palette.panel());
    dressAxis(*m_across);
    dressAxis(*m_up);
}

/// What is in sight, and what is said of it.
void Chart::follow()
{
    const QRectF& shown = m_window.shown();
    m_across->setLabelsVisible(m_content.across.hasNumbers);
    setUp(*m_across, m_content.across.unit, shown.left(), shown.right());
    setUp(*m_up, m_content.up.unit, shown.top(), shown.bottom());
    m_view->setLooked(m_looked);
    m_readOut->setText(readOut());
    suggestAccessibleName(m_content.title);
}

void Chart::lookAt(std::optional<double> x)
{
    m_looked = x;
    follow();
}

QString Chart::readOut() const
{
    const QString values = m_looked ? valuesAt(*m_looked) : QString();
    return values.isEmpty() ? m_content.title : values;
}

QString Chart::valuesAt(double x) const
{
    QStringList values;
    QString when;
    for (const ChartLine& line : m_content.lines) {
        const QPointF* point = nearest(line, x);
        if (!point || std::abs(point->x() - x) > kNearShare * m_window.shown().width())
            continue;
        if (when.isEmpty())
            when = line.whens.value(point - line.points.constData());
        if (when.isEmpty())
            when = numberText(point->x(), m_content.across);
        const QString value = numberText(point->y(), m_content.up);
        values.append(line.name.isEmpty() ? value : QStringLiteral("%1 %2").arg(line.name, value));
    }
    if (values.isEmpty())
        return {};
    return QStringLiteral("%1: %2").arg(when, values.join(QStringLiteral(" · ")));
}

void Chart::showWhole()
{
    m_window.showWhole();
    m_looked.reset();
    follow();
    emit windowChanged();
}

void Chart::zoom(double factor, const QPointF& about)
{
    m_window.zoom(factor, about);
    follow();
    emit windowChanged();
}

void Chart::move(const QPointF& by)
{
    m_window.move(by);
    follow();
    emit windowChanged();
}

QImage Chart::picture() { return grab().toImage(); }

void Chart::themeChanged()
{
    place();
    draw();
}

void Chart::resizeEvent(QResizeEvent*) { place(); }

void Chart::place()
{
    const int strip = m_hasStrip ? theme().metrics().ceilPx(kStripMm) : 0;
    m_readOut->setGeometry(0, 0, width(), strip);
    m_view->setGeometry(0, strip, width(), std::max(0, height() - strip));
}

}  // namespace bathside::ui
