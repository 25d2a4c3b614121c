#include "ui/setup/setup_page.h"

#include <QKeyEvent>

#include "ui/bench/ask_shift.h"
#include "ui/controls/banner.h"
#include "ui/frame/frame.h"
#include "ui/setup/card_gauge.h"
#include "ui/setup/cautions.h"
#include "ui/text/refusals.h"
#include "ui/text/subjects.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr auto kBack = "back", kOther = "other";

Choice back(const QString& word)
{
    return {
        .id = QString::fromLatin1(kBack), .word = word, .role = Role::Quiet, .mark = Mark::Back};
}

}  // namespace

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
                .later = [this] { m_ask->close(); }}
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
            [this](const TapStamp& stamp) { ask(stamp, [this] { askScreen(); }); });
    connect(m_gauge, &CardGauge::closed, this, &SetUpPage::closeAll);
    connect(m_ask, &AskPane::changed, this, [this] {
        place();
        render();
        emit stepChanged();
    });
    connect(&m_model, &StationModel::changed, this, &SetUpPage::render);
    connect(&m_model, &StationModel::refused, this, &SetUpPage::showRefusal);
    connect(&m_model, &StationModel::taken, this, [this] { m_refusedAt.reset(); });
    connect(&m_parts.preferences, &Preferences::changed, this, &SetUpPage::render);
    connect(&theme(), &Theme::changed, this, [this] {
        place();
        render();
    });
}

void SetUpPage::ask(const TapStamp& stamp, const std::function<void()>& question)
{
    m_asksOutcome = false;
    m_ask->opening(stamp.inputMs);
    question();
    if (m_model.isInCriticalWindow())
        m_ask->close();
}

