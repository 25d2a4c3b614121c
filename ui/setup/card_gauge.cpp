#include "ui/setup/card_gauge.h"

#include <QPainter>
#include <algorithm>

#include "ui/controls/grid.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kHintMm = 60;  // the words' part of the width, beside the outline

}  // namespace

CardGauge::CardGauge(Preferences& preferences, QWidget* parent)
    : Control(parent),
      m_preferences(preferences),
      m_hint(new Label(this)),
      m_narrower(new TapButton(QStringLiteral("setup.narrower"), this)),
      m_wider(new TapButton(QStringLiteral("setup.wider"), this)),
      m_fits(new TapButton(QStringLiteral("setup.fits"), this)),
      m_close(new TapButton(QStringLiteral("setup.gauge-close"), this))
{
    setObjectName(QStringLiteral("setup.gauge"));
    m_hint->setCapMm(4, Metrics::kSmall);
    m_fits->setRole(Role::Primary);
    connect(m_narrower, &TapButton::pressed, this, [this] { scale(1 / kStep); });
    connect(m_wider, &TapButton::pressed, this, [this] { scale(kStep); });
    connect(m_fits, &TapButton::pressed, this, &CardGauge::take);
    connect(m_close, &TapButton::pressed, this, &CardGauge::closed);
    begin();
    retranslate();
}

void CardGauge::begin()
{
    m_drawnMm = Metrics::kCardWidth;
    update();
}

void CardGauge::retranslate()
{
    m_hint->setText(
        tr("Hold a bank card against the outline. Make it wider or narrower until the "
           "card fits."));
    m_narrower->setWord(tr("narrower"));
    m_wider->setWord(tr("wider"));
    m_fits->setWord(tr("it fits"));
    m_close->setWord(tr("back"));
}

QRectF CardGauge::outline() const
{
    const Metrics& metrics = theme().metrics();
    const double wide = metrics.px(m_drawnMm);
    const double high = wide * Metrics::kCardHeight / Metrics::kCardWidth;
    return {metrics.px(1), metrics.px(1), wide, high};
}

void CardGauge::scale(double by)
{
    const double room = theme().metrics().mm(width()) - kHintMm - 2;
    m_drawnMm = std::clamp(m_drawnMm * by, 30.0, std::max(room, Metrics::kCardWidth));
    update();
}

// The pitch in force has the last correction in it already.
void CardGauge::take()
{
    Preference next = m_preferences.now();
    next.pitchCorrection = Metrics::correctionFor(m_drawnMm * next.pitchCorrection);
    emit closed();
    m_preferences.set(next);
}

void CardGauge::resizeEvent(QResizeEvent*) { place(); }

void CardGauge::place()
{
    const Metrics& metrics = theme().metrics();
    const int high = metrics.ceilPx(Metrics::kMinimum), hint = metrics.ceilPx(kHintMm);
    const QRect bar(0, height() - high, width(), high);
    int at = 0;
    for (TapButton* each : {m_narrower, m_wider, m_fits, m_close})
        each->setGeometry(cellOf(bar, {4, 1}, at++));
    m_hint->setGeometry(width() - hint, 0, hint, height() - high - metrics.gapPx());
}

void CardGauge::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Metrics& metrics = theme().metrics();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(QRectF(0, 0, width(), m_narrower->y() - 1));
    // The card's own edge is the outside of the line.
    const double thick = metrics.px(0.5), corner = metrics.px(m_drawnMm * 3.18 / 85.60);
    painter.setPen(QPen(theme().palette().ink(), thick));
    painter.setBrush(theme().palette().panel());
    painter.drawRoundedRect(outline().adjusted(thick / 2, thick / 2, -thick / 2, -thick / 2),
                            corner, corner);
}

}  // namespace bathside::ui
