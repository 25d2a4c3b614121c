#include "ui/checks/ask_balance.h"

#include <QCoreApplication>

#include "core/bath/probe_source.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct BalanceText {
    Q_DECLARE_TR_FUNCTIONS(BalanceText)
};

using Done = std::function<void()>;
using Picked = std::function<void(BalanceChoice& choice, const QString& id)>;

constexpr std::size_t kMostPorts = 6;  // as many as there is room for
constexpr int kLongestMark = 12;

QString portName(const std::string& port)
{
    return fromCore(port.substr(port.find_last_of('/') + 1));
}

QString stillText(const WeightFormat& format)
{
    switch (format.stillness) {
        case Stillness::ThreeAlike:
            return BalanceText::tr("three lines alike");
        case Stillness::StillMark:
            return BalanceText::tr("still: “%1”", "a text in a balance's line")
                .arg(fromCore(format.mark));
        case Stillness::MovingMark:
            return BalanceText::tr("moving: “%1”", "a text in a balance's line")
                .arg(fromCore(format.mark));
        case Stillness::EachLine:
            return BalanceText::tr("on its key only");
    }
    Q_UNREACHABLE();
}

void set(const BalanceDesk& desk, const BalanceChoice& choice)
{
    Preference next = desk.preferences.now();
    next.balance = choice;
    desk.preferences.set(next);
}

/// One question of the menu: what is picked is set, and the menu comes back.
void pick(Asker& asker, const BalanceDesk& desk, const Done& done, const QString& title,
          QList<Choice> choices, const Picked& picked)
{
    choices.append({.id = QStringLiteral("back"),
                    .word = BalanceText::tr("leave it"),
                    .role = Role::Quiet,
                    .mark = Mark::Back});
    asker.choose(title, choices, [&asker, desk, done, picked](const QString& id, const AnswerTap&) {
        if (id != QLatin1String("back")) {
            BalanceChoice next = desk.now();
            picked(next, id);
            set(desk, next);
        }
        askBalance(asker, desk, done);
    });
}

void askPort(Asker& asker, const BalanceDesk& desk, const Done& done)
{
    const auto ports = desk.source.ports();
    QList<Choice> choices{{.id = QStringLiteral("none"), .word = BalanceText::tr("no balance")}};
    for (std::size_t i = 0; i < std::min(ports.size(), kMostPorts); ++i)
        choices.append({.id = QStringLiteral("port:%1").arg(i),
                        .word = BalanceText::tr("serial port"),
                        .line = portName(ports[i])});
    pick(asker, desk, done,
         ports.empty() ? BalanceText::tr("No serial port was found: is the balance plugged in?")
                       : BalanceText::tr("Which port is the balance on?"),
         choices, [ports](BalanceChoice& choice, const QString& id) {
             choice.port = id == QLatin1String("none") ? "" : ports.at(id.mid(5).toUInt());
         });
}

void askBaud(Asker& asker, const BalanceDesk& desk, const Done& done)
{
    QList<Choice> choices;
    for (const int baud : kBauds)
        choices.append({.id = QString::number(baud), .word = QString::number(baud)});
    pick(asker, desk, done, BalanceText::tr("How fast does it send? Baud, as in its handbook"),
         choices, [](BalanceChoice& choice, const QString& id) { choice.baud = id.toInt(); });
}

void askUnit(Asker& asker, const BalanceDesk& desk, const Done& done)
{
    QList<Choice> choices;
    for (const WeightUnit unit : {WeightUnit::Grams, WeightUnit::Milligrams}) {
        const QString name = fromCore(std::string(nameOf(unit)));
        choices.append({.id = name, .word = name});
    }
    pick(asker, desk, done, BalanceText::tr("Which unit has a number without one?"), choices,
         [](BalanceChoice& choice, const QString& id) {
             choice.format.unit = named<WeightUnit>(id.toStdString()).value_or(choice.format.unit);
         });
}

void askMark(Asker& asker, const BalanceDesk& desk, const Done& done, Stillness stillness)
{
    const QString title = stillness == Stillness::StillMark
                              ? BalanceText::tr("Text in the line of a weight that is still")
                              : BalanceText::tr("Text in the line of a weight that is moving");
    asker.text({.title = title,
                .shortest = 1,
                .longest = kLongestMark,
                .suggested = {},
                .signs = TextQuestion::Signs::Any},
               [&asker, desk, done, stillness](const QString& text, const AnswerTap&) {
                   BalanceChoice next = desk.now();
                   next.format.stillness = stillness;
                   next.format.mark = text.toStdString();
                   set(desk, next);
                   askBalance(asker, desk, done);
               });
}

