#include "app/station/trail_charts.h"

#include <QThreadPool>
#include <algorithm>
#include <memory>

#include "app/station/trail_tell.h"
#include "core/trail/event_form.h"
#include "core/trail/store/day_order.h"
#include "core/trail/store/queries.h"

namespace bathside::app {
namespace {

using ChartsGuard = QPointer<TrailCharts>;

using Spans = Result<std::vector<ShiftSpan>, StoreTrouble>;

/// The shifts that have any of these entries.
Spans shiftsWith(const store::TrailDb& trail, const std::vector<SeqRange>& stretches)
{
    constexpr WallTime kEnd{std::chrono::sys_days(std::chrono::year(9999) / 1 / 1)};
    if (stretches.empty())
        return std::vector<ShiftSpan>();
    auto shifts = store::shiftsOpened(trail, WallTime{}, kEnd);
    if (shifts)
        std::erase_if(*shifts, [&](const ShiftSpan& shift) {
            return std::ranges::none_of(stretches, [&](const SeqRange& stretch) {
                return stretch.first <= shift.last && stretch.last >= shift.opened;
            });
        });
    return shifts;
}

/// In order, each entry once. Either a shift is within a run or it is apart from it.
std::vector<SeqRange> withShifts(std::vector<SeqRange> runs, const std::vector<ShiftSpan>& shifts)
{
    for (const ShiftSpan& shift : shifts) {
        const bool isThere = std::ranges::any_of(runs, [&](const SeqRange& run) {
            return run.first <= shift.opened && run.last >= shift.last;
        });
        if (!isThere)
            runs.push_back({shift.opened, shift.last});
    }
    std::ranges::sort(runs, {}, &SeqRange::first);
    return runs;
}

/// Reads and folds in turns: a slice on the store's thread, its events on another.
class PointsWalk : public std::enable_shared_from_this<PointsWalk> {
public:
    PointsWalk(store::StoreThread& store, ChartsGuard guard, ui::PointsWanted wanted)
        : m_store(store), m_guard(std::move(guard)), m_wanted(std::move(wanted))
    {
    }

    void queue()
    {
        m_store.run(
            [self = shared_from_this()](store::TrailDb& trail) { self->go(trail); },
            [self = shared_from_this()](const StoreTrouble& trouble) { self->end(trouble); });
    }

private:
    using Slice = std::vector<Entry>;

    void go(const store::TrailDb& trail)
    {
        if (const auto planned = plan(trail); !planned)
            return end(planned.error());
        if (m_runs.empty())
            return end({});
        const bool isContext = !m_isInRun;
        auto slice = isContext ? context(trail) : next(trail);
        if (!slice)
            return end(slice.error());
        QThreadPool::globalInstance()->start(
            [self = shared_from_this(), entries = std::move(*slice), isContext] {
                self->fold(entries, isContext);
                self->queue();
            });
    }

    /// Which entries are wanted; once.
    Result<void, StoreTrouble> plan(const store::TrailDb& trail)
    {
        if (std::exchange(m_isPlanned, true))
            return {};
        const store::ZoneDays days;
        const auto zone = store::zoneOf(trail);
        if (!zone)
            return failure(zone.error());
        const auto first = days.day(*zone, m_wanted.first);
        const auto last = days.day(*zone, m_wanted.last);
        if (first && last) {
            auto runs = store::rangesOf(trail, first->start, last->end);
            if (!runs)
                return failure(runs.error());
            m_days = std::move(*runs);
        }
        const auto besides = shiftsWith(trail, m_wanted.baselines);
        if (!besides)
            return failure(besides.error());
        m_runs = withShifts(m_days, *besides);
        return {};
    }

    /// What the next run is judged by, since the one before.
    Result<Slice, StoreTrouble> context(const store::TrailDb& trail)
    {
        auto entries = store::carried(trail, {kContextKinds.begin(), kContextKinds.end()},
                                      m_runs.front().first);
        if (entries)
            std::erase_if(*entries, [this](const Entry& entry) { return entry.seq < m_next; });
        m_next = m_runs.front().first;
        m_isInRun = true;
        return entries;
    }

    Result<Slice, StoreTrouble> next(const store::TrailDb& trail)
    {
        const SeqRange run = m_runs.front();
        const Seq to = std::min(run.last, m_next + kSlice - 1);
        Slice slice;
        const auto read = trail.read(m_next, to, [&](const Entry& entry) {
            slice.push_back(entry);
            return true;
        });
        if (!read)
            return failure(read.error());
        m_next = to + 1;
        m_isInRun = m_next <= run.last;
        if (!m_isInRun)
            m_runs.erase(m_runs.begin());
        return slice;
    }

    /// A kind that this version does not know gives no point.
    void fold(const Slice& entries, bool isContext)
    {
        for (const Entry& entry : entries) {
            const auto event = eventOf(entry);
            if (!event)
                continue;
            if (isContext)
                m_fold.begin(*event);
            else
                m_fold.take(*event, entry.station);
        }
    }

    void end(const std::optional<StoreTrouble>& trouble)
    {
        ui::PointsAnswer answer{m_wanted.ask, {m_fold.finish(), m_days}, trouble};
        tell(m_guard,
             [answer = std::move(answer)](TrailCharts& charts) { emit charts.pointsRead(answer); });
    }

    store::StoreThread& m_store;
    ChartsGuard m_guard;
    ui::PointsWanted m_wanted;
    std::vector<SeqRange> m_days, m_runs;  // the runs that are still to be read
    Seq m_next = 0;
    bool m_isPlanned = false, m_isInRun = false;
    ChartFold m_fold;
};

}  // namespace

TrailCharts::TrailCharts(Session& session, QObject* parent)
    : ui::ChartSource(parent), m_session(session)
{
}

void TrailCharts::readPoints(const ui::PointsWanted& wanted)
{
    std::make_shared<PointsWalk>(m_session.store(), ChartsGuard(this), wanted)->queue();
}

void TrailCharts::readShift(Seq of)
{
    const ChartsGuard guard(this);
    const auto done = [guard, of](const std::optional<StoreTrouble>& trouble) {
        tell(guard, [=](TrailCharts& charts) { emit charts.shiftRead(of, trouble); });
    };
    store::StoreThread& store = m_session.store();
    store.run(
        [=, &store](store::TrailDb& trail) {
            const auto shifts = shiftsWith(trail, {{of, of}});
            if (!shifts)
                return done(shifts.error());
            store.readSlices(
                withShifts({}, *shifts), kSlice,
                [=](std::vector<Entry> entries) {
                    tell(guard, [of, entries = std::move(entries)](TrailCharts& charts) {
                        emit charts.entriesRead(of, entries);
                    });
                },
                [=](const Result<void, StoreTrouble>& read) {
                    done(read ? std::nullopt : std::optional(read.error()));
                });
        },
        done);
}

}  // namespace bathside::app
