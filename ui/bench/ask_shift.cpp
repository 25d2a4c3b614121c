#include "ui/bench/ask_shift.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QTimeZone>

#include "core/bench/next.h"
#include "ui/text/questions.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

struct ShiftText {
    Q_DECLARE_TR_FUNCTIONS(ShiftText)
};

constexpr int kLongestInitials = 4;
constexpr auto kLater = "later";
constexpr qint64 kLongestCane = 3600;  // s

using Person = std::function<void(const PersonId&, const AnswerTap&)>;

/// By one tap on a name; no PIN stands between a person and a frozen ampoule.
void askName(BenchContext& context, const QString& title, Person answered)
{
    const People& people = context.bench().people;
    QList<Choice> choices;
    for (const auto& [id, member] : people.members) {
        if (may(people, id, Act::WorkAtBench))
            choices.append({.id = QStringLiteral("person:") + idText(id),
                            .word = idText(id),
                            .line = fromCore(member.name)});
    }
    context.asker.choose(title, choices,
                         [answered = std::move(answered)](const QString& id, const AnswerTap& tap) {
                             answered({id.mid(7).toStdString()}, tap);
                         });
}

void askInitials(BenchContext& context, const QString& title, Person answered)
{
    if (context.bench().people.areListed())
        return askName(context, title, std::move(answered));
    context.asker.text(
        {.title = title, .shortest = 1, .longest = kLongestInitials, .suggested = {}},
        [answered = std::move(answered)](const QString& text, const AnswerTap& tap) {
            answered({text.toStdString()}, tap);
        });
}

void askReadingOf(BenchContext& context, const ProbeId& probe, const QString& name)
{
    constexpr qint64 kLowest = -20'000, kHighest = 110'000;  // m°C: what a thermometer can show
    const NumberQuestion question{
        .title = ShiftText::tr("Bath: what does the thermometer show?") + name,
        .unit = QStringLiteral("°C"),
        .lowest = kLowest,
        .highest = kHighest,
        .decimals = 3,
        .typedDecimals = 2,
        .suggested = {}};
    context.asker.number(question, [&context, probe](qint64 value, const AnswerTap& tap) {
        context.say(TakeReading{probe, MilliCelsius{value}}, tap);
    });
}

void askTimeOfNextPull(BenchContext& context)
{
    constexpr qint64 kLastMinute = 2359;
    const NumberQuestion question{
        .title = ShiftText::tr("Next pull at: hours and minutes, as 0915"),
        .unit = {},
        .lowest = 0,
        .highest = kLastMinute,
        .decimals = 0,
        .typedDecimals = 0,
        .suggested = {}};
    context.asker.number(question, [&context](qint64 value, const AnswerTap& tap) {
        if (const auto at = nextAt(context.model.now().wall, value, context.zoneNow()))
            context.say(PlanPull{*at}, tap);
        else
            context.model.refuse({RefusalCode::BadValue, {}, "HHMM"});
    });
}

}  // namespace

void askWhoOpens(BenchContext& context)
{
    askInitials(context,
                context.bench().people.areListed() ? ShiftText::tr("Who is on duty?")
                                                   : ShiftText::tr("Who is on duty? Initials"),
                [&context](const PersonId& person, const AnswerTap& tap) {
                    context.say(OpenShift{context.zone, person,
                                          localDay(context.model.now().wall, context.zone)},
                                tap);
                });
}

void askDuty(BenchContext& context)
{
    askInitials(context,
                context.bench().people.areListed() ? ShiftText::tr("Who takes over?")
                                                   : ShiftText::tr("Who takes over? Initials"),
                [&context](const PersonId& person, const AnswerTap& tap) {
                    context.say(TakeDuty{person}, tap);
                });
}

void askReading(BenchContext& context)
{
    QList<Choice> choices;
    for (const auto& [id, probe] : context.bench().probes) {
        if (!std::holds_alternative<OutOfUse>(probe->source))
            choices.append({.id = QStringLiteral("probe:") + idText(id),
                            .word = fromCore(probe->name),
                            .line = idText(id)});
    }
    if (choices.isEmpty())
        return askReadingOf(context, {"hand"}, {});
    if (choices.size() == 1)
        return askReadingOf(context, {choices.front().id.mid(6).toStdString()}, {});
    context.asker.choose(ShiftText::tr("Which thermometer?"), choices,
                         [&context](const QString& id, const AnswerTap&) {
                             const QString name = id.mid(6);
                             askReadingOf(context, {name.toStdString()},
                                          QStringLiteral(" (%1)").arg(name));
                         });
}

