#include "ui/setup/cautions.h"

#include <QPainter>
#include <cmath>

#include "ui/controls/paint.h"
#include "ui/text/cautions.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kMarkMm = 9, kAroundMm = 1;
constexpr int kMostLines = 6;

}  // namespace

QRectF Cautions::room(double width, double height) const
{
    const Metrics& metrics = theme().metrics();
    const double by = metrics.px(kAroundMm), mark = metrics.px(kMarkMm);
    return {mark + by, by, width - mark - 3 * by, height - 2 * by};
}

int Cautions::heightFor(int width) const
{
    const double high = heightOf(kMostLines, Metrics::kSmall, Weight::Regular) + 1;
    const FittedText set = fitted(cautionsText(), {room(width, 0).width(), high},
                                  {Metrics::kSmall, Metrics::kSmall, Weight::Regular, kMostLines});
    return static_cast<int>(std::ceil(set.size.height() + theme().metrics().px(2 * kAroundMm) + 1));
}

void Cautions::retranslate()
{
    suggestAccessibleName(cautionsText());
    update();
}

QList<PlacedText> Cautions::texts() const
{
    return {{cautionsText(),
             room(width(), height()),
             Qt::AlignLeft | Qt::AlignVCenter,
             {Metrics::kSmall, Metrics::kSmall, Weight::Regular, kMostLines},
             theme().tone(Role::HeadsUp).ink}};
}

void Cautions::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Tone& tone = theme().tone(Role::HeadsUp);
    const double side = theme().metrics().px(kMarkMm - 3);
    drawPlate(painter, QRectF(rect()), tone);
    drawMark(painter, QRectF(theme().metrics().px(1.5), (height() - side) / 2, side, side),
             Mark::Ampoule, tone.ink);
    drawAll(painter, texts());
}

}  // namespace bathside::ui
