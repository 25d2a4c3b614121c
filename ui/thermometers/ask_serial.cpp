#include "ui/thermometers/ask_serial.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <array>
#include <cmath>

#include "core/bath/pattern_offer.h"
#include "ui/text/numbers.h"
#include "ui/text/subjects.h"
#include "ui/thermometers/probe_words.h"

namespace bathside::ui {
namespace {

struct SerialText {
    Q_DECLARE_TR_FUNCTIONS(SerialText)
};

constexpr std::size_t kMostOffered = 8;
constexpr std::array kUnits{LineUnit::Celsius, LineUnit::Pt100, LineUnit::Pt1000, LineUnit::Ntc};

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

// --- a thermistor's coefficients -----------------------------------------------------------------

struct Coefficient {
    const char* letter;
    const char* unit;  // the power of ten it is usually printed with
    int power;
    double Thermistor::*which;
};

constexpr std::array<Coefficient, 3> kCoefficients{{{"A", "× 10⁻³", 3, &Thermistor::a},
                                                    {"B", "× 10⁻⁴", 4, &Thermistor::b},
                                                    {"C", "× 10⁻⁷", 7, &Thermistor::c}}};
constexpr int kKeptPower = 18;  // as a probe's document keeps it
constexpr double kRoom = 25;    // °C, by which such sensors are named

using ThermistorAnswered = std::function<void(const Thermistor& element, const AnswerTap& tap)>;

void askCoefficients(ThermoContext& context, const Thermistor& before, std::size_t index,
                     ThermistorAnswered answered);

QString ohmText(double ohm) { return countText(std::llround(ohm), QLocale()); }

/// What a slip would change: the sensor's resistance, which is printed beside its coefficients.
void askIsThatIt(ThermoContext& context, const Thermistor& element, ThermistorAnswered answered)
{
    const auto room = ohmOf(element, kRoom), ice = ohmOf(element, 0);
    if (!room || !ice) {
        askCoefficients(context, element, 0, std::move(answered));
        return context.refuse(SerialText::tr(
            "No such sensor can be: its resistance would not fall as it gets warmer. Compare A, B "
            "and C, with their signs and powers of ten."));
    }
    const QList<Choice> choices{
        {.id = QStringLiteral("yes"),
         .word = SerialText::tr("YES, THAT IS IT"),
         .role = Role::Primary},
        {.id = QStringLiteral("again"), .word = SerialText::tr("type them again …")},
        leaveIt()};
    context.bench.asker.choose(
        SerialText::tr("By these it has %1 Ω at 25 °C and %2 Ω at 0 °C. Is that your sensor?",
                       "resistances")
            .arg(ohmText(*room), ohmText(*ice)),
        choices,
        [&context, element, answered = std::move(answered)](const QString& id,
                                                            const AnswerTap& tap) {
            if (id == QLatin1String("yes"))
                return answered(element, tap);
            if (id == QLatin1String("again"))
                return askCoefficients(context, element, 0, answered);
            context.bench.asker.close();
        });
}

/// One after the other from `index` on; what was typed before is suggested.
void askCoefficients(ThermoContext& context, const Thermistor& before, std::size_t index,
                     ThermistorAnswered answered)
{
    if (index == kCoefficients.size())
        return askIsThatIt(context, before, std::move(answered));
    const Coefficient& asked = kCoefficients.at(index);
    const qint64 kept = std::llround(before.*asked.which * std::pow(10, kKeptPower));
    context.bench.asker.number(
        {.title = SerialText::tr("%1 of its sensor (Steinhart–Hart)", "a letter: A, B or C")
                      .arg(QLatin1String(asked.letter)),
         .unit = QString::fromUtf8(asked.unit),
         .lowest = -kLargestCoefficient,
         .highest = kLargestCoefficient,
         .decimals = kKeptPower - asked.power,
         .typedDecimals = 7,
         .suggested = kept == 0 ? std::nullopt : std::optional(kept),
         .note = SerialText::tr("As its data sheet has it, with this power of ten. Seven decimals "
                                "are enough."),
         .minus = true},
        [&context, before, index, answered = std::move(answered)](qint64 value, const AnswerTap&) {
            Thermistor next = before;
            next.*kCoefficients.at(index).which =
                static_cast<double>(value) / std::pow(10, kKeptPower);
            askCoefficients(context, next, index + 1, answered);
        });
}

}  // namespace

Choice leaveIt()
{
    return {.id = QStringLiteral("back"),
            .word = SerialText::tr("leave it"),
            .role = Role::Quiet,
            .mark = Mark::Back};
}

void askSpeed(ThermoContext& context, const SerialLine& line, SerialAnswered answered)
{
    QList<Choice> choices;
    for (const int baud : kBauds)
        choices.append({.id = QString::number(baud),
                        .word = QString::number(baud),
                        .line = baud == line.baud ? SerialText::tr("now") : QString()});
    choices.append(leaveIt());
    context.bench.asker.choose(
        SerialText::tr("How fast does it send? Baud, as in its handbook"), choices,
        [&context, line, answered = std::move(answered)](const QString& id, const AnswerTap& tap) {
            if (id == QLatin1String("back"))
                return context.bench.asker.close();
            SerialLine next = line;
            next.baud = id.toInt();
            answered(next, tap);
        });
}

void askUnit(ThermoContext& context, const SerialLine& line, SerialAnswered answered)
{
    QList<Choice> choices;
    for (const LineUnit unit : kUnits)
        choices.append({.id = QString::number(static_cast<int>(unit)),
                        .word = unitText(unit),
                        .line = unit == line.shows ? SerialText::tr("now") : QString()});
    choices.append(leaveIt());
    context.bench.asker.choose(
        SerialText::tr("What does the number in its line mean?"), choices,
        [&context, line, answered = std::move(answered)](const QString& id, const AnswerTap& tap) {
            if (id == QLatin1String("back"))
                return context.bench.asker.close();
            SerialLine next = line;
            next.shows = static_cast<LineUnit>(id.toInt());
            next.ntc.reset();
            if (next.shows != LineUnit::Ntc)
                return answered(next, tap);
            askCoefficients(
                context, line.ntc.value_or(Thermistor{}), 0,
                [next, answered](const Thermistor& element, const AnswerTap& at) mutable {
                    next.ntc = element;
                    answered(next, at);
                });
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
    choices.append(leaveIt());
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
