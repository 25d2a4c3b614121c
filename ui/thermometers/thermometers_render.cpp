// What the thermometers page shows.

#include <QEvent>
#include <algorithm>

#include "ui/charts/chart.h"
#include "ui/controls/banner.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/text/numbers.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/theme/theme.h"
#include "ui/thermometers/bath_pictures.h"
#include "ui/thermometers/probe_words.h"
#include "ui/thermometers/thermometers_page.h"

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;

constexpr auto kSaidFor = 6s;
constexpr int kMostReckoned = 40;  // ampoules at a time

/// A thermometer that shows *inside* past its due date is not simply good.
Role roleOf(Role standing, Role due)
{
    const bool isCalm = standing == Role::Good || standing == Role::Neutral;
    return isCalm && due != Role::Neutral ? due : standing;
}

/// One line: what is wrong, or that nothing is.
QString shortText(const ProbeStanding& standing, const Probe& probe, std::chrono::sys_days today)
{
    const Role due = roleOfDue(probe, today);
    if (standing.role == Role::Quiet || roleOf(standing.role, due) == standing.role)
        return standing.role == Role::Good
                   ? QStringLiteral("%1 · %2").arg(standing.word, dueText(probe, today))
                   : standing.word;
    return dueText(probe, today);
}

bool isRead(const Probe& probe)
{
    return std::holds_alternative<OneWire>(probe.source) ||
           std::holds_alternative<SerialLine>(probe.source);
}

/// Several are read, and of none it was said that it is in the bath.
bool isBathUnsaid(const std::vector<Probe>& all)
{
    return std::ranges::count_if(all, isRead) > 1 &&
           std::ranges::none_of(all, [](const Probe& probe) {
               return probe.inBath && !std::holds_alternative<OutOfUse>(probe.source);
           });
}

}  // namespace

void ThermometersPage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange) {
        m_curveOf.reset();
        put(View::Probes);
    }
    Page::changeEvent(event);
}

std::chrono::sys_days ThermometersPage::today() const
{
    return localDay(m_model.now().wall, m_bench.zoneNow());
}

/// Under the ids by which readings name them; those in use first, by name.
std::vector<Probe> ThermometersPage::probes() const
{
    std::vector<Probe> all;
    for (const auto& [id, probe] : m_model.bench().probes) {
        all.push_back(*probe);
        all.back().id = id;
    }
    std::ranges::stable_sort(all, {}, [](const Probe& probe) {
        return std::pair(std::holds_alternative<OutOfUse>(probe.source), nameText(probe));
    });
    return all;
}

std::optional<Probe> ThermometersPage::looked() const
{
    const auto all = probes();
    const auto found = std::ranges::find_if(
        all, [this](const Probe& probe) { return m_looked && probe.id == *m_looked; });
    if (found != all.end())
        return *found;
    return all.empty() ? std::nullopt : std::optional(all.front());
}

int ThermometersPage::pages() const
{
    const auto many = static_cast<int>(m_model.bench().probes.size()),
               each = std::max(1, static_cast<int>(m_tiles.size()));
    return std::max(1, (many + each - 1) / each);
}

QList<Chart*> ThermometersPage::charts() const
{
    return m_view == View::Probes ? QList<Chart*>{m_trace} : QList<Chart*>{m_dip, m_slush};
}

void ThermometersPage::render()
{
    if (m_saidAt && elapsed(*m_saidAt, m_model.now()).time > kSaidFor)
        m_saidAt.reset();
    renderNotice();
    renderTiles();
    renderDetail();
    renderForecast();
    renderBar();
}

