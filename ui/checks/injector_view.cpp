#include "ui/checks/injector_view.h"

#include <QCoreApplication>
#include <QLocale>
#include <utility>

#include "core/bench/dose.h"
#include "core/checks/check_drafts.h"
#include "core/checks/check_limits.h"
#include "ui/checks/check_words.h"
#include "ui/text/numbers.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

const QString kWeighedDraft = QStringLiteral("weights");  // on the shelf

struct InjectorText {
    Q_DECLARE_TR_FUNCTIONS(InjectorText)
};

/// In thousandths of the unit, with three decimals.
NumberQuestion fine(const QString& title, const QString& unit, qint64 lowest, qint64 highest)
{
    return {.title = title,
            .unit = unit,
            .lowest = lowest,
            .highest = highest,
            .decimals = 3,
            .typedDecimals = 3};
}

}  // namespace

InjectorView::InjectorView(CheckContext& context, const BalanceDesk& balance)
    : CheckView(context), m_balance(balance)
{
    auto draft = weighedDraftFrom(context.drafts.kept(kWeighedDraft));
    if (!draft)
        return;
    m_weights = std::move(draft->weights);
    m_liquid = draft->liquid;
    m_dose = draft->dose;
    m_leftAt = draft->since;
    context.line = draft->line;
}

void InjectorView::keepDraft()
{
    const WeighedDraft draft{.line = context().lineNow(),
                             .weights = m_weights,
                             .liquid = m_liquid,
                             .dose = m_dose,
                             .since = context().bench.model.now().wall};
    context().drafts.keep(kWeighedDraft, documentOf(draft));
    if (m_weights.empty())
        m_leftAt.reset();
}

/// What an ended program left is named, as nobody may know of it any more.
void InjectorView::addLeft(CheckSheet& sheet) const
{
    if (!m_leftAt)
        return;
    const std::string& zone = context().bench.zoneNow();
    const QString words = InjectorText::tr("%n weight(s) from %1 %2. Go on, or measure anew.",
                                           "a day, a time", static_cast<int>(m_weights.size()));
    sheet.fields.append(
        {InjectorText::tr("unfinished"),
         words.arg(dayText(localDay(*m_leftAt, zone)), localMinuteText(*m_leftAt, zone))});
}

MicroLitres InjectorView::dose() const
{
    const auto& card = bench().card;
    return m_dose ? *m_dose : card ? card->content().dose : MicroLitres{200};
}

ShotLiquid InjectorView::liquid() const
{
    const DoseCheckRules* rules = doseRulesOn(bench().card.get());
    if (m_liquid || !rules || !rules->density)
        return m_liquid.value_or(Water{});
    return OtherLiquid{*rules->density};
}

std::optional<DoseMeasured> InjectorView::measured() const
{
    const DoseLimits limits = doseLimitsOn(bench().card.get());
    if (m_collected)
        return DoseMeasured{.dose = dose(), .how = *m_collected, .limits = limits};
    if (m_weights.size() < kFewestShots)
        return std::nullopt;
    return DoseMeasured{.dose = dose(), .how = WeighedShots{m_weights, liquid()}, .limits = limits};
}

bool InjectorView::isHeldToCard() const { return doseRulesOn(bench().card.get()) != nullptr; }

CheckSheet InjectorView::sheet() const
{
    const auto all = measured();
    const auto check = all ? injectorCaseFrom(documentOf(*all)) : injectorCaseFrom({});
    const Line* line = context().known();
    if (check) {
        CheckSheet sheet = sheetOf(
            *check, line ? birdsTouched(*line) : 0,
            limitsSaid(doseRulesOn(bench().card.get()), context().bench.language.cardCode()));
        if (!m_collected)
            sheet.fields.insert(1, {InjectorText::tr("weighed, in %1").arg(liquidText(liquid())),
                                    weightsText(m_weights)});
        addLeft(sheet);
        return sheet;
    }
    CheckSheet sheet = doseOnRecord(bench(), line, context().bench.zoneNow());
    sheet.fields.append({InjectorText::tr("dose set"), volumeText(dose())});
    sheet.fields.append(
        {InjectorText::tr("weighed, in %1").arg(liquidText(liquid())), weightsText(m_weights)});
    addLeft(sheet);
    return sheet;
}

