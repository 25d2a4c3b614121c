#include "ui/plan/ask_plan.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "ui/text/numbers.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

struct PlanAsk {
    Q_DECLARE_TR_FUNCTIONS(PlanAsk)
};

using std::chrono::hours;
using std::chrono::minutes;

constexpr qint64 kMostBirds = 10'000'000;  // as the bench takes them
constexpr qint64 kLastMinute = 2359;

QString nameOf(const LinePlanned& line) { return subjectText(subjectOf(line.line)); }

Choice back()
{
    return {.id = QStringLiteral("back"),
            .word = PlanAsk::tr("back"),
            .role = Role::Quiet,
            .mark = Mark::Back};
}

NumberQuestion whole(const QString& title, qint64 lowest, qint64 highest)
{
    return {.title = title,
            .unit = {},
            .lowest = lowest,
            .highest = highest,
            .decimals = 0,
            .typedDecimals = 0,
            .suggested = {}};
}

using Timed = std::function<void(Millis, const AnswerTap&)>;

void askTime(BenchContext& context, const QString& title, Timed timed)
{
    context.asker.number(whole(title, 0, kLastMinute),
                         [&context, timed = std::move(timed)](qint64 digits, const AnswerTap& tap) {
                             if (const auto time = timeOfDigits(digits))
                                 return timed(*time, tap);
                             context.model.refuse({RefusalCode::BadValue, {}, "HHMM"});
                         });
}

void plan(BenchContext& context, const LinePlanned& line, const AnswerTap& tap)
{
    context.say(PlanLine{line}, tap);
}

// --- one figure of a line ------------------------------------------------------------------------

void askBirds(BenchContext& context, LinePlanned line,
              std::function<void(const LinePlanned&, const AnswerTap&)> done)
{
    context.asker.number(
        whole(PlanAsk::tr("%1: how many birds in all?", "a line").arg(nameOf(line)), 1, kMostBirds),
        [line, done = std::move(done)](qint64 birds, const AnswerTap& tap) mutable {
            line.birds = birds;
            done(line, tap);
        });
}

void askRate(BenchContext& context, LinePlanned line,
             std::function<void(const LinePlanned&, const AnswerTap&)> done)
{
    context.asker.number(
        whole(PlanAsk::tr("%1: how many birds an hour?", "a line").arg(nameOf(line)), 1,
              kMostBirds),
        [line, done = std::move(done)](qint64 rate, const AnswerTap& tap) mutable {
            line.birdsPerHour = rate;
            done(line, tap);
        });
}

void askStart(BenchContext& context, LinePlanned line)
{
    askTime(context,
            PlanAsk::tr("%1: start? Hours and minutes, as 0730", "a line").arg(nameOf(line)),
            [&context, line](Millis start, const AnswerTap& tap) mutable {
                line.start = start;
                plan(context, line, tap);
            });
}

/// Of a break: one that ends earlier than it begins runs past midnight.
void askBreakEnd(BenchContext& context, LinePlanned line, Millis from)
{
    askTime(context, PlanAsk::tr("Break from %1 until? Like 0950").arg(dayMinuteText(from)),
            [&context, line, from](Millis to, const AnswerTap& tap) mutable {
                line.breaks.push_back({from, to < from ? to + hours(24) : to});
                std::ranges::sort(line.breaks, {}, &DaySpan::from);
                plan(context, line, tap);
            });
}

void askBreak(BenchContext& context, const LinePlanned& line)
{
    askTime(context, PlanAsk::tr("Break from when? Hours and minutes, as 0930"),
            [&context, line](Millis from, const AnswerTap&) { askBreakEnd(context, line, from); });
}

QString spanText(const DaySpan& span)
{
    return dayMinuteText(span.from) + QStringLiteral(" – ") + dayMinuteText(span.to);
}

void askToRemoveBreak(BenchContext& context, const LinePlanned& line)
{
    constexpr std::size_t kMost = 8;
    QList<Choice> choices;
    for (std::size_t i = 0; i < std::min(kMost, line.breaks.size()); ++i)
        choices.append({.id = QStringLiteral("break:%1").arg(i), .word = spanText(line.breaks[i])});
    choices.append(back());
    context.asker.choose(PlanAsk::tr("%1: remove which break?", "a line").arg(nameOf(line)),
                         choices, [&context, line](const QString& id, const AnswerTap& tap) {
                             if (id == QLatin1String("back"))
                                 return context.asker.close();
                             LinePlanned left = line;
                             left.breaks.erase(left.breaks.begin() + id.mid(6).toLongLong());
                             plan(context, left, tap);
                         });
}

// --- a line --------------------------------------------------------------------------------------

