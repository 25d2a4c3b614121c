#include "ui/checks/ask_vessel.h"

#include <QCoreApplication>
#include <QLocale>

#include "ui/text/numbers.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct VesselAsk {
    Q_DECLARE_TR_FUNCTIONS(VesselAsk)
};

constexpr qint64 kMostMillimetres = 5'000, kMostDecilitres = 100'000;

QString rowText(const VesselDescription::Row& row)
{
    return QStringLiteral("%1 mm: %2 L")
        .arg(QLocale().toString(static_cast<qlonglong>(row.millimetres)),
             scaledText(row.decilitres, 1, 1, QLocale()));
}

void askMillimetres(CheckContext& context, VesselDraft& draft)
{
    const NumberQuestion question{
        .title = VesselAsk::tr("Row %1 of the table: what does the dipstick show?")
                     .arg(draft.rows.size() + 1),
        .unit = QStringLiteral("mm"),
        .lowest = draft.rows.empty() ? 0 : draft.rows.back().millimetres + 1,
        .highest = kMostMillimetres};
    context.bench.asker.number(question, [&context, &draft](qint64 value, const AnswerTap&) {
        draft.millimetres = value;
        askVessel(context, draft);
    });
}

void askLitres(CheckContext& context, VesselDraft& draft)
{
    const NumberQuestion question{
        .title = VesselAsk::tr("How much is in it at %1 mm?").arg(*draft.millimetres),
        .unit = QStringLiteral("L"),
        .lowest = draft.rows.empty() ? 0 : draft.rows.back().decilitres + 1,
        .highest = kMostDecilitres,
        .decimals = 1,
        .typedDecimals = 1};
    context.bench.asker.number(question, [&context, &draft](qint64 value, const AnswerTap&) {
        draft.rows.push_back({*draft.millimetres, value});
        draft.millimetres.reset();
        askVessel(context, draft);
    });
}

void askForMoreRows(CheckContext& context, VesselDraft& draft)
{
    const QList<Choice> choices{
        {.id = QStringLiteral("row"), .word = VesselAsk::tr("another row …")},
        {.id = QStringLiteral("table"), .word = VesselAsk::tr("that is the table")},
        {.id = QStringLiteral("last"),
         .word = VesselAsk::tr("last row out"),
         .line = rowText(draft.rows.back())},
        {.id = QStringLiteral("back"),
         .word = VesselAsk::tr("later", "goes on with it later"),
         .role = Role::Quiet,
         .mark = Mark::Back}};
    const QString title = VesselAsk::tr("%n row(s), from %1 to %2", "of a dipstick's table",
                                        static_cast<int>(draft.rows.size()))
                              .arg(rowText(draft.rows.front()), rowText(draft.rows.back()));
    context.bench.asker.choose(title, choices,
                               [&context, &draft](const QString& id, const AnswerTap&) {
                                   if (id == QLatin1String("back"))
                                       return context.bench.asker.close();
                                   if (id == QLatin1String("last"))
                                       draft.rows.pop_back();
                                   draft.isTable = id == QLatin1String("table");
                                   if (id == QLatin1String("row"))
                                       return askMillimetres(context, draft);
                                   askVessel(context, draft);
                               });
}

void askMinimum(CheckContext& context, VesselDraft& draft)
{
    const NumberQuestion question{.title = VesselAsk::tr("Which level must it never fall below?"),
                                  .unit = QStringLiteral("L"),
                                  .lowest = draft.rows.front().decilitres,  // no reading is below
                                  .highest = draft.rows.back().decilitres - 1,
                                  .decimals = 1,
                                  .typedDecimals = 1};
    context.bench.asker.number(question, [&context, &draft](qint64 value, const AnswerTap&) {
        draft.minimum = value;
        askVessel(context, draft);
    });
}

void askUsual(CheckContext& context, VesselDraft& draft)
{
    const NumberQuestion question{
        .title = VesselAsk::tr("How much does it usually lose? See its papers."),
        .unit = VesselAsk::tr("L a day"),
        .lowest = 1'000,
        .highest = 1'000'000'000,
        .decimals = 6,
        .typedDecimals = 3};
    context.bench.asker.number(question, [&context, &draft](qint64 value, const AnswerTap&) {
        draft.usual = MicroLitres{value};
        askVessel(context, draft);
    });
}

void say(CheckContext& context, VesselDraft& draft, std::optional<VesselDescription::Room> room,
         const AnswerTap& tap)
{
    const VesselDescription vessel{.name = draft.vessel.text,
                                   .dipstick = draft.rows,
                                   .minimumDecilitres = *draft.minimum,
                                   .usualPerDay = *draft.usual,
                                   .room = room};
    if (!context.bench.model.say(DescribeVessel{draft.vessel, documentOf(vessel)}, tap.inputMs,
                                 tap.place))
        return;
    draft = {};
    context.drafts.keep(kVesselDraft, {});
    context.bench.asker.close();
    context.changed();
}

void askAir(CheckContext& context, VesselDraft& draft)
{
    const NumberQuestion question{.title = VesselAsk::tr("How often an hour is its air changed?"),
                                  .unit = VesselAsk::tr("an hour"),
                                  .lowest = 0,
                                  .highest = 1'000,
                                  .decimals = 1,
                                  .typedDecimals = 1,
                                  .note = VesselAsk::tr("A closed room: 0.")};
    context.bench.asker.number(question, [&context, &draft](qint64 tenths, const AnswerTap& tap) {
        say(context, draft, VesselDescription::Room{*draft.cubicMetres, tenths}, tap);
    });
}

void askRoomSize(CheckContext& context, VesselDraft& draft)
{
    const NumberQuestion question{.title = VesselAsk::tr("How large is the room it stands in?"),
                                  .unit = QStringLiteral("m³"),
                                  .lowest = 1,
                                  .highest = 100'000};
    context.bench.asker.number(question, [&context, &draft](qint64 value, const AnswerTap&) {
        draft.cubicMetres = value;
        askAir(context, draft);
    });
}

void askWhetherRoom(CheckContext& context, VesselDraft& draft)
{
    const QList<Choice> choices{
        {.id = QStringLiteral("room"), .word = VesselAsk::tr("its room …")},
        {.id = QStringLiteral("no-room"), .word = VesselAsk::tr("without a room")},
        {.id = QStringLiteral("back"),
         .word = VesselAsk::tr("later", "goes on with it later"),
         .role = Role::Quiet,
         .mark = Mark::Back}};
    context.bench.asker.choose(
        VesselAsk::tr("Its room says how much oxygen is left if it all boils off."), choices,
        [&context, &draft](const QString& id, const AnswerTap& tap) {
            if (id == QLatin1String("back"))
                return context.bench.asker.close();
            if (id == QLatin1String("no-room"))
                return say(context, draft, {}, tap);
            askRoomSize(context, draft);
        });
}

}  // namespace

void askVessel(CheckContext& context, VesselDraft& draft)
{
    context.drafts.keep(kVesselDraft, documentOf(draft));
    if (draft.millimetres)
        return askLitres(context, draft);
    if (draft.rows.size() < 2)
        return askMillimetres(context, draft);
    if (!draft.isTable)
        return askForMoreRows(context, draft);
    if (!draft.minimum)
        return askMinimum(context, draft);
    if (!draft.usual)
        return askUsual(context, draft);
    askWhetherRoom(context, draft);
}

}  // namespace bathside::ui
