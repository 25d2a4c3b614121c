#include "ui/frame/start_page.h"

#include <QEvent>
#include <QPainter>

#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/text/language.h"
#include "ui/theme/theme.h"

namespace bathside::ui {

StartPage::StartPage(Preferences& preferences, QWidget* parent)
    : QWidget(parent),
      m_preferences(preferences),
      m_title(new Label(this)),
      m_text(new Label(this)),
      m_fault(new Label(this)),
      m_rehearse(new TapButton(QStringLiteral("start.rehearse"), this)),
      m_real(new TapButton(QStringLiteral("start.real"), this)),
      m_language(new TapButton(QStringLiteral("start.language"), this)),
      m_scheme(new TapButton(QStringLiteral("start.scheme"), this))
{
    setObjectName(QStringLiteral("start"));
    m_title->setCapMm(9, Metrics::kWords);
    m_title->setWeight(Weight::Strong);
    m_text->setCapMm(4.4, Metrics::kSmall);
    m_text->setMaxLines(4);
    m_fault->setObjectName(QStringLiteral("start.fault"));
    m_fault->setMaxLines(5);
    m_fault->setCapMm(4.4, Metrics::kSmall);
    m_fault->hide();
    m_rehearse->setRole(Role::Primary);
    for (TapButton* day : {m_rehearse, m_real})
        day->setCapMm(7);
    connect(m_rehearse, &TapButton::pressed, this, &StartPage::rehearsalChosen);
    connect(m_real, &TapButton::pressed, this, &StartPage::realChosen);
    connect(m_language, &TapButton::pressed, this, &StartPage::nextLanguage);
    connect(m_scheme, &TapButton::pressed, this, [this] {
        Preference next = m_preferences.now();
        next.dark = !next.dark;
        m_preferences.set(next);
    });
    connect(&m_preferences, &Preferences::changed, this, &StartPage::render);
    connect(&theme(), &Theme::changed, this, [this] {
        place();
        update();
    });
    render();
}

void StartPage::showFault(const QString& sentence)
{
    m_fault->setText(sentence);
    m_fault->setRole(Role::Limit);
    m_fault->setVisible(!sentence.isEmpty());
    m_text->setVisible(sentence.isEmpty());
}

void StartPage::nextLanguage()
{
    const QList<QString> offered = Language::offered();
    Preference next = m_preferences.now();
    const auto at = offered.indexOf(next.language);
    next.language = offered.at((at + 1) % offered.size());
    m_preferences.set(next);
}

void StartPage::resizeEvent(QResizeEvent*) { place(); }

void StartPage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        render();
    QWidget::changeEvent(event);
}

void StartPage::paintEvent(QPaintEvent*)
{
    QPainter(this).fillRect(rect(), theme().palette().ground());
}

void StartPage::place()
{
    constexpr double kMargin = 8, kTitle = 18, kText = 26;
    const Metrics& metrics = theme().metrics();
    const int margin = metrics.ceilPx(kMargin), gap = metrics.gapPx();
    const QRect room = rect().adjusted(margin, margin, -margin, -margin);
    const int title = metrics.ceilPx(kTitle), text = metrics.ceilPx(kText),
              low = metrics.ceilPx(Metrics::kPrimary);
    m_title->setGeometry(room.left(), room.top(), room.width(), title);
    m_text->setGeometry(room.left(), room.top() + title, room.width(), text);
    m_fault->setGeometry(m_text->geometry());
    const int top = room.top() + title + text + gap, wide = (room.width() - gap) / 2;
    const int high = room.bottom() + 1 - top - gap - low;
    m_rehearse->setGeometry(room.left(), top, wide, high);
    m_real->setGeometry(room.left() + wide + gap, top, room.width() - wide - gap, high);
    const int side = (room.width() - 3 * gap) / 4;
    m_language->setGeometry(room.left(), top + high + gap, side, low);
    m_scheme->setGeometry(room.left() + side + gap, top + high + gap, side, low);
}

void StartPage::render()
{
    m_title->setText(tr("Bathside"));
    m_text->setText(
        tr("Out of the cryogen, into the bath, into the diluent, into the bag: Bathside takes the "
           "times, "
           "watches the limits and keeps the record. The label, the veterinarian in charge and the "
           "site's rules come first."));
    m_rehearse->setWord(tr("Rehearse the demo day"));
    m_rehearse->setLine(tr("Nothing counts. Try every button."));
    m_real->setWord(tr("Start the real day"));
    m_real->setLine(tr("Everything is recorded."));
    const QString code = m_preferences.now().language;
    const QList<QString> offered = Language::offered();
    const QString next = offered.at((offered.indexOf(code) + 1) % offered.size());
    m_language->setWord(Language::nameOf(next));
    m_scheme->setWord(m_preferences.now().dark ? tr("light screen") : tr("dark screen"));
}

}  // namespace bathside::ui
