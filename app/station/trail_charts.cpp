#include "app/station/trail_charts.h"

#include <QThreadPool>
#include <algorithm>
#include <memory>

#include "app/station/trail_tell.h"
#include "core/facts/points_at.h"
#include "core/record/export.h"
#include "core/trail/event_form.h"
#include "core/trail/store/day_order.h"
#include "core/trail/store/earlier_days.h"
#include "core/trail/store/queries.h"

namespace bathside::app {
namespace {

using ChartsGuard = QPointer<TrailCharts>;

using Spans = Result<std::vector<ShiftSpan>, StoreTrouble>;

void keepThoseWith(std::vector<ShiftSpan>& shifts, const std::vector<SeqRange>& stretches)
{
    std::erase_if(shifts, [&](const ShiftSpan& shift) {
        return std::ranges::none_of(stretches, [&](const SeqRange& stretch) {
            return stretch.first <= shift.last && stretch.last >= shift.opened;
        });
    });
}

Spans allShifts(const store::TrailDb& trail)
{
    constexpr WallTime kEnd{std::chrono::sys_days(std::chrono::year(9999) / 1 / 1)};
    return store::shiftsOpened(trail, WallTime{}, kEnd);
}

/// The shifts that have any of these entries.
Spans shiftsWith(const store::TrailDb& trail, const std::vector<SeqRange>& stretches)
{
    auto shifts = stretches.empty() ? Spans() : allShifts(trail);
    if (shifts)
        keepThoseWith(*shifts, stretches);
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

/// A shift that the damage went through goes on in the last file, to the first opening there.
Result<SeqRange, StoreTrouble> restOfShift(const store::TrailDb& trail)
{
    const auto shifts = allShifts(trail);
    if (!shifts)
        return failure(shifts.error());
    return SeqRange{trail.origin().after.seq + 1,
                    shifts->empty() ? trail.head().seq : shifts->front().opened - 1};
}

/// Reads and folds in turns: a slice on the store's thread, its events on another. What earlier
/// files have of it comes first, whole, and never touches the store's thread.
class PointsWalk : public std::enable_shared_from_this<PointsWalk> {
public:
    PointsWalk(Session& session, ChartsGuard guard, ui::PointsWanted wanted)
        : m_store(session.store()),
          m_earlier(session.earlier()),
          m_guard(std::move(guard)),
          m_wanted(std::move(wanted))
    {
        if (const auto& shift = session.station().bench().shift)
            m_zone = shift->zone;
    }

    void start()
    {
        if (m_earlier.empty())
            return queue();
        QThreadPool::globalInstance()->start([self = shared_from_this()] {
            self->foldEarlier();
            tell(self->m_guard, [self](TrailCharts&) { self->queue(); });
        });
    }

private:
    using Slice = std::vector<Entry>;

    void queue()
    {
        m_store.run(
            [self = shared_from_this()](store::TrailDb& trail) { self->go(trail); },
            [self = shared_from_this()](const StoreTrouble& trouble) { self->end(trouble); });
    }

    [[nodiscard]] std::optional<LocalDay> period() const
    {
        const store::ZoneDays days;
        const auto first = days.day(m_zone, m_wanted.first);
        const auto last = days.day(m_zone, m_wanted.last);
        return first && last ? std::optional(LocalDay{first->start, last->end}) : std::nullopt;
    }

    void foldEarlier()
    {
        DayFinder finder;
        store::readEarlier(m_earlier, [&](const Entry& entry) { finder.take(entry); });
        if (const auto days = period())
            m_days = finder.record(days->start, days->end);
        auto besides = finder.shifts();
        keepThoseWith(besides, m_wanted.baselines);
        const auto runs = withShifts(m_days, besides);
        store::readEarlier(m_earlier, [&](const Entry& entry) {
            const bool isWanted = contain(runs, entry.seq);
            if (isWanted || std::ranges::find(kContextKinds, entry.kind) != kContextKinds.end())
                fold({entry}, !isWanted);
        });
        m_next = m_earlier.back().last + 1;
        m_goesOn = contain(runs, m_earlier.back().last) && !finder.shifts().empty() &&
                   !finder.shifts().back().closed;
    }

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
        std::vector<SeqRange> own;
        if (const auto days = period()) {
            auto runs = store::rangesOf(trail, days->start, days->end);
            if (!runs)
                return failure(runs.error());
            own = std::move(*runs);
        }
        const auto besides = shiftsWith(trail, m_wanted.baselines);
        if (!besides)
            return failure(besides.error());
        m_runs = withShifts(own, *besides);
        std::ranges::move(own, std::back_inserter(m_days));
        m_days = joined(std::move(m_days));
        return m_goesOn ? addRest(trail) : Result<void, StoreTrouble>();
    }

    Result<void, StoreTrouble> addRest(const store::TrailDb& trail)
    {
        const auto rest = restOfShift(trail);
        if (!rest)
            return failure(rest.error());
        if (rest->first > rest->last)
            return {};
        m_runs.push_back(*rest);
        m_runs = joined(std::move(m_runs));
        if (contain(m_days, rest->first - 1))
            m_days.push_back(*rest);
        m_days = joined(std::move(m_days));
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
    std::vector<store::SoundPart> m_earlier;
    ChartsGuard m_guard;
    ui::PointsWanted m_wanted;
    std::vector<SeqRange> m_days, m_runs;  // the runs that are still to be read
    std::string m_zone = "UTC";
    Seq m_next = 0;
    bool m_isPlanned = false, m_isInRun = false;
    bool m_goesOn = false;  // the last shift of the earlier files is wanted and was open
    ChartFold m_fold;
};

void tellDone(const ChartsGuard& guard, Seq of, ui::AroundShift around)
{
    tell(guard, [of, around = std::move(around)](TrailCharts& charts) {
        emit charts.shiftRead(of, around);
    });
}

void tellTrouble(const ChartsGuard& guard, Seq of, const StoreTrouble& trouble)
{
    tellDone(guard, of, {.context = {}, .later = {}, .trouble = trouble});
}

void tellEntries(const ChartsGuard& guard, Seq of, std::vector<Entry> entries)
{
    tell(guard, [of, entries = std::move(entries)](TrailCharts& charts) {
        emit charts.entriesRead(of, entries);
    });
}

void tellRuns(store::StoreThread& store, const ChartsGuard& guard, Seq of,
              std::vector<SeqRange> runs, const ui::AroundShift& around)
{
    store.readSlices(
        std::move(runs), kSlice,
        [=](std::vector<Entry> entries) { tellEntries(guard, of, std::move(entries)); },
        [=](const Result<void, StoreTrouble>& read) {
            ui::AroundShift answer = around;
            if (!read)
                answer.trouble = read.error();
            tellDone(guard, of, std::move(answer));
        });
}

bool isContext(const Entry& entry)
{
    return std::ranges::find(kContextKinds, entry.kind) != kContextKinds.end();
}

bool pointsInto(const Entry& entry, const ShiftSpan& shift)
{
    const auto event = eventOf(entry);
    return event && std::ranges::any_of(pointsAt(event->fact), [&](Seq seq) {
               return seq >= shift.opened && seq <= shift.last;
           });
}

/// What the file has around those shifts.
Result<ui::AroundShift, StoreTrouble> aroundOf(const store::TrailDb& trail,
                                               const std::vector<ShiftSpan>& shifts)
{
    ui::AroundShift around;
    if (shifts.empty())
        return around;
    auto context =
        store::carried(trail, {kContextKinds.begin(), kContextKinds.end()}, shifts.front().opened);
    if (!context)
        return failure(context.error());
    auto later = store::pointingBackAt(trail, withShifts({}, shifts));
    if (!later)
        return failure(later.error());
    return ui::AroundShift{
        .context = std::move(*context), .later = std::move(*later), .trouble = {}};
}

/// Of a shift that was opened in an earlier file; `rest`: what the last file has of one that was
/// open at its end. On a thread of its own.
void tellEarlier(store::StoreThread& store, const ChartsGuard& guard,
                 const std::vector<store::SoundPart>& parts, Seq of, const SeqRange& rest)
{
    DayFinder finder;
    store::readEarlier(parts, [&](const Entry& entry) { finder.take(entry); });
    auto shifts = finder.shifts();
    const bool isInRest = of > parts.back().last;
    const Seq seq = isInRest && !shifts.empty() && !shifts.back().closed ? parts.back().last : of;
    keepThoseWith(shifts, {{seq, seq}});
    if (shifts.empty())
        return tellDone(guard, of, {});
    const ShiftSpan& shift = shifts.front();
    std::vector<Entry> entries;
    ui::AroundShift around;
    store::readEarlier(parts, [&](const Entry& entry) {
        if (entry.seq >= shift.opened && entry.seq <= shift.last)
            entries.push_back(entry);
        else if (entry.seq < shift.opened && isContext(entry))
            around.context.push_back(entry);
        else if (entry.seq > shift.last && pointsInto(entry, shift))
            around.later.push_back(entry);
    });
    tellEntries(guard, of, std::move(entries));
    const bool goesOn = !shift.closed && shift.last == parts.back().last;
    if (goesOn && rest.first <= rest.last)
        return tell(guard,
                    [=, &store](TrailCharts&) { tellRuns(store, guard, of, {rest}, around); });
    tellDone(guard, of, std::move(around));
}

}  // namespace

TrailCharts::TrailCharts(Session& session, QObject* parent)
    : ui::ChartSource(parent), m_session(session)
{
}

void TrailCharts::readPoints(const ui::PointsWanted& wanted)
{
    std::make_shared<PointsWalk>(m_session, ChartsGuard(this), wanted)->start();
}

void TrailCharts::readShift(Seq of)
{
    const ChartsGuard guard(this);
    const auto& parts = m_session.earlier();
    m_session.store().run(
        [=, &store = m_session.store()](store::TrailDb& trail) {
            const auto shifts = shiftsWith(trail, {{of, of}});
            if (!shifts)
                return tellTrouble(guard, of, shifts.error());
            const bool isEarlier = shifts->empty() && !parts.empty();
            if (!isEarlier) {
                const auto around = aroundOf(trail, *shifts);
                return around ? tellRuns(store, guard, of, withShifts({}, *shifts), *around)
                              : tellTrouble(guard, of, around.error());
            }
            const auto rest = restOfShift(trail);
            if (!rest)
                return tellTrouble(guard, of, rest.error());
            QThreadPool::globalInstance()->start(
                [=, &store, rest = *rest] { tellEarlier(store, guard, parts, of, rest); });
        },
        [=](const StoreTrouble& trouble) { tellTrouble(guard, of, trouble); });
}

}  // namespace bathside::app
