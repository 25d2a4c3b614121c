#include "ui/thermometers/ask_thermometer.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "ui/text/subjects.h"
#include "ui/thermometers/ask_connection.h"
#include "ui/thermometers/ask_serial.h"
#include "ui/thermometers/probe_words.h"

namespace bathside::ui {
namespace {

struct ThermometerText {
    Q_DECLARE_TR_FUNCTIONS(ThermometerText)
};

constexpr int kLongestName = 24;
constexpr qint64 kLargestStep = 1'000;  // m°C
constexpr qint64 kLargestDrift = 2'000;
constexpr qint64 kUsualStep = 100;  // of a digital thermometer: a tenth of a degree
constexpr qint64 kWireStep = 62;    // 12 bits of a one-wire thermometer, 1/16 °C

using Named = std::function<void(const std::string& name, const AnswerTap& tap)>;
using Measured = std::function<void(double celsius, const AnswerTap& tap)>;

/// The name with hyphens, and a number where that one is taken.
ProbeId newId(const Bench& bench, std::string name)
{
    std::ranges::replace(name, ' ', '-');
    ProbeId id{name};
    for (int n = 2; bench.probes.contains(id); ++n)
        id = {name + "-" + std::to_string(n)};
    return id;
}

void askName(ThermoContext& context, const std::string& before, Named answered)
{
    context.bench.asker.text(
        {.title = ThermometerText::tr("Its name, as on its label"),
         .shortest = 1,
         .longest = kLongestName,
         .suggested = fromCore(before)},
        [answered = std::move(answered)](const QString& text, const AnswerTap& tap) {
            answered(text.toStdString(), tap);
        });
}

struct CelsiusQuestion {
    QString title;
    qint64 lowest = 0, highest = 0, suggested = 0;  // m°C
};

void askCelsius(ThermoContext& context, const CelsiusQuestion& question, Measured answered)
{
    context.bench.asker.number(
        {.title = question.title,
         .unit = QStringLiteral("°C"),
         .lowest = question.lowest,
         .highest = question.highest,
         .decimals = 3,
         .typedDecimals = 3,
         .suggested = question.suggested},
        [answered = std::move(answered)](qint64 value, const AnswerTap& tap) {
            answered(static_cast<double>(value) / 1000, tap);
        });
}

void askStep(ThermoContext& context, qint64 suggested, Measured answered)
{
    askCelsius(context,
               {ThermometerText::tr("The smallest step it shows"), 1, kLargestStep, suggested},
               std::move(answered));
}

/// Name, then smallest step, then it is said.
void nameAndDescribe(ThermoContext& context, const ProbeSource& source)
{
    askName(context, {}, [&context, source](const std::string& name, const AnswerTap&) {
        const qint64 usual = std::holds_alternative<OneWire>(source) ? kWireStep : kUsualStep;
        askStep(context, usual, [&context, source, name](double step, const AnswerTap& tap) {
            Probe probe{.id = newId(context.bench.bench(), name),
                        .name = name,
                        .certificate = {},
                        .calibrated = {},
                        .due = {},
                        .resolution = step,
                        .points = {},
                        .source = source};
            context.describe(probe, tap);
        });
    });
}

// --- changes -----------------------------------------------------------------------------------

/// The probe as it stands when the answer comes.
void change(ThermoContext& context, const ProbeId& id, const AnswerTap& tap,
            const std::function<void(Probe&)>& how)
{
    const auto found = context.bench.bench().probes.find(id);
    if (found == context.bench.bench().probes.end())
        return;
    Probe next = *found->second;
    next.id = id;
    how(next);
    context.describe(next, tap);
}

SerialAnswered changeOfLine(ThermoContext& context, const ProbeId& id)
{
    return [&context, id](const SerialLine& next, const AnswerTap& tap) {
        change(context, id, tap, [&next](Probe& probe) { probe.source = next; });
    };
}

QList<Choice> changesOf(const Probe& probe)
{
    const auto* line = std::get_if<SerialLine>(&probe.source);
    const bool isOut = std::holds_alternative<OutOfUse>(probe.source);
    QList<Choice> choices{
        {.id = QStringLiteral("name"),
         .word = ThermometerText::tr("name …"),
         .line = nameText(probe)},
        {.id = QStringLiteral("step"),
         .word = ThermometerText::tr("smallest step …"),
         .line = ThermometerText::tr("%1 °C").arg(celsiusText(probe.resolution))},
        {.id = QStringLiteral("drift"),
         .word = ThermometerText::tr("drift …"),
         .line = ThermometerText::tr("± %1 °C since calibration").arg(celsiusText(probe.drift))}};
    if (line) {
        choices.append({.id = QStringLiteral("speed"),
                        .word = ThermometerText::tr("speed …"),
                        .line = ThermometerText::tr("%1 baud").arg(line->baud)});
        choices.append({.id = QStringLiteral("pattern"),
                        .word = ThermometerText::tr("pattern …"),
                        .line = fromCore(line->pattern)});
        choices.append({.id = QStringLiteral("unit"),
                        .word = ThermometerText::tr("it sends …"),
                        .line = unitText(line->shows)});
    }
    choices.append({.id = QStringLiteral("source"),
                    .word = isOut ? ThermometerText::tr("in use again …")
                                  : ThermometerText::tr("connection …"),
                    .line = line ? portText(line->port) : connectionText(probe.source)});
    if (!isOut)
        choices.append({.id = QStringLiteral("bath"),
                        .word = probe.inBath ? ThermometerText::tr("NOT IN THE BATH")
                                             : ThermometerText::tr("IN THE BATH"),
                        .line = probe.inBath
                                    ? ThermometerText::tr("any that is read counts")
                                    : ThermometerText::tr("it alone, and readings by hand")});
    if (!isOut)
        choices.append({.id = QStringLiteral("out"), .word = ThermometerText::tr("OUT OF USE")});
    choices.append(leaveIt());
    return choices;
}

void askChangeOf(ThermoContext& context, const Probe& probe, const QString& what,
                 const AnswerTap& tap)
{
    const ProbeId id = probe.id;
    if (what == QLatin1String("name"))
        return askName(context, probe.name,
                       [&context, id](const std::string& name, const AnswerTap& at) {
                           change(context, id, at, [&name](Probe& next) { next.name = name; });
                       });
    if (what == QLatin1String("step"))
        return askStep(context, std::max(std::llround(probe.resolution * 1000), 1LL),
                       [&context, id](double step, const AnswerTap& at) {
                           change(context, id, at, [step](Probe& next) { next.resolution = step; });
                       });
    if (what == QLatin1String("drift"))
        return askCelsius(context,
                          {ThermometerText::tr("Drift since calibration, either way"), 0,
                           kLargestDrift, std::llround(probe.drift * 1000)},
                          [&context, id](double drift, const AnswerTap& at) {
                              change(context, id, at, [drift](Probe& next) { next.drift = drift; });
                          });
    if (what == QLatin1String("source"))
        return askConnection(
            context,
            ThermometerText::tr("How is the same thermometer connected now? Its calibration "
                                "stays."),
            [&context, id](const ProbeSource& source, const AnswerTap& at) {
                change(context, id, at, [&source](Probe& next) { next.source = source; });
            });
    if (what == QLatin1String("bath"))
        return change(context, id, tap, [](Probe& next) { next.inBath = !next.inBath; });
    if (what == QLatin1String("out"))
        return change(context, id, tap, [](Probe& next) { next.source = OutOfUse{}; });
    const auto* line = std::get_if<SerialLine>(&probe.source);
    if (!line)
        return context.bench.asker.close();
    if (what == QLatin1String("speed"))
        return askSpeed(context, *line, changeOfLine(context, id));
    if (what == QLatin1String("unit"))
        return askUnit(context, *line, changeOfLine(context, id));
    if (what == QLatin1String("pattern"))
        return askPattern(context, id, *line, changeOfLine(context, id));
    context.bench.asker.close();
}

}  // namespace

void askNewThermometer(ThermoContext& context)
{
    askConnection(context, ThermometerText::tr("Which thermometer is new?"),
                  [&context](const ProbeSource& source, const AnswerTap&) {
                      nameAndDescribe(context, source);
                  });
}

void askChange(ThermoContext& context, const ProbeId& id)
{
    const auto found = context.bench.bench().probes.find(id);
    if (found == context.bench.bench().probes.end())
        return;
    Probe probe = *found->second;
    probe.id = id;
    context.bench.asker.choose(ThermometerText::tr("%1: what is different?").arg(nameText(probe)),
                               changesOf(probe),
                               [&context, probe](const QString& what, const AnswerTap& tap) {
                                   askChangeOf(context, probe, what, tap);
                               });
}

}  // namespace bathside::ui