void ThermometersPage::renderNotice()
{
    if (m_saidAt)
        return m_notice->say(m_said.first, {}, m_said.second);
    if (m_view == View::Forecast)
        return m_notice->say(Role::Neutral, {}, forecastNotice());
    const auto all = probes();
    if (all.empty())
        return m_notice->say(
            Role::Neutral, {},
            tr("No thermometer is described. Readings by hand are taken, undecided at best."));
    if (isBathUnsaid(all))
        return m_notice->say(Role::HeadsUp, {},
                             tr("More than one thermometer is read. Say at “change …” which one is "
                                "in the bath: until then the last one that spoke counts."));
    const bool anyDue = std::ranges::any_of(all, [this](const Probe& probe) {
        return !std::holds_alternative<OutOfUse>(probe.source) &&
               roleOfDue(probe, today()) != Role::Neutral;
    });
    if (anyDue)
        return m_notice->say(
            Role::HeadsUp, {},
            tr("A thermometer is not calibrated, or overdue: do not trust it alone."));
    m_notice->say(Role::Good, {}, tr("Every thermometer in use has a calibration that holds."));
}

QString ThermometersPage::forecastNotice() const
{
    if (m_reckoner.isBusy() || !m_reckoner.last())
        return tr("Reckoning: the time to slush, and what the pulls say of the bath …");
    const QString fits = fitsText(m_reckoner.last()->fits, m_model.bench().card->content().heat);
    return fits.isEmpty() ? tr("These figures are the card's: no pull shows yet how good they are.")
                          : fits;
}

void ThermometersPage::renderTiles()
{
    const auto all = probes();
    const bool shown = m_view == View::Probes && !m_ask->isOpen();
    const auto chosen = looked();
    const std::size_t first = static_cast<std::size_t>(m_page) * m_tiles.size();
    for (std::size_t i = 0; i < m_tiles.size(); ++i) {
        TapButton* tile = m_tiles[i];
        const bool there = first + i < all.size();
        tile->setVisible(shown && there);
        if (!there)
            continue;
        const Probe& probe = all[first + i];
        const ProbeStanding standing =
            standingOf(m_model.bench(), probe, m_model.newest(probe.id), m_model.now());
        tile->setPlace(QStringLiteral("thermometers.probe.") + idText(probe.id));
        tile->setWord(nameText(probe));
        tile->setLine(shortText(standing, probe, today()));
        const Role role = roleOf(standing.role, roleOfDue(probe, today()));
        tile->setRole(role);
        tile->setChosen(chosen && probe.id == chosen->id);
    }
}

void ThermometersPage::renderDetail()
{
    const auto probe = looked();
    const bool shown = m_view == View::Probes && !m_ask->isOpen() && probe;
    for (QWidget* each : {static_cast<QWidget*>(m_title), static_cast<QWidget*>(m_words),
                          static_cast<QWidget*>(m_trace)})
        each->setVisible(shown);
    if (!shown)
        return;
    const Bench& bench = m_model.bench();
    const ProbeStanding standing =
        standingOf(bench, *probe, m_model.newest(probe->id), m_model.now());
    m_title->setText(standing.reading.isEmpty()
                         ? standing.word
                         : QStringLiteral("%1 · %2").arg(standing.word, standing.reading));
    QStringList words{dueText(*probe, today()), connectionText(probe->source),
                      calibrationText(*probe)};
    if (probe->inBath)
        words.prepend(tr("in the bath", "a thermometer"));
    words = doubtsOf(bench, *probe, m_model.newest(probe->id), today()) + words;
    m_words->setText(words.join(QStringLiteral(" · ")));
    m_trace->show(traceContent(
        bench, *probe, traceOf(bench, *probe, m_parts.live.trace(probe->id), m_model.now())));
}

/// What the bath is now; without a reading that counts, what the card wants, and 0 for its U.
BathNow ThermometersPage::bathNow() const
{
    const Bench& bench = m_model.bench();
    const auto last = bench.lastGoodReading();
    const bool counts = last && last->fact.corrected && last->fact.expanded &&
                        isCalibrated(bench, last->fact.probe) &&
                        !isTooOld(bench, *last, m_model.now());
    if (!counts)
        return {static_cast<double>(bench.card->content().bath.target.count) / 1000, 0};
    return {static_cast<double>(last->fact.corrected->count) / 1000,
            static_cast<double>(last->fact.expanded->count) / 1000};
}

