#include "ui/thermometers/ask_serial.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <array>
#include <cmath>

#include "core/bath/pattern_offer.h"
#include "ui/text/subjects.h"
#include "ui/thermometers/probe_words.h"

namespace bathside::ui {
namespace {

struct SerialText {
    Q_DECLARE_TR_FUNCTIONS(SerialText)
};

constexpr std::size_t kMostOffered = 8;

/// Lines such devices send, for a choice before anything has come.
constexpr std::array<const char*, 4> kExamples{"28.13", "28.13 C", "T = 28.13 C", "28,13"};

QString numberText(double number)
{
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return locale.toString(number, 'g', 6);
}

std::vector<OfferedPattern> examples()
{
    std::vector<OfferedPattern> all;
    for (const char* line : kExamples)
        all.push_back(patternsFor(line).front());
    return all;
}

}  // namespace

void askSpeed(ThermoContext& context, const SerialLine& line, SerialAnswered answered)
{
    QList<Choice> choices;
    for (const int baud : kBauds)
        choices.append({.id = QString::number(baud),
                        .word = QString::number(baud),
                        .line = baud == line.baud ? SerialText::tr("now") : QString()});
    context.bench.asker.choose(
        SerialText::tr("How fast does it send? Baud, as in its handbook"), choices,
        [line, answered = std::move(answered)](const QString& id, const AnswerTap& tap) {
            SerialLine next = line;
            next.baud = id.toInt();
            answered(next, tap);
        });
}

void askUnit(ThermoContext& context, const SerialLine& line, SerialAnswered answered)
{
    QList<Choice> choices;
    for (const LineUnit unit : {LineUnit::Celsius, LineUnit::Pt100, LineUnit::Pt1000})
        choices.append({.id = QString::number(static_cast<int>(unit)),
                        .word = unitText(unit),
                        .line = unit == line.shows ? SerialText::tr("now") : QString()});
    context.bench.asker.choose(
        SerialText::tr("What does the number in its line mean?"), choices,
        [line, answered = std::move(answered)](const QString& id, const AnswerTap& tap) {
            SerialLine next = line;
            next.shows = static_cast<LineUnit>(id.toInt());
            answered(next, tap);
        });
}

void askPattern(ThermoContext& context, const ProbeId& probe, const SerialLine& line,
                SerialAnswered answered)
{
    const auto last = context.live.lastLine(probe);
    std::vector<OfferedPattern> offered = last ? patternsFor(*last) : examples();
    // A temperature has decimals more often than a date, a time or a channel.
    std::ranges::stable_partition(
        offered, [](const OfferedPattern& each) { return each.number != std::floor(each.number); });
    offered.resize(std::min(offered.size(), kMostOffered));
    QList<Choice> choices;
    for (std::size_t i = 0; i < offered.size(); ++i)
        choices.append({.id = QStringLiteral("pattern:%1").arg(i),
                        .word = numberText(offered[i].number),
                        .line = fromCore(offered[i].pattern)});
    choices.append({.id = QStringLiteral("back"),
                    .word = SerialText::tr("leave it"),
                    .role = Role::Quiet,
                    .mark = Mark::Back});
    const QString title =
        last ? SerialText::tr("It sent “%1”. Which number is it?").arg(fromCore(*last))
             : SerialText::tr("Nothing has come yet. Which of these is like its line?");
    context.bench.asker.choose(title, choices,
                               [&context, line, offered, answered = std::move(answered)](
                                   const QString& id, const AnswerTap& tap) {
                                   if (id == QLatin1String("back"))
                                       return context.bench.asker.close();
                                   const OfferedPattern& taken = offered.at(id.mid(8).toUInt());
                                   SerialLine next = line;
                                   next.pattern = taken.pattern;
                                   next.decimal = taken.decimal;
                                   answered(next, tap);
                               });
}

}  // namespace bathside::ui
