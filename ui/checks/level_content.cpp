#include "ui/checks/level_content.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/checks/check_words.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

struct LevelText {
    Q_DECLARE_TR_FUNCTIONS(LevelText)
};

double daysBetween(WallTime from, WallTime to)
{
    return std::chrono::duration<double, std::ratio<86'400>>(to - from).count();
}

}  // namespace

ChartContent levelContent(const VesselLog& log, const std::string& zone)
{
    ChartContent content;
    if (!log.vessel)
        return content;
    const Vessel& vessel = *log.vessel;
    content.title = LevelText::tr("Level by the dipstick");
    content.across = {
        .unit = LevelText::tr("d", "unit of an axis: days"), .low = 0, .high = 1, .decimals = 0};
    content.up = {
        .unit = QStringLiteral("L"), .low = 0, .high = vessel.dipstick.fullest(), .decimals = 1};
    content.rules.append(
        {.words = LevelText::tr("minimum %1").arg(figure(vessel.minimum, 1, QStringLiteral("L"))),
         .at = vessel.minimum});
    for (const Dip& dip : log.dips) {
        const auto litres = vessel.dipstick.litresAt(static_cast<double>(dip.millimetres));
        if (!litres)
            continue;
        if (content.lines.isEmpty() || dip.filled)
            content.lines.append(ChartLine{.dots = true});
        ChartLine& line = content.lines.back();
        line.points.append({daysBetween(log.dips.front().at, dip.at), *litres});
        line.whens.append(dayText(localDay(dip.at, zone)));
    }
    if (!content.lines.isEmpty())
        content.across.high = std::max(1.0, content.lines.back().points.back().x());
    return content;
}

}  // namespace bathside::ui