std::optional<WallTime> nextAt(WallTime now, qint64 hhmm, const std::string& zone)
{
    const QTime time(static_cast<int>(hhmm / 100), static_cast<int>(hhmm % 100));
    const QTimeZone there(QByteArray::fromStdString(zone));
    if (!time.isValid() || !there.isValid())
        return std::nullopt;
    const qint64 nowMs = now.time_since_epoch().count();
    const QDateTime local = QDateTime::fromMSecsSinceEpoch(nowMs, there);
    QDateTime next(local.date(), time, there);
    if (next.toMSecsSinceEpoch() < nowMs)
        next = QDateTime(local.date().addDays(1), time, there);
    return WallTime{Millis{next.toMSecsSinceEpoch()}};
}

void askNextPull(BenchContext& context)
{
    QList<Choice> choices;
    for (const int minutes : {5, 10, 15, 20, 30, 45, 60})
        choices.append({.id = QString::number(minutes),
                        .word = ShiftText::tr("in %n minute(s)", nullptr, minutes)});
    choices.append({.id = QStringLiteral("at"), .word = ShiftText::tr("at …")});
    context.asker.choose(ShiftText::tr("When is the next pull?"), choices,
                         [&context](const QString& id, const AnswerTap& tap) {
                             if (id == QLatin1String("at"))
                                 return askTimeOfNextPull(context);
                             const std::chrono::minutes wait{id.toInt()};
                             context.say(PlanPull{context.model.now().wall + wait}, tap);
                         });
}

void askNote(BenchContext& context)
{
    constexpr int kLongest = 80;
    context.asker.text({.title = ShiftText::tr("Note for the record"),
                        .shortest = 1,
                        .longest = kLongest,
                        .suggested = {},
                        .signs = TextQuestion::Signs::Any},
                       [&context](const QString& text, const AnswerTap& tap) {
                           context.say(MakeNote{text.toStdString()}, tap);
                       });
}

void askCane(BenchContext& context)
{
    context.asker.text(
        {.title = ShiftText::tr("Cane out too long: canister and cane"),
         .shortest = 1,
         .longest = 12,
         .suggested = {}},
        [&context](const QString& place, const AnswerTap&) {
            const NumberQuestion question{.title = ShiftText::tr("How long was it out?"),
                                          .unit = QStringLiteral("s"),
                                          .lowest = 1,
                                          .highest = kLongestCane,
                                          .decimals = 0,
                                          .typedDecimals = 0,
                                          .suggested = {}};
            context.asker.number(question, [&context, place](qint64 seconds, const AnswerTap& tap) {
                context.say(ExposeCane{place.toStdString(), std::chrono::seconds(seconds)}, tap);
            });
        });
}

void askWaterChanged(BenchContext& context)
{
    const QList<Choice> choices{
        {.id = QStringLiteral("an ampoule burst"), .word = ShiftText::tr("an ampoule burst")},
        {.id = QStringLiteral("dirty"), .word = ShiftText::tr("dirty")},
        {.id = QStringLiteral("fresh water"), .word = ShiftText::tr("fresh water")},
        {.id = QStringLiteral("other"), .word = ShiftText::tr("other")}};
    context.asker.choose(ShiftText::tr("Bath water changed: why?"), choices,
                         [&context](const QString& id, const AnswerTap& tap) {
                             context.say(ChangeWater{id.toStdString()}, tap);
                         });
}

void askCloseShift(BenchContext& context)
{
    const QList<Choice> choices{{.id = QStringLiteral("close"),
                                 .word = ShiftText::tr("SHIFT CLOSED"),
                                 .line = ShiftText::tr("every bag is down"),
                                 .role = Role::Primary}};
    context.asker.choose(
        ShiftText::tr("End of the shift"), choices,
        [&context](const QString&, const AnswerTap& tap) { context.say(CloseShift{}, tap); });
}

void askQuestion(BenchContext& context)
{
    const auto open = questions(context.model.state());
    if (open.empty())
        return context.asker.close();
    const Question& question = open.front();
    QList<Choice> choices;
    for (const std::string& choice : question.choices)
        choices.append({.id = fromCore(choice), .word = choiceText(question.kind, choice)});
    choices.append(
        {.id = QString::fromLatin1(kLater), .word = ShiftText::tr("later"), .role = Role::Quiet});
    context.asker.choose(
        questionText(question), choices,
        [&context, id = question.id](const QString& choice, const AnswerTap& tap) {
            if (choice == QLatin1String(kLater))
                return context.later();
            if (context.model.say(Answer{id, choice.toStdString()}, tap.inputMs, tap.place))
                askQuestion(context);
        });
}

}  // namespace bathside::ui
