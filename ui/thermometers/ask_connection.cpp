#include "ui/thermometers/ask_connection.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/text/subjects.h"
#include "ui/thermometers/ask_serial.h"
#include "ui/thermometers/probe_words.h"

namespace bathside::ui {
namespace {

struct ConnectionText {
    Q_DECLARE_TR_FUNCTIONS(ConnectionText)
};

constexpr auto kAnyNumber = "#";  // the whole line, until its pattern is chosen
constexpr std::size_t kMostFound = 7;
constexpr int kLongestPath = 80;

/// Whose a serial port is already, as a sentence; empty: nobody's.
QString userOf(const ThermoContext& context, const std::string& port)
{
    for (const auto& [id, probe] : context.bench.bench().probes) {
        const auto* line = std::get_if<SerialLine>(&probe->source);
        if (line && context.live.isSamePort(line->port, port))
            return ConnectionText::tr("%1 is on that port.", "a thermometer").arg(nameText(*probe));
    }
    const std::string balance = context.balancePort();
    if (!balance.empty() && context.live.isSamePort(balance, port))
        return ConnectionText::tr("The balance is on that port.");
    return {};
}

bool isDescribed(const Bench& bench, const OneWire& wire)
{
    return std::ranges::any_of(bench.probes, [&wire](const auto& known) {
        return known.second->source == ProbeSource(wire);
    });
}

/// Plugged in; of one-wire thermometers those that are not ours yet. Ports that are free first.
std::vector<ProbeSource> found(const ThermoContext& context)
{
    std::vector<ProbeSource> all = context.live.pluggedIn();
    std::erase_if(all, [&](const ProbeSource& source) {
        const auto* wire = std::get_if<OneWire>(&source);
        return wire && isDescribed(context.bench.bench(), *wire);
    });
    std::ranges::stable_partition(all, [&](const ProbeSource& source) {
        const auto* line = std::get_if<SerialLine>(&source);
        return !line || userOf(context, line->port).isEmpty();
    });
    all.resize(std::min(all.size(), kMostFound));
    return all;
}

Choice choiceOf(const ThermoContext& context, const ProbeSource& source, std::size_t index)
{
    const QString id = QStringLiteral("found:%1").arg(index);
    const auto* line = std::get_if<SerialLine>(&source);
    if (!line)
        return {.id = id,
                .word = ConnectionText::tr("one-wire"),
                .line = fromCore(std::get<OneWire>(source).device)};
    const QString user = userOf(context, line->port);
    return {.id = id,
            .word = user.isEmpty() ? ConnectionText::tr("serial port") : portText(line->port),
            .line = portText(line->port),
            .reason = user};
}

QList<Choice> connectionsOf(const ThermoContext& context, const std::vector<ProbeSource>& found)
{
    QList<Choice> choices;
    for (std::size_t i = 0; i < found.size(); ++i)
        choices.append(choiceOf(context, found[i], i));
    choices.append({.id = QStringLiteral("port"),
                    .word = ConnectionText::tr("another port …"),
                    .line = ConnectionText::tr("by its path")});
    choices.append({.id = QStringLiteral("hand"),
                    .word = ConnectionText::tr("read by hand"),
                    .line = ConnectionText::tr("glass or digital, typed in")});
    choices.append(leaveIt());
    return choices;
}

/// A pad without small letters writes TTYS4; the kernel's names are `tty` and capitals.
std::string pathOf(const QString& typed)
{
    QString path = typed.trimmed();
    if (path.startsWith(u'/'))
        return path.toStdString();
    if (path.startsWith(QLatin1String("tty"), Qt::CaseInsensitive))
        path = QStringLiteral("tty") + path.mid(3);
    return "/dev/" + path.toStdString();
}

void takePort(ThermoContext& context, SerialLine line, const Connected& answered)
{
    if (const QString user = userOf(context, line.port); !user.isEmpty())
        return context.refuse(user);
    line.pattern = kAnyNumber;
    askSpeed(context, line,
             [answered](const SerialLine& next, const AnswerTap& tap) { answered(next, tap); });
}

void askPath(ThermoContext& context, Connected answered)
{
    context.bench.asker.text(
        {.title = ConnectionText::tr("The port's path, or its name in /dev, as ttyS0"),
         .shortest = 2,
         .longest = kLongestPath,
         .suggested = {},
         .signs = TextQuestion::Signs::Any},
        [&context, answered = std::move(answered)](const QString& text, const AnswerTap&) {
            takePort(context, {.port = pathOf(text), .pattern = {}}, answered);
        });
}

}  // namespace

void askConnection(ThermoContext& context, const QString& title, Connected answered)
{
    const auto sources = found(context);
    context.bench.asker.choose(title, connectionsOf(context, sources),
                               [&context, sources, answered = std::move(answered)](
                                   const QString& id, const AnswerTap& tap) {
                                   if (id == QLatin1String("back"))
                                       return context.bench.asker.close();
                                   if (id == QLatin1String("hand"))
                                       return answered(ByHand{}, tap);
                                   if (id == QLatin1String("port"))
                                       return askPath(context, answered);
                                   const ProbeSource& source = sources.at(id.mid(6).toUInt());
                                   if (const auto* line = std::get_if<SerialLine>(&source))
                                       return takePort(context, *line, answered);
                                   answered(source, tap);
                               });
}

}  // namespace bathside::ui
