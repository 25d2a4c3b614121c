#include "ui/checks/vessel_view.h"

#include <QCoreApplication>
#include <iterator>
#include <utility>

#include "ui/checks/check_words.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct VesselViewText {
    Q_DECLARE_TR_FUNCTIONS(VesselText)
};

constexpr int kLongestName = 12;

}  // namespace

VesselView::VesselView(CheckContext& context) : CheckView(context)
{
    if (auto draft = vesselDraftFrom(context.drafts.kept(kVesselDraft))) {
        m_draft = std::move(*draft);
        m_vessel = m_draft.vessel;
    }
}

VesselId VesselView::vesselNow() const
{
    const auto& vessels = bench().vessels;
    return m_vessel.empty() && vessels.size() == 1 ? vessels.begin()->first : m_vessel;
}

const VesselLog* VesselView::log() const
{
    const auto found = bench().vessels.find(vesselNow());
    return found == bench().vessels.end() || !found->second.vessel ? nullptr : &found->second;
}

CheckSheet VesselView::sheet() const
{
    const VesselLog* known = log();
    return sheetOf(known ? *known : VesselLog{}, context().bench.zoneNow());
}

QList<CheckAction> VesselView::actions()
{
    const QString name = idText(vesselNow());
    const bool isKnown = log() != nullptr;
    const bool isUnfinished = m_draft.isBegun() && m_draft.vessel == vesselNow();
    return {
        {.place = QStringLiteral("checks.which"),
         .word = name.isEmpty() ? VesselViewText::tr("vessel …")
                                : VesselViewText::tr("vessel %1").arg(name),
         .line = VesselViewText::tr("another …", "vessel"),
         .role = name.isEmpty() ? Role::Primary : Role::Neutral,
         .press = [this](const AnswerTap&) { askWhich(0); }},
        {.place = QStringLiteral("checks.dip"),
         .word = VesselViewText::tr("level …"),
         .line = VesselViewText::tr("by the dipstick"),
         .role = isKnown ? Role::Primary : Role::Neutral,
         .reason = isKnown ? QString() : VesselViewText::tr("Describe it first."),
         .press = [this](const AnswerTap&) { askDip(); }},
        {.place = QStringLiteral("checks.describe"),
         .word = isKnown ? VesselViewText::tr("describe anew …") : VesselViewText::tr("describe …"),
         .line = isUnfinished ? VesselViewText::tr("unfinished: goes on") : QString(),
         .reason = name.isEmpty() ? VesselViewText::tr("Choose a vessel first.") : QString(),
         .press = [this](const AnswerTap&) { describe(); }},
        {.place = QStringLiteral("checks.save"),
         .word = VesselViewText::tr("save", "a picture of the chart"),
         .reason = isKnown ? QString() : VesselViewText::tr("Describe it first."),
         .press = [this](const AnswerTap&) { context().save(); }}};
}

/// So many at a time as have room; the last choice but one brings the next ones.
void VesselView::askWhich(std::size_t from)
{
    constexpr std::size_t kAtATime = 6;
    const auto& vessels = bench().vessels;
    const auto first = std::next(vessels.begin(), static_cast<std::ptrdiff_t>(from));
    QList<Choice> choices;
    for (auto each = first; each != vessels.end() && std::cmp_less(choices.size(), kAtATime);
         ++each)
        choices.append({.id = QStringLiteral("vessel:") + idText(each->first),
                        .word = VesselViewText::tr("vessel %1").arg(idText(each->first))});
    if (vessels.size() > kAtATime)
        choices.append({.id = QStringLiteral("more"),
                        .word = VesselViewText::tr("more …", "vessels"),
                        .mark = Mark::Arrow});
    choices.append(
        {.id = QStringLiteral("new"), .word = VesselViewText::tr("a new one …", "vessel")});
    const std::size_t next = from + kAtATime < vessels.size() ? from + kAtATime : 0;
    choose(VesselViewText::tr("Which vessel?"), choices,
           [this, next](const QString& id, const AnswerTap&) {
               if (id == QLatin1String("more"))
                   return askWhich(next);
               if (id == QLatin1String("new"))
                   return askNew();
               m_vessel = {id.mid(7).toStdString()};
               done();
           });
}

void VesselView::askNew()
{
    context().bench.asker.text(
        {.title = VesselViewText::tr("What is the vessel called?"), .longest = kLongestName},
        [this](const QString& name, const AnswerTap&) {
            m_vessel = {name.trimmed().toStdString()};
            done();
        });
}

void VesselView::describe()
{
    if (vesselNow().empty())
        return;
    if (m_draft.vessel != vesselNow()) {
        m_draft = {};
        m_draft.vessel = vesselNow();
    }
    askVessel(context(), m_draft);
}

void VesselView::askDip()
{
    if (!log())
        return;
    ask({.title = VesselViewText::tr("What does the dipstick show?"),
         .unit = QStringLiteral("mm"),
         .lowest = 0,
         .highest = 5'000},
        [this](qint64 millimetres, const AnswerTap&) { askFilled(millimetres); });
}

void VesselView::askFilled(std::int64_t millimetres)
{
    const VesselId vessel = vesselNow();
    const QList<Choice> choices{
        {.id = QStringLiteral("not-filled"), .word = VesselViewText::tr("not filled since")},
        {.id = QStringLiteral("filled"), .word = VesselViewText::tr("filled since")}};
    choose(
        VesselViewText::tr("%1 mm. Was it filled since the reading before?").arg(millimetres),
        choices, [this, vessel, millimetres](const QString& id, const AnswerTap& tap) {
            context().bench.say(DipVessel{vessel, millimetres, id == QLatin1String("filled")}, tap);
        });
}

}  // namespace bathside::ui
