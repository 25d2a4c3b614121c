#include "ui/controls/page_bar.h"

#include <QResizeEvent>

#include "ui/controls/grid.h"
#include "ui/controls/tap_button.h"
#include "ui/theme/theme.h"

namespace bathside::ui {

PageBar::PageBar(const QString& place, QWidget* parent) : Control(parent), m_place(place)
{
    setObjectName(place);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void PageBar::setPages(const QList<Choice>& pages)
{
    m_pages = pages;
    while (m_targets.size() > pages.size())
        m_targets.takeLast()->deleteLater();
    while (m_targets.size() < pages.size()) {
        auto* target = new TapButton(m_place, this);
        target->setSizeMm(Metrics::kPrimary, Metrics::kMinimum);
        const auto index = m_targets.size();
        connect(target, &TapButton::pressed, this,
                [this, index](const TapStamp& stamp) { emit chosen(m_pages.at(index).id, stamp); });
        m_targets.append(target);
    }
    for (qsizetype i = 0; i < pages.size(); ++i) {
        const Choice& page = pages.at(i);
        TapButton* target = m_targets.at(i);
        target->setPlace(m_place + u'.' + page.id);
        target->setWord(page.word);
        target->setLine(page.line);
        target->setMark(page.mark);
        target->setRole(page.role);
        target->setReason(page.reason);
        target->show();
    }
    setCurrent(m_current);
    arrange();
}

void PageBar::setCurrent(const QString& id)
{
    m_current = id;
    for (qsizetype i = 0; i < m_targets.size(); ++i)
        m_targets.at(i)->setChosen(m_pages.at(i).id == id);
}

QSize PageBar::sizeHint() const
{
    const auto count = static_cast<double>(std::max<qsizetype>(1, m_pages.size()));
    return sizeOfMm(count * 30 + (count - 1) * Metrics::kGap, Metrics::kMinimum);
}

void PageBar::resizeEvent(QResizeEvent*) { arrange(); }

void PageBar::arrange()
{
    const auto count = static_cast<int>(m_targets.size());
    for (int i = 0; i < count; ++i)
        m_targets.at(i)->setGeometry(cellOf(rect(), {count, 1}, i));
}

}  // namespace bathside::ui
