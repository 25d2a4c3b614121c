#include "ui/bench/ask_line.h"

#include <QCoreApplication>
#include <QLocale>

#include "ui/text/numbers.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct LineText {
    Q_DECLARE_TR_FUNCTIONS(LineText)
};

void askBirds(BenchContext& context, const LineId& line)
{
    constexpr qint64 kMost = 10'000'000;
    const auto known = context.bench().lines.find(line);
    const qint64 birds = known == context.bench().lines.end() ? 0 : known->second.birds;
    const NumberQuestion question{
        .title = LineText::tr("%1: birds done so far, in all").arg(subjectText(subjectOf(line))),
        .unit = LineText::tr("birds"),
        .lowest = birds,
        .highest = kMost,
        .decimals = 0,
        .typedDecimals = 0,
        .suggested = {}};
    context.asker.number(question, [&context, line](qint64 total, const AnswerTap& tap) {
        context.say(CountBirds{line, total}, tap);
    });
}

struct LineSaying {
    QString id, word;
    Intent intent;
};

std::vector<LineSaying> sayings(const LineId& line)
{
    return {
        {QStringLiteral("needle"), LineText::tr("NEEDLE CHANGED"), ChangeNeedle{line}},
        {QStringLiteral("dose-right"), LineText::tr("DOSE RIGHT"), CheckDose{line, true}},
        {QStringLiteral("dose-wrong"), LineText::tr("DOSE WRONG"), CheckDose{line, false}},
        {QStringLiteral("stopped"), LineText::tr("STOPPED"), StopLine{line}},
        {QStringLiteral("going"), LineText::tr("GOING"), GoLine{line}},
    };
}

/// Birds until that limit of the card; empty where the card has none.
QString birdsLeft(const Bench& bench, LimitName limit, std::int64_t since)
{
    const auto at = bench.card ? bench.card->limit(limit).birds.at : std::nullopt;
    if (!at)
        return {};
    const QString birds = countText(*at > since ? *at - since : since - *at, QLocale());
    //: Birds until (or since) a needle change is due.
    return *at > since ? LineText::tr("needle in %1").arg(birds)
                       : LineText::tr("needle due, %1 over").arg(birds);
}

}  // namespace

QString lineText(const Bench& bench, const Line& line)
{
    QStringList parts{LineText::tr("%1 birds").arg(countText(line.birds, QLocale()))};
    const QString needle = birdsLeft(bench, LimitName::Needle, line.birds - line.birdsAtNeedle);
    if (!needle.isEmpty())
        parts.append(needle);
    if (line.stopped)
        parts.append(LineText::tr("STOPPED"));
    return parts.join(QStringLiteral(" · "));
}

void askLine(BenchContext& context, const LineId& line)
{
    const auto known = context.bench().lines.find(line);
    QString title = subjectText(subjectOf(line));
    if (known != context.bench().lines.end())
        title += QStringLiteral(" · ") + lineText(context.bench(), known->second);
    QList<Choice> choices{{.id = QStringLiteral("birds"), .word = LineText::tr("birds …")}};
    const std::vector<LineSaying> all = sayings(line);
    for (const LineSaying& saying : all) {
        if (context.model.wouldTake(saying.intent))
            choices.append({.id = saying.id, .word = saying.word});
    }
    context.asker.choose(title, choices,
                         [&context, line, all](const QString& id, const AnswerTap& tap) {
                             if (id == QLatin1String("birds"))
                                 return askBirds(context, line);
                             for (const LineSaying& saying : all) {
                                 if (saying.id == id)
                                     return context.say(saying.intent, tap);
                             }
                         });
}

void askWhichLine(BenchContext& context)
{
    QList<Choice> choices;
    for (const auto& [id, line] : context.bench().lines)
        choices.append({.id = QStringLiteral("line:") + idText(id),
                        .word = subjectText(subjectOf(id)),
                        .line = lineText(context.bench(), line)});
    for (const std::string name : {"A", "B", "C", "D", "E", "F"}) {
        if (choices.size() < 6 && !context.bench().lines.contains({name}))
            choices.append({.id = QStringLiteral("line:") + fromCore(name),
                            .word = subjectText(subjectOf(LineId{name}))});
    }
    context.asker.choose(LineText::tr("Which line?"), choices,
                         [&context](const QString& id, const AnswerTap&) {
                             askLine(context, {id.mid(5).toStdString()});
                         });
}

}  // namespace bathside::ui
