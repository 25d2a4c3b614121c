#include "app/station/copy_desk.h"

#include <QPointer>

#include "app/station/record_places.h"
#include "app/station/trail_copy.h"
#include "core/record/copy_due.h"

namespace bathside::app {

CopyDesk::CopyDesk(Session& session, const ui::Preferences& preferences, QObject* parent)
    : m_session(session), m_preferences(preferences)
{
    setParent(parent);
    connect(&m_session.model(), &ui::StationModel::changed, this, &CopyDesk::look);
    connect(&m_preferences, &ui::Preferences::changed, this, [this] {
        m_failedAt.reset();  // perhaps another place
        m_wrong = ui::CopyNews::Wrong::Nothing;
        emit changed();
    });
}

std::vector<ui::RecordPlace> CopyDesk::places() const { return recordPlaces(); }

QString CopyDesk::folder() const
{
    const QString& chosen = m_preferences.now().copies.folder;
    return chosen.isEmpty() ? recordPlaces().front().folder : chosen;
}

ui::CopyNews CopyDesk::news() const
{
    using Doing = ui::CopyNews::Doing;
    const Bench& bench = m_session.station().bench();
    ui::CopyNews news;
    news.doing = m_isCopying ? Doing::Copying : m_isWanted ? Doing::Waiting : Doing::Nothing;
    news.wrong = m_wrong;
    news.last = m_last;
    if (bench.backedUp)
        news.madeAt = bench.backedUp->at;
    news.isLate = isCopyLate(m_preferences.now().copies.plan(), bench, m_session.station().now());
    return news;
}

void CopyDesk::copyNow()
{
    m_isWanted = true;
    look();
    emit changed();
}

void CopyDesk::look()
{
    const Stamp now = m_session.station().now();
    const Bench& bench = m_session.station().bench();
    if (m_isCopying || !isTimeForCopies(bench, now))
        return;
    // One that was written and is not good stays there: no more of them by themselves.
    const bool isTooSoon = m_wrong == ui::CopyNews::Wrong::NotSound ||
                           (m_failedAt && elapsed(*m_failedAt, now).time < kAgain);
    const bool isDue = isCopyDue(m_preferences.now().copies.plan(), bench, now);
    if (m_isWanted || (isDue && !isTooSoon))
        start();
}

void CopyDesk::start()
{
    m_isWanted = false;
    const QString where = folder();
    if (isStickMissing(where)) {
        m_wrong = ui::CopyNews::Wrong::NotThere;
        m_failedAt = m_session.station().now();
        emit changed();
        return;
    }
    m_isCopying = true;
    copyTrail(m_session, where, [desk = QPointer<CopyDesk>(this)](const ui::CopyAnswer& answer) {
        if (desk)
            desk->take(answer);
    });
    emit changed();
}

void CopyDesk::take(const ui::CopyAnswer& answer)
{
    using Wrong = ui::CopyNews::Wrong;
    m_isCopying = false;
    m_last = answer;
    m_wrong = answer.trouble                                          ? Wrong::NotWritten
              : answer.check.isSound() && !answer.check.chain.badSeal ? Wrong::Nothing
                                                                      : Wrong::NotSound;
    m_failedAt.reset();
    if (m_wrong != Wrong::Nothing)
        m_failedAt = m_session.station().now();
    m_session.noteCopy(answer);
    emit changed();
}

}  // namespace bathside::app