void askToRemove(BenchContext& context, const LinePlanned& line)
{
    const QList<Choice> choices{
        {.id = QStringLiteral("sure"), .word = PlanAsk::tr("remove it", "a line from the plan")},
        back()};
    context.asker.choose(PlanAsk::tr("Remove %1 from the plan?", "a line").arg(nameOf(line)),
                         choices, [&context, line](const QString& id, const AnswerTap& tap) {
                             if (id == QLatin1String("back"))
                                 return context.asker.close();
                             plan(context, {.line = line.line, .breaks = {}, .removed = true}, tap);
                         });
}

QString breaksLine(const LinePlanned& line)
{
    return PlanAsk::tr("%n break(s)", nullptr, static_cast<int>(line.breaks.size()));
}

QList<Choice> figuresOf(const LinePlanned& line)
{
    QList<Choice> choices{{.id = QStringLiteral("birds"),
                           .word = PlanAsk::tr("birds …"),
                           .line = countText(line.birds, QLocale())},
                          {.id = QStringLiteral("rate"),
                           .word = PlanAsk::tr("birds an hour …"),
                           .line = countText(line.birdsPerHour, QLocale())},
                          {.id = QStringLiteral("start"),
                           .word = PlanAsk::tr("start …"),
                           .line = dayMinuteText(line.start)},
                          {.id = QStringLiteral("break"),
                           .word = PlanAsk::tr("add a break …"),
                           .line = breaksLine(line)}};
    if (!line.breaks.empty())
        choices.append({.id = QStringLiteral("no-break"),
                        .word = PlanAsk::tr("remove a break …"),
                        .line = spanText(line.breaks.front())});
    choices.append({.id = QStringLiteral("remove"), .word = PlanAsk::tr("remove the line …")});
    choices.append(back());
    return choices;
}

void askFigure(BenchContext& context, const LinePlanned& line)
{
    const auto done = [&context](const LinePlanned& changed, const AnswerTap& tap) {
        plan(context, changed, tap);
    };
    context.asker.choose(PlanAsk::tr("%1: change what?", "a line").arg(nameOf(line)),
                         figuresOf(line),
                         [&context, line, done](const QString& id, const AnswerTap&) {
                             if (id == QLatin1String("birds"))
                                 return askBirds(context, line, done);
                             if (id == QLatin1String("rate"))
                                 return askRate(context, line, done);
                             if (id == QLatin1String("start"))
                                 return askStart(context, line);
                             if (id == QLatin1String("break"))
                                 return askBreak(context, line);
                             if (id == QLatin1String("no-break"))
                                 return askToRemoveBreak(context, line);
                             if (id == QLatin1String("remove"))
                                 return askToRemove(context, line);
                             context.asker.close();
                         });
}

void askNewLine(BenchContext& context, const LineId& line)
{
    askBirds(context, {.line = line, .breaks = {}},
             [&context](const LinePlanned& withBirds, const AnswerTap&) {
                 askRate(context, withBirds,
                         [&context](const LinePlanned& withRate, const AnswerTap&) {
                             askStart(context, withRate);
                         });
             });
}

const LinePlanned* plannedLine(const Bench& bench, const LineId& line)
{
    const auto found = std::ranges::find(bench.planned, line, &LinePlanned::line);
    return found == bench.planned.end() ? nullptr : &*found;
}

QString figuresText(const LinePlanned& line)
{
    return PlanAsk::tr("%1 birds, %2 per h, %3", "count, rate, start")
        .arg(countText(line.birds, QLocale()), countText(line.birdsPerHour, QLocale()),
             dayMinuteText(line.start));
}

}  // namespace

std::optional<Millis> timeOfDigits(qint64 digits)
{
    const qint64 hour = digits / 100, minute = digits % 100;
    if (digits < 0 || hour > 23 || minute > 59)
        return std::nullopt;
    return hours(hour) + minutes(minute);
}

void askPlannedLine(BenchContext& context)
{
    constexpr qsizetype kMost = 8;
    QList<Choice> choices;
    for (const LinePlanned& line : context.bench().planned) {
        if (choices.size() < kMost)
            choices.append({.id = QStringLiteral("line:") + idText(line.line),
                            .word = nameOf(line),
                            .line = figuresText(line)});
    }
    for (const char* name : {"A", "B", "C", "D", "E", "F", "G", "H"}) {
        const LineId line{name};
        if (choices.size() < kMost && !plannedLine(context.bench(), line))
            choices.append({.id = QStringLiteral("line:") + idText(line),
                            .word = subjectText(subjectOf(line)),
                            .line = PlanAsk::tr("not planned"),
                            .role = Role::Quiet});
    }
    choices.append(back());
    context.asker.choose(PlanAsk::tr("Plan which line?"), choices,
                         [&context](const QString& id, const AnswerTap&) {
                             if (id == QLatin1String("back"))
                                 return context.asker.close();
                             const LineId line{id.mid(5).toStdString()};
                             if (const LinePlanned* known = plannedLine(context.bench(), line))
                                 return askFigure(context, *known);
                             askNewLine(context, line);
                         });
}

}  // namespace bathside::ui