void askStill(Asker& asker, const BalanceDesk& desk, const Done& done)
{
    const QList<Choice> choices{
        {.id = QStringLiteral("three"),
         .word = BalanceText::tr("three lines alike"),
         .line = BalanceText::tr("it sends all the time")},
        {.id = QStringLiteral("still"), .word = BalanceText::tr("a text when still …")},
        {.id = QStringLiteral("moving"), .word = BalanceText::tr("a text when moving …")},
        {.id = QStringLiteral("key"),
         .word = BalanceText::tr("on its key only"),
         .line = BalanceText::tr("tare before each shot")},
        {.id = QStringLiteral("back"),
         .word = BalanceText::tr("leave it"),
         .role = Role::Quiet,
         .mark = Mark::Back}};
    asker.choose(BalanceText::tr("How does it tell that a weight is still?"), choices,
                 [&asker, desk, done](const QString& id, const AnswerTap&) {
                     if (id == QLatin1String("still"))
                         return askMark(asker, desk, done, Stillness::StillMark);
                     if (id == QLatin1String("moving"))
                         return askMark(asker, desk, done, Stillness::MovingMark);
                     BalanceChoice next = desk.now();
                     if (id != QLatin1String("back"))
                         next.format = {.unit = next.format.unit,
                                        .stillness = id == QLatin1String("key")
                                                         ? Stillness::EachLine
                                                         : Stillness::ThreeAlike};
                     set(desk, next);
                     askBalance(asker, desk, done);
                 });
}

QString titleOf(const BalanceDesk& desk)
{
    const auto last = desk.source.lastLine();
    if (!desk.isSet())
        return BalanceText::tr("The balance that weighs the shots");
    return last ? BalanceText::tr("The balance sent “%1”").arg(fromCore(*last))
                : BalanceText::tr("The balance has sent nothing yet");
}

QList<Choice> partsOf(const BalanceDesk& desk)
{
    const BalanceChoice& now = desk.now();
    const QString why = desk.isSet() ? QString() : BalanceText::tr("Choose a port first.");
    return {{.id = QStringLiteral("port"),
             .word = BalanceText::tr("port …"),
             .line = balanceLine(desk)},
            {.id = QStringLiteral("speed"),
             .word = BalanceText::tr("speed …"),
             .line = BalanceText::tr("%1 baud").arg(now.baud),
             .reason = why},
            {.id = QStringLiteral("unit"),
             .word = BalanceText::tr("unit …"),
             .line = BalanceText::tr("the line's own, else %1")
                         .arg(fromCore(std::string(nameOf(now.format.unit)))),
             .reason = why},
            {.id = QStringLiteral("still"),
             .word = BalanceText::tr("still …", "how a balance tells it"),
             .line = stillText(now.format),
             .reason = why},
            {.id = QStringLiteral("done"),
             .word = BalanceText::tr("done"),
             .role = Role::Quiet,
             .mark = Mark::Back}};
}

}  // namespace

QString balanceLine(const BalanceDesk& desk)
{
    return desk.isSet() ? portName(desk.now().port) : BalanceText::tr("none", "a balance");
}

QString faultText(WeightFault fault)
{
    switch (fault) {
        case WeightFault::Empty:
        case WeightFault::Unreadable:
            return BalanceText::tr(
                "The balance sent no weight. Check its speed and unit, or type the weight.");
        case WeightFault::OtherUnit:
            return BalanceText::tr("The balance weighs in another unit. Set it to g or mg.");
        case WeightFault::Overload:
            return BalanceText::tr(
                "The balance is overloaded, or its pan is off. Clear it and tare.");
    }
    Q_UNREACHABLE();
}

void askBalance(Asker& asker, const BalanceDesk& desk, const Done& done)
{
    asker.choose(titleOf(desk), partsOf(desk),
                 [&asker, desk, done](const QString& id, const AnswerTap&) {
                     if (id == QLatin1String("port"))
                         return askPort(asker, desk, done);
                     if (id == QLatin1String("done"))
                         return done();
                     if (!desk.isSet())
                         return;
                     if (id == QLatin1String("speed"))
                         return askBaud(asker, desk, done);
                     if (id == QLatin1String("unit"))
                         return askUnit(asker, desk, done);
                     askStill(asker, desk, done);
                 });
}

}  // namespace bathside::ui
