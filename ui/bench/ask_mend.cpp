#include "ui/bench/ask_mend.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QTimeZone>

#include "core/base/rfc3339.h"
#include "ui/models/recent.h"
#include "ui/text/short_facts.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

struct MendText {
    Q_DECLARE_TR_FUNCTIONS(MendText)
};

using Reason = std::function<void(const std::string& why, const AnswerTap&)>;
using Value = std::function<void(const std::string& value)>;

/// The ids are the trail's words.
QList<Choice> reasons()
{
    return {{.id = QStringLiteral("wrong button"), .word = MendText::tr("wrong button")},
            {.id = QStringLiteral("tapped late"), .word = MendText::tr("tapped late")},
            {.id = QStringLiteral("did not happen"), .word = MendText::tr("did not happen")},
            {.id = QStringLiteral("misread"), .word = MendText::tr("misread")},
            {.id = QStringLiteral("other"), .word = MendText::tr("other …")}};
}

void askReason(BenchContext& context, const QString& title, Reason reason)
{
    context.asker.choose(
        title, reasons(), [&context, title, reason](const QString& id, const AnswerTap& tap) {
            if (id != QLatin1String("other"))
                return reason(id.toStdString(), tap);
            context.asker.text({.title = title,
                                .shortest = 2,
                                .longest = 60,
                                .suggested = {},
                                .signs = TextQuestion::Signs::Any},
                               [reason](const QString& text, const AnswerTap& typed) {
                                   reason(text.toStdString(), typed);
                               });
        });
}

// --- what can be corrected, and how its true value is asked
// ---------------------------------------------------

struct Field {
    const char* name;  // as Correct has it
    void (*ask)(BenchContext&, const Said&, Value);
};

QString wordOfField(const QString& name)
{
    if (name == QLatin1String("at"))
        return MendText::tr("its time");
    if (name == QLatin1String("ampoule"))
        return MendText::tr("which ampoule");
    if (name == QLatin1String("component"))
        return MendText::tr("which component");
    if (name == QLatin1String("lot"))
        return MendText::tr("which lot");
    if (name == QLatin1String("bag"))
        return MendText::tr("which bag");
    if (name == QLatin1String("line"))
        return MendText::tr("which line");
    if (name == QLatin1String("count"))
        return MendText::tr("how many birds");
    if (name == QLatin1String("broken"))
        return MendText::tr("broken or not");
    if (name == QLatin1String("volume_ml"))
        return MendText::tr("its volume");
    if (name == QLatin1String("left_ml"))
        return MendText::tr("how much was left");
    return MendText::tr("its temperature");
}

