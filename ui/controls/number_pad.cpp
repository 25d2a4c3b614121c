#include "ui/controls/number_pad.h"

#include <QEvent>
#include <QKeyEvent>
#include <QLocale>
#include <algorithm>
#include <limits>

#include "ui/controls/grid.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/text/numbers.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr qsizetype kLongest = 9;
constexpr qint64 kMost = std::numeric_limits<qint64>::max();
constexpr double kReadoutMm = 62;  // width of the left part: what is asked and typed
constexpr double kNoteMm = 40;     // height of what is said under it, at most: a few sentences

const QString kMinus = QStringLiteral("−");  // shown; typed as a hyphen

QString decimalSign() { return QLocale().decimalPoint(); }

}  // namespace

NumberPad::NumberPad(const QString& place, QWidget* parent)
    : Control(parent), m_title(new Label(this)), m_shown(new Label(this)), m_note(new Label(this))
{
    setObjectName(place);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    m_title->setWeight(Weight::Strong);
    m_shown->setCapMm(12, Metrics::kWords);
    m_shown->setWeight(Weight::Strong);
    m_note->setCapMm(4, Metrics::kSmall);
    for (int digit = 0; digit < 10; ++digit) {
        TapButton* target = key(QString::number(digit));
        target->setWord(QString::number(digit));
        connect(target, &TapButton::pressed, this,
                [this, digit] { type(QLocale::c().toString(digit).front()); });
        m_digits.append(target);
    }
    m_sign = key(QStringLiteral("sign"));
    m_minus = key(QStringLiteral("minus"));
    m_delete = key(QStringLiteral("delete"));
    m_set = key(QStringLiteral("set"));
    m_cancel = key(QStringLiteral("cancel"));
    m_delete->setMark(Mark::Back);
    m_set->setRole(Role::Primary);
    connect(m_sign, &TapButton::pressed, this, [this] { type(u'.'); });
    connect(m_minus, &TapButton::pressed, this, &NumberPad::changeSign);
    connect(m_delete, &TapButton::pressed, this, &NumberPad::deleteLast);
    connect(m_set, &TapButton::pressed, this, &NumberPad::set);
    connect(m_cancel, &TapButton::pressed, this, &NumberPad::cancelled);
    retranslate();
}

TapButton* NumberPad::key(const QString& id)
{
    auto* target = new TapButton(objectName() + u'.' + id, this);
    target->setSizeMm(Metrics::kMinimum, Metrics::kMinimum);
    target->setCapMm(8);
    return target;
}

void NumberPad::retranslate()
{
    m_sign->setWord(decimalSign());
    m_minus->setWord(kMinus);
    m_minus->setAccessibleName(tr("Change the sign"));
    m_delete->setAccessibleName(tr("Delete the last sign"));
    m_set->setWord(tr("Set"));
    m_cancel->setWord(tr("Leave it"));
    m_cancel->setCapMm(4.4);
    m_set->setCapMm(6);
    show();
}

void NumberPad::ask(const NumberQuestion& question)
{
    m_question = question;
    m_typed.clear();
    m_refusal.clear();
    m_title->setText(question.title);
    m_sign->setVisible(question.typedDecimals > 0);
    m_minus->setVisible(question.minus);
    show();
    arrange();
    setFocus();
}

std::optional<qint64> NumberPad::value() const
{
    if (isEmpty())
        return m_question.suggested;
    const auto typed = parseScaled(m_typed, m_question.typedDecimals, QLocale());
    if (!typed)
        return std::nullopt;
    qint64 scaled = *typed;
    for (int i = m_question.typedDecimals; i < m_question.decimals; ++i) {
        if (std::abs(scaled) > kMost / 10)
            return scaled < 0 ? -kMost : kMost;  // beyond any range
        scaled *= 10;
    }
    return scaled;
}

void NumberPad::setRefusal(const QString& why)
{
    m_refusal = why;
    show();
}

void NumberPad::type(QChar sign)
{
    const bool isSign = !sign.isDigit();
    const bool hasSign = m_typed.contains(decimalSign());
    const auto decimals = hasSign ? m_typed.size() - m_typed.indexOf(decimalSign()) - 1 : 0;
    if (isSign && (hasSign || m_question.typedDecimals == 0))
        return;
    if (m_typed.size() >= kLongest || (!isSign && hasSign && decimals >= m_question.typedDecimals))
        return;
    m_refusal.clear();
    m_typed += isSign ? decimalSign() : QString(sign);
    show();
}

void NumberPad::deleteLast()
{
    m_typed.chop(1);
    m_refusal.clear();
    show();
}

void NumberPad::changeSign()
{
    if (!m_question.minus)
        return;
    if (m_typed.startsWith(u'-'))
        m_typed.remove(0, 1);
    else
        m_typed.prepend(u'-');
    m_refusal.clear();
    show();
}

