#include "ui/setup/setup_page.h"

#include <QKeyEvent>

#include "ui/bench/ask_shift.h"
#include "ui/controls/banner.h"
#include "ui/frame/frame.h"
#include "ui/setup/card_gauge.h"
#include "ui/setup/cautions.h"
#include "ui/text/printing.h"
#include "ui/text/refusals.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
SetUpPage::SetUpPage(Parts parts, QWidget* parent)
    : Page(parent),
      m_parts(std::move(parts)),
      m_model(m_parts.model),
      m_cautions(new Cautions(this)),
      m_bench(button("setup.bench")),
      m_more(button("setup.more")),
      m_other(button("setup.other")),
      m_sound(button("setup.sound")),
      m_reading(button("setup.reading")),
      m_duty(button("setup.duty")),
      m_screen(button("setup.screen")),
      m_refusal(new Banner(QStringLiteral("setup.refusal"), this)),
      m_gauge(new CardGauge(m_parts.preferences, this)),
      m_ask(new AskPane(m_model, this)),
      m_context{.model = m_model,
                .draft = m_draft,
                .asker = *m_ask,
                .language = m_parts.language,
                .zone = m_parts.zone,
                .goTo = [this](const QString& page) { emit asksFor(page); },
                .draftChanged = [] {},
                .later = [this] { m_ask->close(); }},
      m_print({.asker = *m_ask,
               .preferences = m_parts.preferences,
               .printing = m_parts.printing,
               .testLabel = [this] { return testLabel(m_model.now().wall, m_context.zoneNow()); },
               .back = [this] { askStation(); }}),
      m_copies({.asker = *m_ask,
                .preferences = m_parts.preferences,
                .copies = m_parts.copies,
                .now = [this] { return m_model.now(); },
                .back = [this] { askStation(); }})
{
    setObjectName(QStringLiteral("setup"));
    m_cautions->setObjectName(QStringLiteral("setup.cautions"));
    m_gauge->hide();
    connectAll();
    place();
    render();
}

TapButton* SetUpPage::button(const char* name)
{
    auto* made = new TapButton(QString::fromLatin1(name), this);
    made->setCapMm(4);
    return made;
}

void SetUpPage::connectAll()
{
    connect(m_bench, &TapButton::pressed, this,
            [this] { emit asksFor(QString::fromLatin1(Frame::kBench)); });
    connect(m_more, &TapButton::pressed, this, [this] {
        m_page = (m_page + 1) % pages();
        render();
    });
    connect(m_other, &TapButton::pressed, this, &SetUpPage::pressOther);
    connect(m_sound, &TapButton::pressed, this, &SetUpPage::pressSound);
    connect(m_reading, &TapButton::pressed, this,
            [this](const TapStamp& stamp) { ask(stamp, [this] { askReading(m_context); }); });
    connect(m_duty, &TapButton::pressed, this, &SetUpPage::pressDuty);
    connect(m_screen, &TapButton::pressed, this,
            [this](const TapStamp& stamp) { ask(stamp, [this] { askStation(); }); });
    connect(m_gauge, &CardGauge::closed, this, &SetUpPage::closeAll);
    connect(m_ask, &AskPane::changed, this, [this] {
        place();
        render();
        emit stepChanged();
    });
    connect(&m_model, &StationModel::changed, this, whileShown([this] { render(); }));
    connect(&m_model, &StationModel::refused, this, &SetUpPage::showRefusal);
    connect(&m_model, &StationModel::taken, this, [this] { m_refusedAt.reset(); });
    connect(&m_parts.printing, &Printing::ended, this, &SetUpPage::tellPrinted);
    connect(&m_parts.preferences, &Preferences::changed, this, &SetUpPage::render);
    if (m_parts.copies)
        connect(m_parts.copies, &Copies::changed, this, [this] {
            if (m_ask->isOpen() && isVisible())
                m_copies.refresh();
            render();
        });
    connect(&theme(), &Theme::changed, this, [this] {
        place();
        render();
    });
}

void SetUpPage::ask(const TapStamp& stamp, const std::function<void()>& question)
{
    m_asksOutcome = false;
    m_copies.leave();
    m_ask->opening(stamp.inputMs);
    question();
    if (m_model.isInCriticalWindow())
        m_ask->close();
}

void SetUpPage::closeAll()
{
    m_copies.leave();
    m_ask->close();
    m_gauge->hide();
    m_asksOutcome = false;
    place();
    render();
}

// --- the checks -------------------------------------------------------------------------------

void SetUpPage::pressTile(std::size_t index, const TapStamp& stamp)
{
    const auto all = checks();
    const std::size_t at = static_cast<std::size_t>(m_page) * m_tiles.size() + index;
    if (at >= all.size())
        return;
    const CheckId check = all[at].id;
    if (m_asksOutcome)
        return ask(stamp, [this, check] { askOutcome(check); });
    m_model.say(RecordCheck{check, true, {}}, stamp.inputMs, m_tiles[index]->place());
}

void SetUpPage::pressOther()
{
    m_asksOutcome = !m_asksOutcome;
    render();
}

// --- the sound --------------------------------------------------------------------------------

void SetUpPage::pressSound(const TapStamp& stamp)
{
    if (m_asksOutcome && hasSoundCheck())
        return ask(stamp, [this] { askOutcome(kAlarmHeard); });
    ask(stamp, [this] {
        m_parts.sound.play();
        askHeard();
    });
}

// --- people and screen ------------------------------------------------------------------------

void SetUpPage::pressDuty(const TapStamp& stamp)
{
    ask(stamp, [this] {
        if (m_model.bench().shiftIsOpen())
            askDuty(m_context);
        else
            askWhoOpens(m_context);
    });
}

void SetUpPage::tellPrinted(const PrintOutcome& outcome)
{
    if (outcome.of == PrintOutcome::Of::TestLabel && m_ask->isOpen() && isVisible())
        m_print.ask(printNews(outcome).sentence());
}

void SetUpPage::showRefusal(const Refusal& refusal)
{
    if (!isVisible())
        return;
    m_refusedAt = m_model.now();
    const QString why =
        refusalText(refusal, m_model.bench().card.get(), m_parts.language.cardCode());
    m_refusal->say(Role::Limit, {}, why);
    m_ask->showRefusal(why);
    render();
}

void SetUpPage::showEvent(QShowEvent* event)
{
    Page::showEvent(event);
    m_refusedAt.reset();
    closeAll();
}

void SetUpPage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        return closeAll();
    Page::keyPressEvent(event);
}

}  // namespace bathside::ui
