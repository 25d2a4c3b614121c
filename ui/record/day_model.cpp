#include "ui/record/day_model.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <algorithm>

#include "core/trail/event_form.h"
#include "ui/text/facts.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

/// "5 Mar"; over more than one year "5 Mar 26".
QString shortDayText(std::chrono::sys_days day, bool saysYear)
{
    const QDate date = QDate(1970, 1, 1).addDays(day.time_since_epoch().count());
    return QLocale().toString(date,
                              saysYear ? QStringLiteral("d MMM yy") : QStringLiteral("d MMM"));
}

}  // namespace

void DayModel::begin(std::string zone, const DayRange& days)
{
    m_saysDay = days.first != days.last;
    m_saysYear = days.first.year() != days.last.year();
    m_zone = std::move(zone);
    m_bags.clear();
    m_lots.clear();
    m_shift = 0;
    if (m_rows.empty())
        return;
    beginRemoveRows({}, 0, rowCount() - 1);
    m_rows.clear();
    endRemoveRows();
}

void DayModel::append(const std::vector<Entry>& entries)
{
    std::vector<DayRow> fresh;
    for (const Entry& entry : entries) {
        if (entry.seq > lastSeq() && (fresh.empty() || entry.seq > fresh.back().entry.seq))
            fresh.push_back(rowFrom(entry));
    }
    if (fresh.empty())
        return;
    const auto before = m_rows.size();
    beginInsertRows({}, rowCount(), rowCount() + static_cast<int>(fresh.size()) - 1);
    for (DayRow& row : fresh) {
        learn(row);
        m_rows.push_back(std::move(row));
    }
    endInsertRows();
    for (std::size_t i = before; i < m_rows.size(); ++i)
        link(m_rows[i].entry.seq, m_rows[i].about);
}

void DayModel::mendBy(const std::vector<Entry>& later)
{
    for (const Entry& entry : later) {
        if (const auto event = eventOf(entry))
            link(entry.seq, aboutOf(event->fact));
    }
}

void DayModel::retranslate()
{
    if (!m_rows.empty())
        emit dataChanged(index(0), index(rowCount() - 1));
}

DayRow DayModel::rowFrom(const Entry& entry)
{
    DayRow row{.entry = entry, .fact = {}, .group = groupOf(entry.kind), .about = {}, .links = {}};
    if (const auto event = eventOf(entry)) {
        row.fact = event->fact;
        row.about = aboutOf(event->fact);
        if (std::holds_alternative<ShiftOpened>(event->fact))
            ++m_shift;
    }
    if (entry.person)
        row.about.persons.insert(entry.person->id.text);
    row.shift = m_shift;
    return row;
}

/// Which bag and lot an ampoule belongs to.
void DayModel::learn(const DayRow& row)
{
    if (!row.fact)
        return;
    if (const auto* out = std::get_if<AmpouleOut>(&*row.fact))
        m_lots[{row.shift, out->ampoule}] = {out->lot.text};
    if (const auto* bagged = std::get_if<AmpouleBagged>(&*row.fact))
        m_bags[{row.shift, bagged->ampoule}] = {bagged->bag.text};
}

/// Both ways; what was mended reads as mended from now on.
void DayModel::link(Seq from, const About& about)
{
    if (const int self = rowOf(from); self >= 0)
        m_rows[static_cast<std::size_t>(self)].links.insert(about.entries.begin(),
                                                            about.entries.end());
    for (const Seq seq : about.entries) {
        const int other = rowOf(seq);
        if (other < 0)
            continue;
        DayRow& mended = m_rows[static_cast<std::size_t>(other)];
        mended.links.insert(from);
        if (about.undoes)
            mended.mend = DayRow::Mend::TakenBack;
        else if (about.mends && mended.mend == DayRow::Mend::None)
            mended.mend = DayRow::Mend::Corrected;
        if (about.mends)
            relearn(mended, about);
        emit dataChanged(index(other), index(other));
    }
}

/// What was corrected is about its new bag or lot, too, and so is its ampoule.
void DayModel::relearn(DayRow& mended, const About& by)
{
    if (by.bags.empty() && by.lots.empty())
        return;
    mended.about.bags.insert(by.bags.begin(), by.bags.end());
    mended.about.lots.insert(by.lots.begin(), by.lots.end());
    if (!mended.fact || !mended.about.ampoule)
        return;
    const Place place{mended.shift, *mended.about.ampoule};
    if (std::holds_alternative<AmpouleOut>(*mended.fact))
        m_lots[place].insert(by.lots.begin(), by.lots.end());
    if (std::holds_alternative<AmpouleBagged>(*mended.fact))
        m_bags[place].insert(by.bags.begin(), by.bags.end());
    emit dataChanged(index(0), index(rowCount() - 1));
}

int DayModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant DayModel::data(const QModelIndex& index, int role) const
{
    if (!checkIndex(index, CheckIndexOption::IndexIsValid))
        return {};
    const DayRow& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
        case SentenceRole:
            return sentenceOf(row);
        case TimeRole:
            return timeText(row.entry.at);
        case PersonRole:
            return row.entry.person ? idText(row.entry.person->id) : QString();
        case MendRole:
            return static_cast<int>(row.mend);
        case SeqRole:
            return QVariant::fromValue<qint64>(row.entry.seq);
        case GroupRole:
            return static_cast<int>(row.group);
        case Qt::DisplayRole:
        case Qt::AccessibleTextRole:
            return QStringLiteral("%1 %2 %3")
                .arg(timeText(row.entry.at),
                     row.entry.person ? idText(row.entry.person->id) : QString(), sentenceOf(row));
        default:
            return {};
    }
}

/// Time alone on one day, after the day on several.
QString DayModel::timeText(WallTime at) const
{
    const QString time = localTimeText(at, m_zone);
    return m_saysDay ? shortDayText(localDay(at, m_zone), m_saysYear) + u' ' + time : time;
}

int DayModel::rowOf(Seq seq) const
{
    const auto found =
        std::ranges::lower_bound(m_rows, seq, {}, [](const DayRow& row) { return row.entry.seq; });
    return found == m_rows.end() || found->entry.seq != seq
               ? -1
               : static_cast<int>(found - m_rows.begin());
}

bool DayModel::isAboutBag(const DayRow& row, const std::string& bag) const
{
    if (row.about.bags.contains(bag) || !row.about.ampoule)
        return row.about.bags.contains(bag);
    const auto found = m_bags.find({row.shift, *row.about.ampoule});
    return found != m_bags.end() && found->second.contains(bag);
}

bool DayModel::isAboutLot(const DayRow& row, const std::string& lot) const
{
    if (row.about.lots.contains(lot) || !row.about.ampoule)
        return row.about.lots.contains(lot);
    const auto found = m_lots.find({row.shift, *row.about.ampoule});
    return found != m_lots.end() && found->second.contains(lot);
}

About DayModel::named() const
{
    About all;
    for (const DayRow& row : m_rows) {
        all.persons.insert(row.about.persons.begin(), row.about.persons.end());
        all.bags.insert(row.about.bags.begin(), row.about.bags.end());
        all.lots.insert(row.about.lots.begin(), row.about.lots.end());
    }
    for (auto* ids : {&all.persons, &all.bags, &all.lots})
        ids->erase(std::string());
    return all;
}

QString sentenceOf(const DayRow& row)
{
    return row.fact ? factText(*row.fact)
                    : DayModel::tr("An entry of a kind that this version does not know: %1")
                          .arg(fromCore(row.entry.kind));
}

}  // namespace bathside::ui
