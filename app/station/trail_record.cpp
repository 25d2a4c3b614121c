#include "app/station/trail_record.h"

#include <QThreadPool>
#include <algorithm>
#include <functional>

#include "app/station/record_places.h"
#include "app/station/trail_copy.h"
#include "app/station/trail_tell.h"
#include "core/trail/store/day_order.h"
#include "core/trail/store/search.h"
#include "core/trail/store/zone_days.h"

namespace bathside::app {
namespace {

using Guard = QPointer<TrailRecord>;

ui::Date localDay(std::string_view zone, WallTime at)
{
    const store::ZoneDays days;
    const auto offset = days.offset(zone, at).value_or(std::chrono::seconds{0});
    return ui::Date{std::chrono::floor<std::chrono::days>(at + offset)};
}

/// What of those runs comes after `after`.
std::vector<SeqRange> partAfter(const std::vector<SeqRange>& runs, Seq after)
{
    std::vector<SeqRange> rest;
    for (const SeqRange& run : runs) {
        if (run.last > after)
            rest.push_back({std::max(run.first, after + 1), run.last});
    }
    return rest;
}

/// From the first of these days that the zone has to the end of the last one; nothing where it has
/// none of them.
std::optional<LocalDay> spanOf(const std::string& zone, ui::DayRange wanted)
{
    const store::ZoneDays days;
    auto from = days.day(zone, wanted.first);
    while (!from && wanted.first < wanted.last) {
        wanted.first = ui::daysAfter(wanted.first, 1);
        from = days.day(zone, wanted.first);
    }
    auto to = days.day(zone, wanted.last);
    while (!to && wanted.first < wanted.last) {
        wanted.last = ui::daysAfter(wanted.last, -1);
        to = days.day(zone, wanted.last);
    }
    if (!from || !to)
        return std::nullopt;
    return LocalDay{from->start, to->end};
}

/// Which entries the record of these days is; nothing for days that the zone left out.
Result<std::vector<SeqRange>, StoreTrouble> runsOf(const store::TrailDb& trail,
                                                   const std::string& zone,
                                                   const ui::DayRange& days)
{
    const auto span = spanOf(zone, days);
    if (!span)
        return std::vector<SeqRange>();
    return store::rangesOf(trail, span->start, span->end);
}

/// Its own day, or that of the shift it belongs to, which was opened some days before.
std::optional<ui::Date> dayOf(const store::TrailDb& trail, const std::string& zone, Seq seq)
{
    constexpr int kLongestShift = 3;  // days
    std::optional<WallTime> at;
    const auto read = trail.read(seq, seq, [&](const Entry& entry) {
        at = entry.at;
        return true;
    });
    if (!read || !at)
        return std::nullopt;
    const ui::Date own = localDay(zone, *at);
    for (int back = 0; back <= kLongestShift; ++back) {
        const ui::Date day = ui::daysAfter(own, -back);
        const auto runs = runsOf(trail, zone, {day, day});
        if (runs && contain(*runs, seq))
            return day;
    }
    return std::nullopt;
}

struct Stretch {
    std::vector<Entry> entries;
    std::vector<Entry> pointing;  // at one of them
};

Result<Stretch, StoreTrouble> stretchOf(const store::TrailDb& trail, const std::string& zone,
                                        const ui::DayRange& days, const ui::EntryWish& wish,
                                        Seq before)
{
    store::Search wanted{.kinds = {},
                         .orMended = wish.orMended,
                         .person = wish.person,
                         .bag = wish.bag,
                         .lot = wish.lot};
    if (wish.isOfKind) {
        auto kinds = store::kindsIn(trail);
        if (!kinds)
            return failure(kinds.error());
        std::erase_if(*kinds, std::not_fn(wish.isOfKind));
        if (kinds->empty())
            return Stretch{};
        wanted.kinds = std::move(*kinds);
    }
    const auto runs = runsOf(trail, zone, days);
    if (!runs)
        return failure(runs.error());
    const auto seqs = store::search(trail, wanted, *runs, before, ui::RecordSource::kStretch);
    if (!seqs)
        return failure(seqs.error());
    auto entries = store::entriesAt(trail, *seqs);
    if (!entries)
        return failure(entries.error());
    auto pointing = store::pointingAt(trail, *seqs);
    if (!pointing)
        return failure(pointing.error());
    return Stretch{std::move(*entries), std::move(*pointing)};
}

}  // namespace

TrailRecord::TrailRecord(Session& session, QObject* parent)
    : ui::RecordSource(parent), m_session(session)
{
}

std::string TrailRecord::zone() const
{
    const auto& shift = m_session.station().bench().shift;
    return shift ? shift->zone : "UTC";
}

ui::Date TrailRecord::currentDay() const
{
    const Bench& bench = m_session.station().bench();
    const WallTime at =
        bench.shiftIsOpen() ? bench.shift->opened.at.wall : m_session.station().now().wall;
    return localDay(zone(), at);
}

std::vector<ui::RecordPlace> TrailRecord::places() const { return recordPlaces(); }

void TrailRecord::readDays(const ui::DayRange& days, Seq after)
{
    const auto& parts = m_session.earlier();
    if (parts.empty() || parts.back().last <= after)
        return readLastFile(days, after, store::EarlierDays{});
    QThreadPool::globalInstance()->start([=, guard = Guard(this), zone = zone()] {
        const auto span = spanOf(zone, days);
        auto earlier = span ? store::earlierDays(parts, *span) : store::EarlierDays{};
        std::erase_if(earlier.entries, [&](const Entry& entry) {
            return entry.seq <= after || !contain(earlier.runs, entry.seq);
        });
        tell(guard, [=](TrailRecord& record) {
            if (!earlier.entries.empty())
                emit record.entriesRead(days, earlier.entries);
            record.readLastFile(days, after, earlier);
        });
    });
}

void TrailRecord::readLastFile(const ui::DayRange& days, Seq after,
                               const store::EarlierDays& earlier)
{
    const Guard guard(this);
    const auto done = [guard, days](const std::optional<StoreTrouble>& trouble) {
        tell(guard, [=](TrailRecord& record) { emit record.dayRead(days, trouble); });
    };
    store::StoreThread& store = m_session.store();
    store.run(
        [=, &store, zone = zone()](store::TrailDb& trail) {
            const auto runs = runsOf(trail, zone, days);
            if (!runs)
                return done(runs.error());
            std::vector<SeqRange> all = earlier.runs;
            all.insert(all.end(), runs->begin(), runs->end());
            auto later = store::pointingBackAt(trail, all);
            if (!later)
                return done(later.error());
            later->insert(later->begin(), earlier.later.begin(), earlier.later.end());
            store.readSlices(
                partAfter(*runs, after), kSlice,
                [=](std::vector<Entry> entries) {
                    tell(guard, [days, entries = std::move(entries)](TrailRecord& record) {
                        emit record.entriesRead(days, entries);
                    });
                },
                [=, later = *later](const Result<void, StoreTrouble>& read) {
                    tell(guard, [=](TrailRecord& record) { emit record.laterRead(days, later); });
                    done(read ? std::nullopt : std::optional(read.error()));
                });
        },
        [=](const StoreTrouble& trouble) { done(trouble); });
}

Seq TrailRecord::beginsAfter() const
{
    const auto& parts = m_session.earlier();
    return parts.empty() ? 0 : parts.back().last;
}

void TrailRecord::readStretch(const ui::DayRange& days, const ui::EntryWish& wish, Seq before)
{
    const Guard guard(this);
    const auto done = [guard, days](const std::optional<StoreTrouble>& trouble) {
        tell(guard, [=](TrailRecord& record) { emit record.dayRead(days, trouble); });
    };
    m_session.store().run(
        [=, zone = zone()](store::TrailDb& trail) {
            const auto stretch = stretchOf(trail, zone, days, wish, before);
            if (!stretch)
                return done(stretch.error());
            tell(guard, [days, read = *stretch](TrailRecord& record) {
                emit record.entriesRead(days, read.entries);
                emit record.laterRead(days, read.pointing);
            });
            done({});
        },
        [=](const StoreTrouble& trouble) { done(trouble); });
}

void TrailRecord::findDay(Seq seq)
{
    const Guard guard(this);
    const auto found = [guard, seq](const std::optional<ui::Date>& day) {
        tell(guard, [=](TrailRecord& record) { emit record.dayFound(seq, day); });
    };
    const auto& parts = m_session.earlier();
    if (!parts.empty() && seq <= parts.back().last)
        return QThreadPool::globalInstance()->start([=, zone = zone()] {
            const auto at = store::openingFor(parts, seq);
            found(at ? std::optional(localDay(zone, *at)) : std::nullopt);
        });
    m_session.store().run(
        [=, zone = zone()](store::TrailDb& trail) { found(dayOf(trail, zone, seq)); },
        [=](const StoreTrouble&) { found(std::nullopt); });
}

void TrailRecord::copyTrail(const QString& folder)
{
    app::copyTrail(m_session, folder, [guard = Guard(this)](const ui::CopyAnswer& answer) {
        if (!guard)
            return;
        guard->m_session.noteCopy(answer);
        emit guard->copied(answer);
    });
}

}  // namespace bathside::app
