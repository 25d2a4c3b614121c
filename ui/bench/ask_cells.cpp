#include "ui/bench/ask_cells.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

#include "core/day/bag_cells.h"
#include "ui/bench/ask_bag.h"
#include "ui/charts/chart.h"
#include "ui/text/numbers.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct CellsText {
    Q_DECLARE_TR_FUNCTIONS(CellsText)
};

constexpr int kFigures = 3;  // a titre is not known better

QString titreText(double titre)
{
    const double unit = titre < 1 ? 1 : std::pow(10, std::floor(std::log10(titre)) - kFigures + 1);
    const double step = std::max(1.0, unit);
    return countText(std::llround(titre / step) * std::llround(step), QLocale());
}

ChartLine edgeOf(const std::vector<CellsPoint>& course, const QString& name, double Interval::*edge)
{
    ChartLine line{.name = name, .points = {}};
    for (const CellsPoint& point : course)
        line.points.append({point.minutes, point.perDose.*edge});
    return line;
}

ChartContent chartOf(const std::vector<CellsPoint>& course, const BagCells& cells, double minutes)
{
    ChartContent content;
    content.title = CellsText::tr("Live cells of a dose over the bag's life, indicative");
    content.across = {.unit = CellsText::tr("min", "unit of an axis: minutes of a bag's life"),
                      .low = 0,
                      .high = course.back().minutes,
                      .decimals = 0};
    content.up = {.unit = QStringLiteral("PFU"),
                  .low = 0,
                  .high = 1.15 * std::max(course.front().perDose.high, cells.minimum),
                  .decimals = 0};
    content.bands.append({.words = CellsText::tr("below the minimum"),
                          .low = 0,
                          .high = cells.minimum,
                          .role = Role::HeadsUp,
                          .corner = Qt::AlignLeft | Qt::AlignBottom});
    content.lines = {edgeOf(course, CellsText::tr("at most:"), &Interval::high),
                     edgeOf(course, CellsText::tr("at least:"), &Interval::low)};
    content.marks.append(
        {.words = CellsText::tr("now"), .at = {minutes, (cells.now.low + cells.now.high) / 2}});
    return content;
}

QString wordsOf(const Bag& bag, const BagCells& cells)
{
    return CellsText::tr(
               "%1, %2: %3 to %4 PFU a dose now, %5 to %6 at the bag's limit; minimum %7. "
               "Indicative: a calculation that releases nothing. The label decides.",
               "bag, component, live cells")
        .arg(subjectText(subjectOf(bag.id)), idText(cells.component), titreText(cells.now.low),
             titreText(cells.now.high), titreText(cells.atLimit.low), titreText(cells.atLimit.high),
             titreText(cells.minimum));
}

}  // namespace

std::optional<Choice> cellsChoice(const BenchContext& context, const Bag& bag)
{
    const auto cells = cellsOf(context.bench(), bag, context.model.now());
    if (!cells)
        return std::nullopt;
    const bool isAbove = judged(cells->atLimit, cells->minimum) == CellsVerdict::Above;
    return Choice{.id = QStringLiteral("cells"),
                  .word = CellsText::tr("live cells …"),
                  .line = CellsText::tr("indicative: %1 to %2", "live cells in a dose")
                              .arg(titreText(cells->now.low), titreText(cells->now.high)),
                  .role = isAbove ? Role::Neutral : Role::HeadsUp};
}

void lookAtCells(BenchContext& context, const BagId& id)
{
    const Bag* bag = context.bench().bag(id);
    if (!bag)
        return context.asker.close();
    const Stamp now = context.model.now();
    const auto cells = cellsOf(context.bench(), *bag, now);
    const auto course = cellsCourse(context.bench(), *bag, now);
    if (!cells || course.empty())
        return context.asker.close();
    const Micros age = elapsed(bag->firstDiluent->at, now).time;
    const double minutes = std::chrono::duration<double, std::ratio<60>>(age).count();
    context.asker.look(wordsOf(*bag, *cells), chartOf(course, *cells, minutes),
                       [&context, id](const AnswerTap&) { askBag(context, id); });
}

}  // namespace bathside::ui