bool NumberPad::isEmpty() const { return m_typed.isEmpty() || m_typed == QStringLiteral("-"); }

void NumberPad::set(const TapStamp& stamp)
{
    if (m_question.hidden && !m_typed.isEmpty())
        return emit accepted(0, stamp);
    const auto told = value();
    if (told && *told >= m_question.lowest && *told <= m_question.highest)
        return emit accepted(*told, stamp);
    setRefusal(isEmpty() ? tr("Type a number first.")
                         : tr("That is outside what can be. %1").arg(rangeText()));
    emit refused(m_refusal);
}

QString NumberPad::rangeText() const
{
    const auto text = [this](qint64 value) {
        return scaledText(value, m_question.decimals, m_question.typedDecimals, QLocale());
    };
    return tr("From %1 to %2 %3.", "lowest, highest, unit")
        .arg(text(m_question.lowest), text(m_question.highest), m_question.unit)
        .replace(QStringLiteral(" ."), QStringLiteral("."));
}

void NumberPad::show()
{
    if (m_question.hidden) {
        m_shown->setText(m_typed.isEmpty() ? QStringLiteral("–")
                                           : QString(m_typed.size(), QChar(0x2022)));
        m_shown->setSoft(false);
        return showNote();
    }
    const bool untouched = m_typed.isEmpty() && m_question.suggested;
    const QString number = untouched ? scaledText(*m_question.suggested, m_question.decimals,
                                                  m_question.typedDecimals, QLocale())
                                     : QString(m_typed).replace(u'-', kMinus);
    m_shown->setText(QStringLiteral("%1 %2")
                         .arg(number.isEmpty() ? QStringLiteral("–") : number, m_question.unit)
                         .trimmed());
    m_shown->setSoft(untouched);
    showNote();
}

void NumberPad::showNote()
{
    const bool isPlain = m_question.hidden || !m_question.note.isEmpty();
    const QString note = isPlain ? m_question.note : rangeText();
    m_note->setText(m_refusal.isEmpty() ? note : m_refusal);
    m_note->setRole(m_refusal.isEmpty() ? Role::Neutral : Role::HeadsUp);
}

void NumberPad::keyPressEvent(QKeyEvent* event)
{
    const QString text = event->text();
    if (event->key() == Qt::Key_Backspace)
        deleteLast();
    else if (text.size() == 1 &&
             (text.front().isDigit() || text == decimalSign() || text.front() == u'.'))
        type(text.front());
    else if (text == QStringLiteral("-"))
        changeSign();
    else
        Control::keyPressEvent(event);
}

void NumberPad::changeEvent(QEvent* event)
{
    Control::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) {
        m_typed.clear();  // typed with another sign
        retranslate();
    }
}

QSize NumberPad::sizeHint() const
{
    return sizeOfMm(kReadoutMm + 5 * Metrics::kMinimum + 5 * Metrics::kGap, 3 * 20 + 2 * 5);
}

void NumberPad::resizeEvent(QResizeEvent*) { arrange(); }

// What is asked at the left; at the right the digits: in three columns where there is the height,
// else in five.
void NumberPad::arrange()
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx(), left = std::min(metrics.ceilPx(kReadoutMm), width() * 2 / 5);
    m_title->setGeometry(0, 0, left, metrics.ceilPx(14));
    m_title->setMaxLines(2);
    m_shown->setGeometry(0, metrics.ceilPx(15), left, metrics.ceilPx(20));
    m_note->setGeometry(0, metrics.ceilPx(37), left,
                        std::clamp(height() - metrics.ceilPx(37), 0, metrics.ceilPx(kNoteMm)));
    const QRect keys(left + gap, 0, width() - left - gap, height());
    const bool high = height() >= metrics.ceilPx(4 * Metrics::kMinimum + 3 * Metrics::kGap);
    const GridShape shape = high ? GridShape{4, 4} : GridShape{5, 3};
    const auto at = [&](TapButton* target, int cell, int across = 1) {
        target->setGeometry(cellOf(keys, shape, cell, across));
    };
    if (high) {
        for (int digit = 1; digit < 10; ++digit)
            at(m_digits.at(digit), (2 - (digit - 1) / 3) * 4 + (digit - 1) % 3);
        at(m_digits.at(0), 12);
        at(m_sign, 13);
        at(m_delete, 14);
        at(m_cancel, 3);
        at(m_minus, 7);
        m_set->setGeometry(
            cellOf(keys, shape, m_question.minus ? 11 : 7).united(cellOf(keys, shape, 15)));
        return;
    }
    for (int digit = 0; digit < 10; ++digit)
        at(m_digits.at(digit), digit == 0 ? 9 : digit - 1);
    at(m_sign, 10);
    at(m_delete, 11);
    at(m_cancel, 12);
    at(m_minus, 13);
    at(m_set, m_question.minus ? 14 : 13, m_question.minus ? 1 : 2);
}

}  // namespace bathside::ui
