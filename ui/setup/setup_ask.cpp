// What set-up asks: how a check stands, whether the alarm was heard, the screen.

#include "ui/frame/frame.h"
#include "ui/setup/ask_live_cells.h"
#include "ui/setup/ask_parts.h"
#include "ui/setup/card_gauge.h"
#include "ui/setup/setup_page.h"
#include "ui/text/subjects.h"
#include "ui/thermometers/bath_pictures.h"
#include "ui/thermometers/thermometers_page.h"

namespace bathside::ui {
namespace {

/// As much of it as a tile has room for.
QString briefName(const QString& name)
{
    constexpr qsizetype kRoom = 14;  // signs
    return name.size() <= kRoom ? name : name.first(kRoom - 1).trimmed() + u'…';
}

constexpr auto kOther = "other", kName = "name", kPrint = "labels", kCells = "live-cells";

}  // namespace

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

void SetUpPage::askStation()
{
    const Preference now = m_parts.preferences.now();
    const bool isNamed = now.station != QLatin1String(kUnnamedStation);
    QList<Choice> choices{{.id = QString::fromLatin1(kName),
                           .word = tr("name …"),
                           .line = isNamed ? briefName(now.station) : tr("not named yet"),
                           .role = isNamed ? Role::Neutral : Role::HeadsUp}};
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
    choices.append({.id = QString::fromLatin1(kPrint),
                    .word = tr("labels …"),
                    .line = tr("printers and paper"),
                    .mark = Mark::Sheet});
    if (m_copies.isOffered())
        choices.append(m_copies.choice());
    choices.append({.id = QStringLiteral("page:") + QString::fromLatin1(ThermometersPage::kPage),
                    .word = tr("thermometers …"),
                    .line = bathLine(m_model.bench().learned.get())});
    choices.append({.id = QStringLiteral("page:") + QString::fromLatin1(Frame::kPeople),
                    .word = tr("people …"),
                    .line = m_model.bench().people.areListed() ? tr("roles and PINs")
                                                               : tr("nobody is listed")});
    if (m_model.bench().card)
        choices.append({.id = QString::fromLatin1(kCells),
                        .word = tr("live cells …"),
                        .line = liveCellsLine(m_model.bench())});
    choices.append(back(tr("back")));
    m_ask->choose(tr("The station"), choices,
                  [this](const QString& id, const AnswerTap&) { chooseStation(id); }, {});
}

// A bench of its own in the record, on sheets, copies and charts.
void SetUpPage::askName()
{
    const QString now = m_parts.preferences.now().station;
    m_ask->text({.title = tr("What is this station called?"),
                 .shortest = 1,
                 .longest = kLongestStation,
                 .suggested = now == QLatin1String(kUnnamedStation) ? QString() : now},
                [this](const QString& name, const AnswerTap&) {
                    Preference next = m_parts.preferences.now();
                    next.station = name;
                    m_parts.preferences.set(next);
                    askStation();
                });
}

void SetUpPage::chooseStation(const QString& id)
{
    if (id.startsWith(QLatin1String("page:"))) {
        m_ask->close();
        emit asksFor(id.mid(5));
        return;
    }
    if (id == QLatin1String(kName))
        return askName();
    if (id == QLatin1String(kPrint))
        return m_print.ask();
    if (id == QLatin1String("copies"))
        return m_copies.ask();
    if (id == QLatin1String(kCells))
        return askLiveCells(m_context, [this] { askStation(); });
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

}  // namespace bathside::ui
