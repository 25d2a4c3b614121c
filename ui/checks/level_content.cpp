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

struct LevelShown {
    WallTime at;
    LevelReading reading;
};

/// What the table holds, with each fill, said or seen: there the line is broken.
std::vector<LevelShown> levelsIn(const VesselLog& log)
{
    std::vector<LevelReading> readings;
    std::vector<WallTime> times;
    bool filled = false;  // since the last dip that shows
    for (const Dip& dip : log.dips) {
        filled = filled || dip.filled;
        const auto litres = log.vessel->dipstick.litresAt(static_cast<double>(dip.millimetres));
        if (!litres)
            continue;
        readings.push_back({daysBetween(log.dips.front().at, dip.at), *litres, filled});
        times.push_back(dip.at);
        filled = false;
    }
    readings = withFillsSeen(std::move(readings), log.vessel->dipstick.error());
    std::vector<LevelShown> levels;
    for (std::size_t i = 0; i < readings.size(); ++i)
        levels.push_back({times[i], readings[i]});
    return levels;
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
    const auto levels = levelsIn(log);
    for (const LevelShown& level : levels) {
        if (content.lines.isEmpty() || level.reading.afterFill)
            content.lines.append(ChartLine{.dots = true});
        ChartLine& line = content.lines.back();
        line.points.append({level.reading.day, level.reading.litres});
        line.whens.append(dayText(localDay(level.at, zone)));
    }
    if (!content.lines.isEmpty())
        content.across.high = std::max(1.0, content.lines.back().points.back().x());
    return content;
}

}  // namespace bathside::ui
