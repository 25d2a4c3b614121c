#include "ui/controls/fact_list.h"

#include <QPainter>
#include <algorithm>

#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kRowMm = 6.2, kTickMm = 4.6;

Mark tickOf(const FactLine& fact)
{
    if (fact.refused)
        return Mark::Cross;
    return fact.recorded ? Mark::Tick : Mark::OpenTick;
}

}  // namespace

FactList::FactList(int rows, QWidget* parent) : Control(parent), m_rows(rows)
{
    setObjectName(QStringLiteral("facts"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void FactList::setFacts(const QList<FactLine>& facts)
{
    if (facts == m_facts)
        return;
    m_facts = facts.first(std::min<qsizetype>(facts.size(), m_rows));
    QStringList words;
    for (const FactLine& fact : m_facts)
        words.append(QStringLiteral("%1 %2").arg(fact.time, fact.text));
    suggestAccessibleName(words.join(QStringLiteral("; ")));
    update();
}

QSize FactList::sizeHint() const { return sizeOfMm(80, kRowMm * m_rows); }

QRectF FactList::row(int index) const
{
    const double each = height() / static_cast<double>(m_rows);
    return {0, index * each, width() + 0.0, each};
}

QList<PlacedText> FactList::texts() const
{
    const Metrics& metrics = theme().metrics();
    const double tick = metrics.px(kTickMm + 2);
    const bool timed =
        std::ranges::any_of(m_facts, [](const FactLine& fact) { return !fact.time.isEmpty(); });
    const double time =
        timed ? widthOf(QStringLiteral("00:00"), Metrics::kSmall, Weight::Regular) + metrics.px(3)
              : 0;
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    QList<PlacedText> texts;
    for (int i = 0; i < m_facts.size(); ++i) {
        const QRectF at = row(i).adjusted(tick, 0, 0, 0);
        QRectF when = at, what = at.adjusted(time, 0, 0, 0);
        when.setWidth(time);
        // the words come before the time where there is not room for both
        const bool both = m_rows > 1 || widthOf(m_facts.at(i).text, Metrics::kSmall,
                                                Weight::Regular) <= what.width();
        if (!both)
            what = at;
        texts.append({both ? m_facts.at(i).time : QString(),
                      when,
                      left,
                      {Metrics::kSmall, Metrics::kSmall, Weight::Regular, 1},
                      theme().palette().softInk()});
        texts.append(
            {m_facts.at(i).text,
             what,
             left,
             {i == 0 ? 3.8 : Metrics::kSmall, Metrics::kSmall,
              i == 0 && m_rows > 1 ? Weight::Strong : Weight::Regular, m_rows == 1 ? 1 : 2},
             theme().palette().ink()});
    }
    return texts;
}

void FactList::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const double side = theme().metrics().px(kTickMm);
    for (int i = 0; i < m_facts.size(); ++i) {
        const QRectF at = row(i);
        drawMark(painter, {at.left(), at.center().y() - side / 2, side, side},
                 tickOf(m_facts.at(i)), theme().palette().ink());
    }
    drawAll(painter, texts());
}

}  // namespace bathside::ui
