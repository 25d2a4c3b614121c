#include "ui/checks/birds_view.h"

#include <QCoreApplication>
#include <QLocale>

#include "ui/checks/check_words.h"
#include "ui/text/numbers.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

struct BirdsText {
    Q_DECLARE_TR_FUNCTIONS(BirdsText)
};

constexpr qint64 kMostLooked = 10'000;  // at once, as the bench takes them

}  // namespace

std::optional<Looked> BirdsView::shown() const
{
    if (m_looked)
        return m_looked;
    const Line* line = context().known();
    if (!line || !line->looked)
        return std::nullopt;
    return Looked{.good = static_cast<int>(line->looked->good),
                  .birds = static_cast<int>(line->looked->looked)};
}

CoverageLimits BirdsView::limits() const
{
    CoverageLimits limits = coverageLimitsOn(bench().card.get());
    if (!isHeldToCard())
        limits.targetPerMille = m_target.value_or(limits.targetPerMille);
    return limits;
}

// What is on record stands as it was judged, until another target is asked about.
CoverageLimits BirdsView::limitsShown() const
{
    CoverageLimits held = limits();
    const Line* line = context().known();
    if (m_looked || (m_target && !isHeldToCard()) || !line || !line->looked)
        return held;
    held.targetPerMille = line->looked->targetPerMille.value_or(held.targetPerMille);
    held.confidencePerMille = line->looked->confidencePerMille.value_or(held.confidencePerMille);
    return held;
}

bool BirdsView::isHeldToCard() const { return birdRulesOn(bench().card.get()) != nullptr; }

CheckSheet BirdsView::sheet() const
{
    const CoverageLimits held = limitsShown();
    const LimitsSaid said =
        limitsSaid(birdRulesOn(bench().card.get()), context().bench.language.cardCode());
    const auto looked = shown();
    if (!looked)
        return birdsToLookAt(held, said);
    CheckSheet sheet = sheetOf(CoverageCase{*looked, held.target(), held.confidence()}, said);
    if (!m_looked)
        sheet.fields.append({BirdsText::tr("on record"),
                             BirdsText::tr("%1, at %2", "a line, a time")
                                 .arg(context().lineName(),
                                      localMinuteText(context().known()->looked->moment.at.wall,
                                                      context().bench.zoneNow()))});
    return sheet;
}

QList<CheckAction> BirdsView::actions()
{
    const QString percent = figure(100 * limits().target(), 1, QStringLiteral("%"));
    return {
        lineAction(),
        {.place = QStringLiteral("checks.looked"),
         .word = BirdsText::tr("looked at …"),
         .line = m_looked ? BirdsText::tr("%1 of %2 good").arg(m_looked->good).arg(m_looked->birds)
                          : BirdsText::tr("birds"),
         .press = [this](const AnswerTap&) { askLooked(); }},
        {.place = QStringLiteral("checks.target"),
         .word = BirdsText::tr("target …"),
         .line = percent,
         .reason = isHeldToCard() ? BirdsText::tr("%1: limit of the card").arg(percent) : QString(),
         .press =
             [this](const AnswerTap&) {
                 if (!isHeldToCard())
                     askTarget();
             }},
        recordAction()};
}

CheckAction BirdsView::recordAction()
{
    QString why;
    if (!m_looked)
        why = BirdsText::tr("Look at birds first.");
    else if (context().lineNow().empty())
        why = BirdsText::tr("Choose a line first.");
    return {.place = QStringLiteral("checks.record"),
            .word = BirdsText::tr("RECORD"),
            .role = Role::Primary,
            .reason = why,
            .press = [this](const AnswerTap& tap) { record(tap); }};
}

void BirdsView::askLooked()
{
    ask({.title = BirdsText::tr("How many birds did you look at?"),
         .unit = BirdsText::tr("birds"),
         .lowest = 1,
         .highest = kMostLooked},
        [this](qint64 birds, const AnswerTap&) { askGood(static_cast<int>(birds)); });
}

void BirdsView::askGood(int birds)
{
    ask({.title = BirdsText::tr("How many of the %1 have it well?").arg(birds),
         .unit = BirdsText::tr("birds"),
         .lowest = 0,
         .highest = birds},
        [this, birds](qint64 good, const AnswerTap&) {
            m_looked = Looked{.good = static_cast<int>(good), .birds = birds};
            done();
        });
}

void BirdsView::askTarget()
{
    ask({.title = BirdsText::tr("How many in a hundred are to have it well?"),
         .unit = QStringLiteral("%"),
         .lowest = 500,
         .highest = 999,
         .decimals = 1,
         .typedDecimals = 1},
        [this](qint64 tenths, const AnswerTap&) {
            m_target = tenths;
            done();
        });
}

void BirdsView::record(const AnswerTap& tap)
{
    if (!m_looked)
        return;
    const LineId line = context().lineNow();
    const CheckBirds check{.line = line.empty() ? std::nullopt : std::optional(line),
                           .looked = m_looked->birds,
                           .good = m_looked->good,
                           .targetPerMille = m_target};
    if (!context().bench.model.say(check, tap.inputMs, tap.place))
        return;
    m_looked.reset();
    done();
}

}  // namespace bathside::ui