QList<CheckAction> InjectorView::actions()
{
    return {lineAction(),
            birdsAction(),
            {.place = QStringLiteral("checks.set"),
             .word = InjectorText::tr("set …", "liquid, dose"),
             .line = InjectorText::tr("liquid, dose"),
             .press = [this](const AnswerTap&) { askSettings(); }},
            {.place = QStringLiteral("checks.weigh"),
             .word = InjectorText::tr("weigh …"),
             .line = weighLine(),
             .press = [this](const AnswerTap&) { weigh(); }},
            {.place = QStringLiteral("checks.cylinder"),
             .word = InjectorText::tr("cylinder …"),
             .line = InjectorText::tr("quick form"),
             .press = [this](const AnswerTap&) { askShots(); }},
            recordAction()};
}

QString InjectorView::weighLine() const
{
    return InjectorText::tr("%1 of %2", "shots weighed, of how many")
        .arg(m_weights.size())
        .arg(kShotsAsked);
}

CheckAction InjectorView::recordAction()
{
    QString why;
    if (!measured())
        why = InjectorText::tr("Measure first.");
    else if (context().lineNow().empty())
        why = InjectorText::tr("Choose a line first.");
    return {.place = QStringLiteral("checks.record"),
            .word = InjectorText::tr("RECORD"),
            .role = Role::Primary,
            .reason = why,
            .press = [this](const AnswerTap& tap) { record(tap); }};
}

void InjectorView::record(const AnswerTap& tap)
{
    const auto all = measured();
    if (!all)
        return;
    const LineId line = context().lineNow();
    const CheckDose check{.line = line.empty() ? std::nullopt : std::optional(line),
                          .ok = true,
                          .measured = documentOf(*all)};
    if (!context().bench.model.say(check, tap.inputMs, tap.place))
        return;
    m_collected.reset();
    m_weights.clear();
    keepDraft();
    done();
}

// --- shots ---------------------------------------------------------------------------------------

void InjectorView::weigh()
{
    constexpr std::int64_t kTenthsPerMicroLitre = 10;  // of a mg: of water, or nearly
    askWeight();
    if (m_balance.isSet())
        m_weigher.emplace(m_balance.now().format.stillness, dose().count * kTenthsPerMicroLitre);
}

void InjectorView::hear(const WeightSource::Said& said)
{
    if (!m_weigher)
        return;
    if (const auto* weight = std::get_if<Weighed>(&said)) {
        if (std::exchange(m_hasTold, false))
            context().tell({});
        if (const auto shot = m_weigher->take(*weight))
            take(*shot);
        return;
    }
    m_weigher->miss();
    m_hasTold = true;
    const auto* fault = std::get_if<WeightFault>(&said);
    context().tell(
        fault ? faultText(*fault)
              : InjectorText::tr("The balance is gone: check its plug, or type the weights."));
}

void InjectorView::take(std::int64_t tenths)
{
    m_collected.reset();
    m_weights.push_back(tenths);
    keepDraft();
    if (m_weights.size() >= kShotsAsked)
        return done();
    askWeight();
    context().changed();
}

void InjectorView::askWeight()
{
    constexpr qint64 kHeaviest = 500'000;  // tenths of a mg: 50 g
    const auto next = m_weights.size() + 1;
    const NumberQuestion question{.title = InjectorText::tr("Shot %1 of %2: what does it weigh?")
                                               .arg(next)
                                               .arg(std::max(next, kShotsAsked)),
                                  .unit = QStringLiteral("mg"),
                                  .lowest = 1,
                                  .highest = kHeaviest,
                                  .decimals = 1,
                                  .typedDecimals = 1,
                                  .note = m_balance.isSet()
                                              ? InjectorText::tr("The balance fills it in: tare, "
                                                                 "one shot, wait. Or type it.")
                                              : QString()};
    ask(question, [this](qint64 tenths, const AnswerTap&) { take(tenths); });
}

