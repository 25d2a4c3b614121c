#include "ui/setup/ask_live_cells.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "core/day/bag_cells.h"
#include "ui/charts/chart.h"
#include "ui/text/numbers.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct LiveCellsText {
    Q_DECLARE_TR_FUNCTIONS(LiveCellsText)
};

constexpr std::size_t kMostLots = 4;  // as many as there is room for

/// Whether bags show them, and why not.
QString standText(const std::optional<CellsGap>& gap)
{
    const QString shown =
        LiveCellsText::tr("Each mixed bag shows its live cells, indicative: the label decides.");
    if (!gap)
        return shown;
    switch (*gap) {
        case CellsGap::Off:
            return LiveCellsText::tr("Off on this card: no bag shows live cells.");
        case CellsGap::NoMinimum:
            return LiveCellsText::tr(
                "No bag shows live cells: the card has no minimum for a dose.");
        case CellsGap::NoBathLoss:
            return LiveCellsText::tr(
                "No bag shows live cells: the card has no loss in the bath with its source.");
        case CellsGap::NoBagLoss:
            return LiveCellsText::tr(
                "No bag shows live cells: the card has no loss in the bag with its source.");
        case CellsGap::NotMixed:
        case CellsGap::NoTimes:
            return shown;  // of one bag only
        case CellsGap::NoTitre:
            return LiveCellsText::tr(
                "Bags of a lot without its certificate's titre show no live cells.");
    }
    Q_UNREACHABLE();
}

std::vector<LotId> lotsWithoutTitre(const Stores& stores)
{
    std::vector<LotId> lots;
    for (const auto& [of, lot] : stores.lots) {
        if (of.kind == StockKind::Ampoule && !lot.titre && lot.balance() > 0)
            lots.push_back(of.lot);
    }
    return lots;
}

std::optional<CellsGap> gapIn(const Bench& bench)
{
    if (const auto gap = gapOn(bench.card->content().liveCells))
        return gap;
    return lotsWithoutTitre(bench.stores).empty() ? std::nullopt : std::optional(CellsGap::NoTitre);
}

QString hoursText(Millis time)
{
    const double hours = std::chrono::duration<double, std::ratio<3600>>(time).count();
    return QLocale().toString(hours, 'g', 3);
}

/// A part of the card: what it is worth, else that it is missing.
Choice part(const char* id, const QString& word, const QString& line)
{
    return {.id = QString::fromLatin1(id),
            .word = word,
            .line = line,
            .reason = line.isEmpty() ? LiveCellsText::tr("not on the card") : QString()};
}

Choice lossPart(const char* id, const QString& word, const std::optional<CellLoss>& loss)
{
    return part(id, word,
                loss ? LiveCellsText::tr("half in %1 to %2 h", "half-life, from to")
                           .arg(hoursText(loss->shortest), hoursText(loss->longest))
                     : QString());
}

QString sourceOf(const LiveCellRules& rules, const QString& part)
{
    if (part == QLatin1String("minimum"))
        return fromCore(rules.minimumSource);
    if (part == QLatin1String("bath") && rules.inBath)
        return fromCore(rules.inBath->source);
    return part == QLatin1String("bag") && rules.inBag ? fromCore(rules.inBag->source) : QString();
}

QList<Choice> partsOf(const Bench& bench)
{
    const LiveCellRules& rules = bench.card->content().liveCells;
    QList<Choice> parts{
        part("minimum", LiveCellsText::tr("minimum"),
             rules.minimum
                 ? LiveCellsText::tr("%1 PFU a dose").arg(countText(*rules.minimum, QLocale()))
                 : QString()),
        lossPart("bath", LiveCellsText::tr("loss in the bath"), rules.inBath),
        lossPart("bag", LiveCellsText::tr("loss in the bag"), rules.inBag)};
    const auto lots = lotsWithoutTitre(bench.stores);
    for (std::size_t i = 0; i < std::min(lots.size(), kMostLots); ++i)
        parts.append({.id = QStringLiteral("lot:") + idText(lots[i]),
                      .word = LiveCellsText::tr("lot %1").arg(idText(lots[i])),
                      .reason = LiveCellsText::tr("no titre in the stores")});
    parts.append({.id = QStringLiteral("back"),
                  .word = LiveCellsText::tr("back"),
                  .role = Role::Quiet,
                  .mark = Mark::Back});
    return parts;
}

}  // namespace

QString liveCellsLine(const Bench& bench)
{
    const auto gap = gapIn(bench);
    if (!gap)
        return LiveCellsText::tr("on, indicative", "live cells");
    return gap == CellsGap::Off ? LiveCellsText::tr("off", "live cells")
                                : LiveCellsText::tr("something is missing", "live cells");
}

void askLiveCells(BenchContext& context, const std::function<void()>& back)
{
    context.asker.choose(
        standText(gapIn(context.bench())), partsOf(context.bench()),
        [&context, back](const QString& id, const AnswerTap&) {
            if (id == QLatin1String("back"))
                return back();
            const QString source = sourceOf(context.bench().card->content().liveCells, id);
            if (source.isEmpty())
                return;
            context.asker.look(LiveCellsText::tr("Source on the card: %1").arg(source), {},
                               [&context, back](const AnswerTap&) { askLiveCells(context, back); });
        });
}

}  // namespace bathside::ui
