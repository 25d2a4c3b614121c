#include "ui/controls/letter_pad.h"

#include <QEvent>
#include <QKeyEvent>
#include <QLocale>
#include <algorithm>

#include "ui/controls/grid.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kTypedMm = 14;  // the line with what is asked and typed

bool isTypable(QChar sign)
{
    return (sign >= u'A' && sign <= u'Z') || (sign >= u'0' && sign <= u'9') || sign == u'-' ||
           sign == u' ' || sign == u'\u00D1';
}

/// Whether N with a tilde is a letter here; the hyphen makes room for it, which the digits have,
/// too.
bool hasEnye() { return QLocale().language() == QLocale::Spanish; }

}  // namespace

LetterPad::LetterPad(const QString& place, QWidget* parent)
    : Control(parent), m_title(new Label(this)), m_shown(new Label(this)), m_note(new Label(this))
{
    setObjectName(place);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    m_title->setWeight(Weight::Strong);
    m_shown->setCapMm(7, Metrics::kSmall);
    m_shown->setWeight(Weight::Strong);
    m_note->setCapMm(4, Metrics::kSmall);
    const auto typing = [this](QChar sign, const QString& id) {
        TapButton* target = key(id);
        target->setWord(QString(sign));
        connect(target, &TapButton::pressed, this, [this, sign] { type(sign); });
        return target;
    };
    for (char letter = 'A'; letter <= 'Z'; ++letter)
        m_letters.append(typing(QLatin1Char(letter), QString(QLatin1Char(letter))));
    m_hyphen = typing(u'-', QStringLiteral("hyphen"));
    m_enye = typing(u'\u00D1', QStringLiteral("enye"));
    for (char digit = '0'; digit <= '9'; ++digit)
        m_digits.append(typing(QLatin1Char(digit), QString(QLatin1Char(digit))));
    m_digits.append(typing(u'-', QStringLiteral("hyphen2")));
    m_layer = key(QStringLiteral("layer"));
    m_space = typing(u' ', QStringLiteral("space"));
    m_delete = key(QStringLiteral("delete"));
    m_cancel = key(QStringLiteral("cancel"));
    m_set = key(QStringLiteral("set"));
    m_delete->setMark(Mark::Back);
    m_set->setRole(Role::Primary);
    connect(m_layer, &TapButton::pressed, this, [this] {
        m_digitsShown = !m_digitsShown;
        retranslate();
        arrange();
    });
    connect(m_delete, &TapButton::pressed, this, &LetterPad::deleteLast);
    connect(m_set, &TapButton::pressed, this, &LetterPad::set);
    connect(m_cancel, &TapButton::pressed, this, &LetterPad::cancelled);
    retranslate();
}

TapButton* LetterPad::key(const QString& id)
{
    auto* target = new TapButton(objectName() + u'.' + id, this);
    target->setSizeMm(Metrics::kMinimum, Metrics::kMinimum);
    target->setCapMm(7);
    return target;
}

void LetterPad::retranslate()
{
    for (TapButton* target : {m_layer, m_space, m_cancel, m_set})
        target->setCapMm(4.4);
    m_layer->setWord(m_digitsShown ? tr("A B C", "shows the letter keys")
                                   : tr("1 2 3", "shows the digit keys"));
    m_space->setWord(tr("Space", "the space between words"));
    m_delete->setAccessibleName(tr("Delete the last sign"));
    m_cancel->setWord(tr("Leave it"));
    m_set->setWord(tr("Set"));
    show();
}

void LetterPad::ask(const TextQuestion& question)
{
    m_question = question;
    m_typed = question.suggested;
    m_refusal.clear();
    m_digitsShown = false;
    m_title->setText(question.title);
    retranslate();
    arrange();
    setFocus();
}

void LetterPad::setRefusal(const QString& why)
{
    m_refusal = why;
    show();
}

void LetterPad::type(QChar sign)
{
    const bool pointless = sign == u' ' && (m_typed.isEmpty() || m_typed.endsWith(u' '));
    if (pointless || m_typed.size() >= m_question.longest)
        return;
    m_refusal.clear();
    m_typed += sign;
    show();
}

void LetterPad::deleteLast()
{
    m_typed.chop(1);
    m_refusal.clear();
    show();
}

void LetterPad::set(const TapStamp& stamp)
{
    const QString text = m_typed.trimmed();
    if (text.size() >= m_question.shortest)
        return emit accepted(text, stamp);
    setRefusal(tr("Type at least %n signs.", "", m_question.shortest));
    emit refused(m_refusal);
}

void LetterPad::show()
{
    m_shown->setText(m_typed.isEmpty() ? QStringLiteral("–") : m_typed);
    m_note->setText(m_refusal);
    m_note->setRole(m_refusal.isEmpty() ? Role::Neutral : Role::HeadsUp);
    m_note->setVisible(!m_refusal.isEmpty());
}

void LetterPad::keyPressEvent(QKeyEvent* event)
{
    const bool free = m_question.signs == TextQuestion::Signs::Any;
    const QString text = free ? event->text() : event->text().toUpper();
    if (event->key() == Qt::Key_Backspace)
        deleteLast();
    else if (text.size() == 1 && (isTypable(text.front()) || (free && text.front().isPrint())))
        type(text.front());
    else
        Control::keyPressEvent(event);
}

void LetterPad::changeEvent(QEvent* event)
{
    Control::changeEvent(event);
    if (event->type() != QEvent::LanguageChange)
        return;
    retranslate();
    arrange();
}

QSize LetterPad::sizeHint() const
{
    return sizeOfMm(8 * Metrics::kMinimum + 7 * Metrics::kGap,
                    kTypedMm + 4 * Metrics::kMinimum + 3 * Metrics::kGap);
}

void LetterPad::resizeEvent(QResizeEvent*) { arrange(); }

// What is asked and typed above; under it eight keys a row, and at the end of the last row what is
// done with it, which stays where it is when the digits come.
void LetterPad::arrange()
{
    constexpr int kRows = 4, kColumns = 8, kFirstAct = 27, kAfterN = 14;
    const Metrics& metrics = theme().metrics();
    const int keysHigh = kRows * metrics.ceilPx(Metrics::kMinimum) + (kRows - 1) * metrics.gapPx();
    const int top = std::clamp(height() - keysHigh, 0, metrics.ceilPx(kTypedMm)),
              third = width() / 3;
    m_title->setGeometry(0, 0, third, top);
    m_shown->setGeometry(third, 0, third, top);
    m_note->setGeometry(2 * third, 0, width() - 2 * third, top);
    const QRect keys(0, top, width(), height() - top);
    const bool isSpanish = hasEnye();
    QList<TapButton*> letters = m_letters;
    letters.insert(isSpanish ? kAfterN : letters.size(), isSpanish ? m_enye : m_hyphen);
    (isSpanish ? m_hyphen : m_enye)->hide();
    for (int i = 0; i < letters.size(); ++i) {
        letters.at(i)->setVisible(!m_digitsShown);
        letters.at(i)->setGeometry(cellOf(keys, {kColumns, kRows}, i));
    }
    for (int i = 0; i < m_digits.size(); ++i) {
        m_digits.at(i)->setVisible(m_digitsShown);
        m_digits.at(i)->setGeometry(cellOf(keys, {kColumns / 2, kRows}, i));
    }
    for (int i = kFirstAct; TapButton * target : {m_layer, m_space, m_delete, m_cancel, m_set})
        target->setGeometry(cellOf(keys, {kColumns, kRows}, i++));
}

}  // namespace bathside::ui