void SetUpPage::closeAll()
{
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

void SetUpPage::askOutcome(const CheckId& check)
{
    const QList<Choice> choices{
        {.id = QStringLiteral("ok"), .word = tr("ok"), .role = Role::Good, .mark = Mark::Tick},
        {.id = QStringLiteral("not-ok"),
         .word = tr("not ok"),
         .role = Role::Limit,
         .mark = Mark::Cross},
        {.id = QStringLiteral("override"),
         .word = tr("go on without it …"),
         .line = tr("with a reason, on record"),
         .role = Role::HeadsUp},
        back(tr("back"))};
    m_ask->choose(wordsOf(check), choices,
                  [this, check](const QString& id, const AnswerTap& tap) {
                      if (id == QLatin1String(kBack))
                          return m_ask->close();
                      if (id == QLatin1String("override"))
                          return askWhy(check);
                      m_context.say(RecordCheck{check, id == QLatin1String("ok"), {}}, tap);
                  },
                  {});
}

void SetUpPage::askWhy(const CheckId& check)
{
    const QList<Choice> choices{
        {.id = QStringLiteral("the shift lead decided it"),
         .word = tr("the shift lead decided it")},
        {.id = QStringLiteral("checked in another way"), .word = tr("checked in another way")},
        {.id = QStringLiteral("not needed today"), .word = tr("not needed today")},
        {.id = QStringLiteral("is being put right"), .word = tr("is being put right")},
        {.id = QString::fromLatin1(kOther), .word = tr("another reason …")},
        back(tr("back"))};
    m_ask->choose(tr("Why go on without it?"), choices,
                  [this, check](const QString& id, const AnswerTap& tap) {
                      if (id == QLatin1String(kBack))
                          return m_ask->close();
                      if (id != QLatin1String(kOther))
                          return m_context.say(OverrideCheck{check, id.toStdString()}, tap);
                      constexpr int kLongest = 60;
                      m_ask->text({.title = tr("Why go on without it?"),
                                   .shortest = 3,
                                   .longest = kLongest,
                                   .suggested = {}},
                                  [this, check](const QString& why, const AnswerTap& said) {
                                      m_context.say(OverrideCheck{check, why.toStdString()}, said);
                                  });
                  },
                  {});
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

void SetUpPage::askHeard()
{
    const QString device = m_parts.sound.device();
    const QString why = device.isEmpty() ? tr("no loudspeaker") : QString();
    QList<Choice> choices{
        {.id = QStringLiteral("heard"),
         .word = tr("I HEARD IT"),
         .role = Role::Primary,
         .reason = why,
         .mark = Mark::Ear},
        {.id = QStringLiteral("again"), .word = tr("play it again"), .mark = Mark::Note},
        {.id = QStringLiteral("not-heard"), .word = tr("not heard"), .mark = Mark::Cross},
        {.id = QStringLiteral("device"), .word = tr("another loudspeaker …")},
        back(tr("back"))};
    m_ask->choose(
        tr("The alarm is playing. Was it heard at the bench?"), choices,
        [this, device](const QString& id, const AnswerTap& tap) {
            if (id == QLatin1String("again")) {
                m_parts.sound.play();
                return askHeard();
            }
            if (id == QLatin1String("device"))
                return askLoudspeaker();
            if (id == QLatin1String("not-heard"))
                return m_context.say(RecordCheck{kAlarmHeard, false, device.toStdString()}, tap);
            if (id == QLatin1String(kBack) || device.isEmpty())
                return m_ask->close();
            if (!m_model.say(RecordCheck{kAlarmHeard, true, device.toStdString()}, tap.inputMs,
                             tap.place))
                return;
            m_parts.sound.heard();
            m_ask->close();
        },
        {});
}

void SetUpPage::askLoudspeaker()
{
    constexpr std::size_t kMost = 6;
    QList<Choice> choices;
    for (const Loudspeaker& each : m_parts.sound.devices()) {
        if (static_cast<std::size_t>(choices.size()) < kMost)
            choices.append({.id = QStringLiteral("device:") + each.id, .word = each.name});
    }
    choices.append(back(tr("back")));
    m_ask->choose(
        choices.size() > 1 ? tr("Which loudspeaker?") : tr("No other loudspeaker was found."),
        choices,
        [this](const QString& id, const AnswerTap&) {
            if (id != QLatin1String(kBack)) {
                Preference next = m_parts.preferences.now();
                next.soundDevice = id.mid(7);
                m_parts.sound.use(next.soundDevice);
                m_parts.preferences.set(next);
                m_parts.sound.play();
            }
            askHeard();
        },
        {});
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

void SetUpPage::askScreen()
{
    const Preference now = m_parts.preferences.now();
    QList<Choice> choices;
    for (const QString& code : Language::offered())
        choices.append({.id = QStringLiteral("language:") + code,
                        .word = Language::nameOf(code),
                        .mark = code == now.language ? Mark::Tick : Mark::None});
    choices.append({.id = QStringLiteral("light"),
                    .word = tr("light screen"),
                    .mark = now.dark ? Mark::None : Mark::Tick});
    choices.append({.id = QStringLiteral("dark"),
                    .word = tr("dark screen"),
                    .mark = now.dark ? Mark::Tick : Mark::None});
    choices.append(
        {.id = QStringLiteral("size"), .word = tr("true size …"), .line = tr("with a bank card")});
    choices.append(back(tr("back")));
    m_ask->choose(tr("The screen"), choices,
                  [this](const QString& id, const AnswerTap&) { chooseScreen(id); }, {});
}

void SetUpPage::chooseScreen(const QString& id)
{
    Preference next = m_parts.preferences.now();
    m_ask->close();
    if (id == QLatin1String(kBack))
        return;
    if (id == QLatin1String("size")) {
        m_gauge->begin();
        m_gauge->show();
        place();
        return render();
    }
    if (id.startsWith(QLatin1String("language:")))
        next.language = id.mid(9);
    else
        next.dark = id == QLatin1String("dark");
    m_parts.preferences.set(next);
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