void InjectorView::askShots()
{
    const NumberQuestion question{
        .title = InjectorText::tr("How many shots went into the cylinder?"),
        .unit = InjectorText::tr("shots"),
        .lowest = 1,
        .highest = 10'000,
        .suggested = static_cast<qint64>(kShotsAsked)};
    ask(question, [this](qint64 shots, const AnswerTap&) { askCollected(shots); });
}

void InjectorView::askCollected(std::int64_t shots)
{
    ask(fine(InjectorText::tr("What does the cylinder show?"), QStringLiteral("mL"), 100,
             10'000'000),
        [this, shots](qint64 collected, const AnswerTap&) { askGraduation(shots, {collected}); });
}

void InjectorView::askGraduation(std::int64_t shots, MicroLitres collected)
{
    ask(fine(InjectorText::tr("How much is it from one mark to the next?"), QStringLiteral("mL"), 1,
             100'000),
        [this, shots, collected](qint64 graduation, const AnswerTap&) {
            m_collected = CollectedShots{shots, collected, {graduation}};
            done();
        });
}

// --- settings ------------------------------------------------------------------------------------

void InjectorView::askSettings()
{
    QList<Choice> choices{
        {.id = QStringLiteral("water"), .word = InjectorText::tr("water …", "what is weighed")},
        {.id = QStringLiteral("other"),
         .word = InjectorText::tr("other liquid …"),
         .line = InjectorText::tr("by its density")},
        {.id = QStringLiteral("dose"),
         .word = InjectorText::tr("dose set …"),
         .line = volumeText(dose())},
        {.id = QStringLiteral("balance"),
         .word = InjectorText::tr("balance …"),
         .line = balanceLine(m_balance)}};
    if (!m_weights.empty())
        choices.append(
            {.id = QStringLiteral("last"),
             .word = InjectorText::tr("last weight out"),
             .line = scaledText(m_weights.back(), 1, 1, QLocale()) + QStringLiteral(" mg")});
    if (m_collected || !m_weights.empty())
        choices.append({.id = QStringLiteral("anew"), .word = InjectorText::tr("measure anew")});
    choose(InjectorText::tr("What is weighed, and against what?"), choices,
           [this](const QString& id, const AnswerTap&) { setting(id); });
}

void InjectorView::setting(const QString& id)
{
    if (id == QLatin1String("water"))
        return askWater();
    if (id == QLatin1String("other"))
        return askDensity();
    if (id == QLatin1String("dose"))
        return askDose();
    if (id == QLatin1String("balance"))
        return askBalance(context().bench.asker, m_balance, [this] { done(); });
    if (id == QLatin1String("last") && !m_weights.empty())
        m_weights.pop_back();
    if (id == QLatin1String("anew")) {
        m_weights.clear();
        m_collected.reset();
    }
    keepDraft();
    done();
}

void InjectorView::askWater()
{
    NumberQuestion question = fine(InjectorText::tr("How warm is the water that is weighed?"),
                                   QStringLiteral("°C"), 0, 40'000);
    question.typedDecimals = 1;
    ask(question, [this](qint64 milliCelsius, const AnswerTap&) {
        m_liquid = Water{{milliCelsius}};
        keepDraft();
        done();
    });
}

void InjectorView::askDensity()
{
    NumberQuestion question = fine(InjectorText::tr("What is its density? See its label."),
                                   QStringLiteral("g/mL"), 800, 1'500);
    const DoseCheckRules* rules = doseRulesOn(bench().card.get());
    if (rules && rules->density) {
        question.suggested = *rules->density;
        question.note = InjectorText::tr("Filled in: the diluent's, by the card.");
    }
    ask(question, [this](qint64 density, const AnswerTap&) {
        m_liquid = OtherLiquid{density};
        keepDraft();
        done();
    });
}

void InjectorView::askDose()
{
    ask(fine(InjectorText::tr("Which dose is set?"), QStringLiteral("mL"), 10, 50'000),
        [this](qint64 microlitres, const AnswerTap&) {
            m_dose = MicroLitres{microlitres};
            keepDraft();
            done();
        });
}

}  // namespace bathside::ui
