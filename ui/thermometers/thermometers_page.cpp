#include "ui/thermometers/thermometers_page.h"

#include <QKeyEvent>

#include "ui/charts/chart.h"
#include "ui/controls/banner.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/frame/frame.h"
#include "ui/text/faults.h"
#include "ui/text/refusals.h"
#include "ui/theme/theme.h"
#include "ui/thermometers/ask_calibration.h"
#include "ui/thermometers/ask_thermometer.h"
#include "ui/thermometers/bath_pictures.h"

namespace bathside::ui {

ThermometersPage::ThermometersPage(Parts parts, QWidget* parent)
    : Page(parent),
      m_parts(std::move(parts)),
      m_model(m_parts.model),
      m_back(button("thermometers.back")),
      m_more(button("thermometers.more")),
      m_add(button("thermometers.add")),
      m_change(button("thermometers.change")),
      m_calibrate(button("thermometers.calibrate")),
      m_forecast(button("thermometers.forecast")),
      m_whole(button("thermometers.whole")),
      m_save(button("thermometers.save")),
      m_notice(new Banner(QStringLiteral("thermometers.notice"), this)),
      m_title(new Label(this)),
      m_words(new Label(this)),
      m_reckoned(new Label(this)),
      m_trace(new Chart(QStringLiteral("thermometers.trace"), this)),
      m_dip(new Chart(QStringLiteral("thermometers.dip"), this)),
      m_slush(new Chart(QStringLiteral("thermometers.slush"), this)),
      m_ask(new AskPane(m_model, this)),
      m_bench{.model = m_model,
              .draft = m_draft,
              .asker = *m_ask,
              .language = m_parts.language,
              .zone = m_parts.zone,
              .goTo = [this](const QString& page) { emit asksFor(page); },
              .draftChanged = [] {},
              .later = [this] { m_ask->close(); }},
      m_context{.bench = m_bench,
                .live = m_parts.live,
                .refuse = [this](const QString& why) { refuse(why); },
                .described = [this](const ProbeId& probe) { look(probe); },
                .balancePort =
                    [this] { return m_parts.balancePort ? m_parts.balancePort() : std::string(); }},
      m_reckoner(m_parts.run)
{
    setObjectName(QString::fromLatin1(kPage));
    m_title->setWeight(Weight::Strong);
    m_words->setCapMm(4, Metrics::kSmall);
    m_reckoned->setCapMm(4, Metrics::kSmall);
    m_calibrate->setWeight(Weight::Narrow);
    connectAll();
    place();
    render();
}

TapButton* ThermometersPage::button(const char* name)
{
    auto* made = new TapButton(QString::fromLatin1(name), this);
    made->setCapMm(4);
    return made;
}

void ThermometersPage::connectAll()
{
    connect(m_back, &TapButton::pressed, this, &ThermometersPage::pressBack);
    connect(m_more, &TapButton::pressed, this, [this] {
        m_page = (m_page + 1) % pages();
        render();
    });
    connect(m_add, &TapButton::pressed, this, [this](const TapStamp& stamp) {
        ask(stamp, [this] { askNewThermometer(m_context); });
    });
    connect(m_change, &TapButton::pressed, this, [this](const TapStamp& stamp) {
        ask(stamp, [this] { askChange(m_context, looked()->id); });
    });
    connect(m_calibrate, &TapButton::pressed, this, [this](const TapStamp& stamp) {
        ask(stamp, [this] { askCalibration(m_context, looked()->id); });
    });
    connect(m_forecast, &TapButton::pressed, this, &ThermometersPage::pressForecast);
    connect(m_whole, &TapButton::pressed, this, &ThermometersPage::pressWhole);
    connect(m_save, &TapButton::pressed, this, &ThermometersPage::pressSave);
    connect(m_ask, &AskPane::changed, this, [this] {
        place();
        render();
    });
    connect(&m_model, &StationModel::changed, this, whileShown([this] { render(); }));
    connect(&m_model, &StationModel::refused, this, &ThermometersPage::showRefusal);
    connect(&m_parts.live, &LiveProbes::changed, this, whileShown([this] { render(); }));
    connect(&m_reckoner, &BathReckoner::reckoned, this, whileShown([this] { render(); }));
    for (Chart* each : {m_trace, m_dip, m_slush})
        connect(each, &Chart::windowChanged, this, &ThermometersPage::renderBar);
    connect(&theme(), &Theme::changed, this, [this] {
        place();
        render();
    });
}

void ThermometersPage::ask(const TapStamp& stamp, const std::function<void()>& question)
{
    m_saidAt.reset();
    m_ask->opening(stamp.inputMs);
    question();
    if (m_model.isInCriticalWindow())
        m_ask->close();
}

void ThermometersPage::pressTile(std::size_t index)
{
    const auto all = probes();
    const std::size_t at = static_cast<std::size_t>(m_page) * m_tiles.size() + index;
    if (at < all.size())
        look(all[at].id);
}

void ThermometersPage::look(const ProbeId& probe)
{
    m_looked = probe;
    m_trace->showWhole();
    render();
}

void ThermometersPage::pressBack()
{
    if (m_view == View::Forecast)
        return put(View::Probes);
    emit asksFor(QString::fromLatin1(Frame::kSetUp));
}

void ThermometersPage::pressForecast()
{
    if (!m_model.bench().card)
        return;
    m_reckoner.reckon(m_model.state());
    put(View::Forecast);
}

void ThermometersPage::pressWhole()
{
    for (Chart* each : charts())
        each->showWhole();
    render();
}

void ThermometersPage::pressSave()
{
    QString last;
    for (Chart* each : charts()) {
        const auto saved = m_parts.save(each->picture(), each->objectName().replace(u'.', u'-'));
        if (!saved)
            return say(Role::Limit, faultText(saved.error()));
        last = *saved;
    }
    say(Role::Good, tr("Saved: %1").arg(last));
}

void ThermometersPage::put(View view)
{
    m_view = view;
    m_saidAt.reset();
    m_ask->close();
    place();
    render();
}

// --- what was not taken --------------------------------------------------------------------------

/// With the tone and at the place of any refusal, in words of its own.
void ThermometersPage::refuse(const QString& why)
{
    m_why = why;
    m_model.refuse({RefusalCode::BadValue, {}, {}});
    m_why.clear();
}

void ThermometersPage::showRefusal(const Refusal& refusal)
{
    if (!isVisible())
        return;
    const QString why = m_why.isEmpty() ? refusalText(refusal, m_model.bench().card.get(),
                                                      m_parts.language.cardCode())
                                        : m_why;
    m_ask->showRefusal(why);
    say(Role::Limit, why);
}

void ThermometersPage::say(Role role, const QString& words)
{
    m_said = {role, words};
    m_saidAt = m_model.now();
    render();
}

void ThermometersPage::showEvent(QShowEvent* event)
{
    Page::showEvent(event);
    put(View::Probes);
}

void ThermometersPage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        return put(View::Probes);
    Page::keyPressEvent(event);
}

}  // namespace bathside::ui