void askTime(BenchContext& context, const Said& said, Value answered)
{
    constexpr qint64 kLast = 235'959;
    const QTimeZone zone(QByteArray::fromStdString(context.zoneNow()));
    const QDateTime then =
        QDateTime::fromMSecsSinceEpoch(said.at.wall.time_since_epoch().count(), zone);
    const NumberQuestion question{
        .title = MendText::tr("When was it? Hours, minutes, seconds, as 094107"),
        .unit = {},
        .lowest = 0,
        .highest = kLast,
        .decimals = 0,
        .typedDecimals = 0,
        .suggested = {}};
    context.asker.number(
        question, [&context, zone, then, answered](qint64 typed, const AnswerTap&) {
            const QTime time(static_cast<int>(typed / 10'000), static_cast<int>(typed / 100 % 100),
                             static_cast<int>(typed % 100));
            if (!time.isValid())
                return context.model.refuse({RefusalCode::BadValue, {}, "HHMMSS"});
            const QDateTime at(then.date(), time, zone);
            answered(toRfc3339(WallTime{Millis{at.toMSecsSinceEpoch()}}));
        });
}

void askTyped(BenchContext& context, const QString& title, Value answered)
{
    context.asker.text(
        {.title = title, .shortest = 1, .longest = 20, .suggested = {}},
        [answered](const QString& text, const AnswerTap&) { answered(text.toStdString()); });
}

void askOneOf(BenchContext& context, const QString& title, const std::vector<std::string>& values,
              Value answered)
{
    QList<Choice> choices;
    for (const std::string& value : values)
        choices.append({.id = QStringLiteral("value:") + fromCore(value), .word = fromCore(value)});
    context.asker.choose(title, choices, [answered](const QString& id, const AnswerTap&) {
        answered(id.mid(6).toStdString());
    });
}

void askAmpouleNo(BenchContext& context, const Said&, Value answered)
{
    std::vector<std::string> numbers;
    if (!context.bench().pulls.empty()) {
        for (const Ampoule& ampoule : context.bench().pulls.back().ampoules)
            numbers.push_back(std::to_string(ampoule.ref.no));
    }
    askOneOf(context, MendText::tr("Which ampoule was it?"), numbers, std::move(answered));
}

void askBagName(BenchContext& context, const Said& said, Value answered)
{
    if (std::holds_alternative<BagStarted>(said.facts.front()))
        return askTyped(context, MendText::tr("What is the bag called?"), std::move(answered));
    std::vector<std::string> bags;
    for (const Bag& bag : context.bench().bags)
        bags.push_back(bag.id.text);
    askOneOf(context, MendText::tr("Which bag was it?"), bags, std::move(answered));
}

void askComponent(BenchContext& context, const Said&, Value answered)
{
    std::vector<std::string> parts;
    for (const Component& component : context.bench().card->content().recipe)
        parts.push_back(component.id.text);
    askOneOf(context, MendText::tr("Which component was it?"), parts, std::move(answered));
}

void askLotText(BenchContext& context, const Said&, Value answered)
{
    askTyped(context, MendText::tr("Which lot was it?"), std::move(answered));
}

void askLineName(BenchContext& context, const Said&, Value answered)
{
    std::vector<std::string> lines;
    for (const auto& [id, line] : context.bench().lines)
        lines.push_back(id.text);
    askOneOf(context, MendText::tr("Which line was it?"), lines, std::move(answered));
}

void askBroken(BenchContext& context, const Said& said, Value answered)
{
    const bool wasBroken = std::ranges::any_of(said.facts, [](const Fact& fact) {
        const auto* lost = std::get_if<AmpouleLost>(&fact);
        return lost && lost->why == LossReason::Broken;
    });
    const QList<Choice> choices{
        {.id = wasBroken ? QStringLiteral("false") : QStringLiteral("true"),
         .word = wasBroken ? MendText::tr("it did not break") : MendText::tr("it broke")}};
    context.asker.choose(
        MendText::tr("Broken or not?"), choices,
        [answered](const QString& id, const AnswerTap&) { answered(id.toStdString()); });
}

/// A number as the correction's text wants it: a point, and no more decimals than it has.
std::string plainText(qint64 value, int decimals)
{
    QString text = QString::number(value);
    if (decimals == 0)
        return text.toStdString();
    text = text.rightJustified(decimals + 1, u'0');
    text.insert(text.size() - decimals, u'.');
    while (text.endsWith(u'0'))
        text.chop(1);
    if (text.endsWith(u'.'))
        text.chop(1);
    return text.toStdString();
}

void askNumber(BenchContext& context, const QString& title, const QString& unit, int decimals,
               Value answered)
{
    constexpr qint64 kMost = 10'000'000;
    const NumberQuestion question{.title = title,
                                  .unit = unit,
                                  .lowest = 0,
                                  .highest = kMost,
                                  .decimals = decimals,
                                  .typedDecimals = decimals > 0 ? 2 : 0,
                                  .suggested = {}};
    context.asker.number(question, [decimals, answered](qint64 value, const AnswerTap&) {
        answered(plainText(value, decimals));
    });
}

void askCount(BenchContext& context, const Said&, Value answered)
{
    askNumber(context, MendText::tr("How many birds was it, in all?"), MendText::tr("birds"), 0,
              std::move(answered));
}

void askMillilitres(BenchContext& context, const Said&, Value answered)
{
    askNumber(context, MendText::tr("How much was it?"), QStringLiteral("mL"), 3,
              std::move(answered));
}

void askDegrees(BenchContext& context, const Said&, Value answered)
{
    askNumber(context, MendText::tr("How warm was it?"), QStringLiteral("°C"), 3,
              std::move(answered));
}

constexpr Field kFields[] = {{"at", askTime},
                             {"ampoule", askAmpouleNo},
                             {"component", askComponent},
                             {"lot", askLotText},
                             {"bag", askBagName},
                             {"line", askLineName},
                             {"count", askCount},
                             {"broken", askBroken},
                             {"volume_ml", askMillilitres},
                             {"left_ml", askMillilitres},
                             {"temperature_c", askDegrees}};

/// Those that this fact has, by the rule that will judge the correction.
bool hasField(const BenchContext& context, const Said& said, const char* field)
{
    const auto refusal = context.model.refusal(Correct{said.seqs, field, "?", "?"});
    return !refusal || refusal->code != RefusalCode::NoSuchField;
}

void askField(BenchContext& context, const Said& said)
{
    QList<Choice> choices;
    for (const Field& field : kFields) {
        const QString name = QString::fromLatin1(field.name);
        if (hasField(context, said, field.name))
            choices.append({.id = name, .word = wordOfField(name)});
    }
    const QString title = shortText(said.facts);
    context.asker.choose(
        title, choices, [&context, said, title](const QString& id, const AnswerTap&) {
            for (const Field& field : kFields) {
                if (id != QLatin1String(field.name))
                    continue;
                field.ask(context, said, [&context, said, id, title](const std::string& value) {
                    askReason(
                        context, MendText::tr("Corrected: why?"),
                        [&context, said, id, value](const std::string& why, const AnswerTap& tap) {
                            context.say(Correct{said.seqs, id.toStdString(), value, why}, tap);
                        });
                });
                return;
            }
        });
}

}  // namespace

void takeBack(BenchContext& context, const AnswerTap& tap)
{
    const auto refusal = context.model.refusal(TakeBack{});
    if (!refusal || refusal->code != RefusalCode::ReasonMissing)
        return context.say(TakeBack{}, tap);
    askReason(context, MendText::tr("Taken back: why?"),
              [&context](const std::string& why, const AnswerTap& reason) {
                  context.say(TakeBack{why}, reason);
              });
}

void askCorrection(BenchContext& context)
{
    constexpr std::size_t kMost = 12;
    const auto all = lastSaid(context.model.state(), context.model.record().recorded, kMost);
    QList<Choice> choices;
    for (const Said& said : all)
        choices.append({.id = QStringLiteral("said:%1").arg(said.seqs.front()),
                        .word = shortText(said.facts),
                        .line = localTimeText(said.at.wall, context.zoneNow())});
    context.asker.choose(MendText::tr("What is not right?"), choices,
                         [&context, all](const QString& id, const AnswerTap&) {
                             for (const Said& said : all) {
                                 if (id == QStringLiteral("said:%1").arg(said.seqs.front()))
                                     return askField(context, said);
                             }
                         });
}

}  // namespace bathside::ui