/// The card's, with the mass that this shift's pulls say, else those before it.
HeatRules ThermometersPage::heatNow() const
{
    const Bench& bench = m_model.bench();
    const auto& last = m_reckoner.last();
    std::optional<LearnedFigure> mass = bench.learned ? bench.learned->mass : std::nullopt;
    if (last && last->of == bench.card->hash())
        mass = last->fits.mass ? std::optional(last->fits.mass->figure) : std::nullopt;
    return heatWith(bench.card->content().heat, mass, {});
}

void ThermometersPage::renderForecast()
{
    const auto& card = m_model.bench().card;
    const bool shown = m_view == View::Forecast && !m_ask->isOpen() && card;
    for (QWidget* each : {static_cast<QWidget*>(m_reckoned), static_cast<QWidget*>(m_dip),
                          static_cast<QWidget*>(m_slush)})
        each->setVisible(shown);
    if (!shown)
        return;
    const Card::Content& content = card->content();
    const BathNow now = bathNow();
    const HeatRules heat = heatNow();
    const int usual = content.ampoulesPerPull;
    const int most = forecastOf(heat, content.bath, now, 0).most;
    const BathForecast forecast =
        forecastOf(heat, content.bath, now, std::clamp(most + 1, usual, kMostReckoned));
    m_reckoned->setText(forecastText(forecast, now, usual));
    m_dip->show(dipContent(forecast, usual));
    renderReckoned();
}

/// Until the curve of the card in force is there, the picture says that it is on its way.
void ThermometersPage::renderReckoned()
{
    const CardHash& card = m_model.bench().card->hash();
    const auto& last = m_reckoner.last();
    if (m_curveOf == card)
        return;
    if (last && last->of == card) {
        m_curveOf = card;
        return m_slush->show(slushContent(last->curve));
    }
    m_curveOf.reset();
    ChartContent empty = slushContent({});
    empty.title = tr("The time to slush is being reckoned …");
    m_slush->show(empty);
    if (!m_reckoner.isBusy())
        m_reckoner.reckon(m_model.state());
}

void ThermometersPage::renderBar()
{
    placeBar();
    const bool shown = !m_ask->isOpen();
    const bool onProbes = shown && m_view == View::Probes;
    const bool hasProbe = looked().has_value();
    const bool anyZoomed = std::ranges::any_of(
        charts(), [](const Chart* chart) { return !chart->window().isWhole(); });
    m_back->setVisible(shown);
    m_more->setVisible(onProbes && pages() > 1);
    m_add->setVisible(onProbes);
    m_change->setVisible(onProbes && hasProbe);
    m_calibrate->setVisible(onProbes && hasProbe);
    m_forecast->setVisible(onProbes && m_model.bench().card);
    m_whole->setVisible(shown && anyZoomed);
    m_save->setVisible(shown && (m_view == View::Forecast || hasProbe));
    m_back->setWord(tr("back"));
    m_back->setMark(Mark::Back);
    m_more->setWord(tr("more …", "more thermometers"));
    m_more->setLine(tr("%1 of %2", "which page of how many").arg(m_page + 1).arg(pages()));
    m_add->setWord(tr("add …"));
    m_add->setRole(hasProbe ? Role::Neutral : Role::Primary);
    m_change->setWord(tr("change …"));
    m_calibrate->setWord(tr("certificate …"));
    const auto probe = looked();
    m_calibrate->setLine(probe && m_context.isHalfTyped(probe->id) ? tr("not saved") : QString());
    m_forecast->setWord(tr("forecast"));
    m_whole->setWord(tr("all of it", "the whole of a chart"));
    m_save->setWord(tr("save", "a picture of the chart"));
}

}  // namespace bathside::ui
