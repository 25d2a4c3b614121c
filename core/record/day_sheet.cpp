#include "core/record/day_sheet.h"

#include <algorithm>

#include "core/bench/day_use.h"
#include "core/record/shift_fold.h"
#include "core/trail/event_form.h"

namespace bathside {
namespace {

std::optional<WallTime> wallOf(const std::optional<Moment>& moment)
{
    return moment ? std::optional(moment->at.wall) : std::nullopt;
}

SheetTime timeOf(const std::optional<Moment>& from, const std::optional<Moment>& to,
                 std::optional<Millis> limit, bool isOver)
{
    SheetTime time{.took = {}, .limit = limit, .isOver = isOver};
    if (from && to)
        time.took = elapsed(from->at, to->at);
    time.isTimed = (!from || from->timed) && (!to || to->timed);
    return time;
}

bool isOver(const Bench& bench, LimitName limit, const Subject& subject)
{
    return bench.judgements.contains({limit, subject});
}

// --- each table
// -----------------------------------------------------------------------------------

SheetAmpoule rowOf(const Bench& bench, const Ampoule& ampoule)
{
    const Card* card = cardOf(bench, ampoule);
    const Subject subject = subjectOf(ampoule.ref);
    const auto limit = [&](LimitName name) {
        return card ? card->timesFor(name, ampoule.component).at : std::nullopt;
    };
    return {
        .ref = ampoule.ref,
        .component = ampoule.component,
        .lot = ampoule.lot,
        .bag = ampoule.bag,
        .out = ampoule.when(Step::Out)->at.wall,
        .toBath = timeOf(ampoule.when(Step::Out), ampoule.when(Step::Bath),
                         limit(LimitName::Exposure), isOver(bench, LimitName::Exposure, subject)),
        .toDiluent = timeOf(ampoule.when(Step::Bath), ampoule.when(Step::Diluent),
                            limit(LimitName::Thaw), isOver(bench, LimitName::Thaw, subject)),
        .lost = ampoule.lost ? std::optional(ampoule.lost->why) : std::nullopt};
}

SheetBag rowOf(const Bench& bench, const Bag& bag)
{
    const auto down = bag.down ? std::optional(bag.down->moment) : std::nullopt;
    const auto limit = bag.card ? bag.card->limit(LimitName::InUse).time.at : std::nullopt;
    return {.bag = bag,
            .content = contentOf(bench, bag.id),
            .age = timeOf(bag.firstDiluent, down, limit,
                          isOver(bench, LimitName::InUse, subjectOf(bag.id))),
            .birds = birdsServed(bench, bag.id)};
}

/// The last good one of this water before that entry.
std::optional<ReadingTaken> readingBefore(const State& state, Seq seq)
{
    std::optional<ReadingTaken> last;
    for (const auto& event : state.journal) {
        if (event->seq >= seq)
            break;
        const auto* reading = std::get_if<ReadingTaken>(&event->fact);
        if (reading && !reading->fault)
            last = *reading;
        else if (std::holds_alternative<BathChanged>(event->fact))
            last.reset();
    }
    return last;
}

SheetBath rowOf(const State& state, const Pull& pull)
{
    SheetBath row{.pull = pull.no, .at = {}, .verdict = {}, .reading = {}};
    for (const Ampoule& ampoule : pull.ampoules) {
        const auto in = wallOf(ampoule.when(Step::Bath));
        if (in && (!row.at || *in < *row.at))
            row.at = in;
    }
    if (!pull.bath)
        return row;
    row.verdict = pull.bath->verdict;
    row.reading = readingBefore(state, pull.bath->reading);
    row.isOver = isOver(state.bench, LimitName::BathAtPull, subjectOfPull(pull.no));
    return row;
}

SheetLine& lineOf(std::vector<SheetLine>& lines, const LineId& id)
{
    const auto found = std::ranges::find(lines, id, &SheetLine::line);
    if (found != lines.end())
        return *found;
    return lines.emplace_back(
        SheetLine{.line = id, .planned = {}, .firstHung = {}, .lastDown = {}});
}

void addBag(std::vector<SheetLine>& lines, const Bag& bag)
{
    if (!bag.line || !bag.hung)
        return;
    SheetLine& line = lineOf(lines, *bag.line);
    ++line.bags;
    line.firstHung = std::min(line.firstHung.value_or(bag.hung->at.wall), bag.hung->at.wall);
    if (bag.down)
        line.lastDown =
            std::max(line.lastDown.value_or(bag.down->moment.at.wall), bag.down->moment.at.wall);
}

std::vector<SheetLine> linesOf(const Bench& bench)
{
    std::vector<SheetLine> lines;
    for (const LinePlanned& planned : bench.planned) {
        if (!planned.removed)
            lineOf(lines, planned.line).planned = planned;
    }
    for (const auto& [id, line] : bench.lines)
        lineOf(lines, id).birds = line.birds;
    for (const Bag& bag : bench.bags)
        addBag(lines, bag);
    return lines;
}

std::vector<SheetCheck> checksOf(const Bench& bench)
{
    std::vector<SheetCheck> rows;
    for (const Check& check : bench.card ? bench.card->content().checks : std::vector<Check>()) {
        const auto found = bench.checks.find(check.id);
        rows.push_back(
            {check, found == bench.checks.end() ? std::nullopt : std::optional(found->second)});
    }
    return rows;
}

std::vector<SheetNote> notesOf(const State& state)
{
    std::vector<SheetNote> notes;
    for (const auto& event : state.journal) {
        const auto* note = std::get_if<NoteMade>(&event->fact);
        if (!note)
            continue;
        const auto comments = state.bench.reviews.comments.find(event->seq);
        notes.push_back({.at = event->at.wall,
                         .person = event->person ? std::optional(event->person->id) : std::nullopt,
                         .text = note->text,
                         .comments = comments == state.bench.reviews.comments.end()
                                         ? std::vector<NoteComment>()
                                         : comments->second});
    }
    return notes;
}

std::vector<std::shared_ptr<const Probe>> probesOf(const Bench& bench,
                                                   const std::vector<SheetBath>& baths)
{
    std::vector<std::shared_ptr<const Probe>> probes;
    for (const auto& [id, probe] : bench.probes) {
        const bool isUsed = std::ranges::any_of(baths, [&](const SheetBath& bath) {
            return bath.reading && bath.reading->probe == id;
        });
        if (isUsed)
            probes.push_back(probe);
    }
    return probes;
}

// --- a shift
// --------------------------------------------------------------------------------------

CardHash openedBy(const State& state)
{
    for (const auto& event : state.journal) {
        if (const auto* opened = std::get_if<ShiftOpened>(&event->fact))
            return opened->card;
    }
    return {};
}

void addPulls(SheetShift& shift, const State& state)
{
    for (const Pull& pull : state.bench.pulls) {
        for (const Ampoule& ampoule : pull.ampoules)
            shift.ampoules.push_back(rowOf(state.bench, ampoule));
        shift.baths.push_back(rowOf(state, pull));
    }
    shift.probes = probesOf(state.bench, shift.baths);
}

void addDeviations(SheetShift& shift, const State& state)
{
    for (ReviewCase& one : reviewCases(state.bench))
        (one.isCarried ? shift.carried : shift.cases).push_back(std::move(one));
    for (const ReviewCase& one : shift.cases)
        shift.limits.push_back(one.deviation ? limitOf(state.bench, *one.deviation) : std::nullopt);
    for (const Deviation& deviation : deviationsOf(state)) {
        if (!deviation.over)
            shift.kept.push_back(deviation);
    }
}

SheetShift shiftOf(const State& state)
{
    const Bench& bench = state.bench;
    SheetShift shift{.zone = bench.shift->zone,
                     .opened = bench.shift->opened.at.wall,
                     .closed = wallOf(bench.shift->closed),
                     .card = bench.card,
                     .isCardApproved = bench.card && bench.approved.contains(bench.card->hash()),
                     .lines = linesOf(bench),
                     .checks = checksOf(bench),
                     .bags = {},
                     .ampoules = {},
                     .baths = {},
                     .probes = {},
                     .cardHash = openedBy(state),
                     .cases = {},
                     .carried = {},
                     .limits = {},
                     .kept = {},
                     .notes = notesOf(state),
                     .sums = {}};
    for (const Bag& bag : bench.bags)
        shift.bags.push_back(rowOf(bench, bag));
    addPulls(shift, state);
    addDeviations(shift, state);
    if (bench.card)
        shift.sums = reconciled(bench.stores, dayUse(bench), bench.card->content());
    return shift;
}

// --- the days
// -------------------------------------------------------------------------------------

class Collector {
public:
    Collector(DaySheet& sheet, const ExportOrder& order) : m_sheet(sheet), m_fold(order.later)
    {
        for (const Entry& entry : order.context) {
            if (const auto event = eventOf(entry))
                m_fold.begin(*event);
        }
    }

    void take(const Entry& entry)
    {
        m_sheet.station = entry.station;
        ++m_sheet.entries;
        const auto event = eventOf(entry);
        if (!event)
            return;
        if (const auto ended = m_fold.take(*event))
            m_sheet.shifts.push_back(shiftOf(*ended));
        if (std::holds_alternative<ShiftClosed>(event->fact))
            m_closed = event->seq;
        note(*event);
    }

    /// Signatures given later are of this record, too.
    void finish(const ExportOrder& order)
    {
        if (const auto last = m_fold.finish())
            m_sheet.shifts.push_back(shiftOf(*last));
        for (const Entry& entry : order.later) {
            const auto event = eventOf(entry);
            if (event && !contain(order.runs, entry.seq) && !isSealedWithout(*event))
                note(*event);
        }
        m_sheet.rehearsal = m_fold.state().bench.rehearsal;
        m_sheet.people = m_fold.state().bench.people;
    }

private:
    /// What goes to the end of the sheet.
    void note(const Event& event)
    {
        if (const auto* seal = std::get_if<DaySealed>(&event.fact))
            m_sheet.seals.push_back({event.seq, event.at.wall, *seal});
        if (const auto* given = std::get_if<RecordSigned>(&event.fact); given && event.person)
            sign(event, *given);
        m_before = event;
    }

    /// A seal of a later day, and one of these days comes after their last closing.
    [[nodiscard]] bool isSealedWithout(const Event& event) const
    {
        return std::holds_alternative<DaySealed>(event.fact) && !m_sheet.seals.empty() &&
               m_sheet.seals.back().seq > m_closed;
    }

    void sign(const Event& event, const RecordSigned& given)
    {
        SheetSignature& signature =
            m_sheet.signatures.emplace_back(SheetSignature{.at = event.at.wall,
                                                           .person = event.person->id,
                                                           .meaning = given.meaning,
                                                           .of = given.of,
                                                           .card = {},
                                                           .chart = {},
                                                           .words = given.words});
        if (m_before.tap != event.tap)
            return;
        if (const auto* approved = std::get_if<CardApproved>(&m_before.fact))
            signature.card = cardText(approved->card);
        if (const auto* baseline = std::get_if<BaselineChosen>(&m_before.fact))
            signature.chart = baseline->chart;
    }

    [[nodiscard]] std::string cardText(const CardHash& hash) const
    {
        const auto known = m_fold.state().bench.cards.find(hash);
        if (known == m_fold.state().bench.cards.end())
            return hash.text;
        const Card::Content& card = known->second->content();
        return card.name + " " + std::to_string(card.version);
    }

    DaySheet& m_sheet;
    ShiftFold m_fold;
    Event m_before;    // the last one that was noted
    Seq m_closed = 0;  // the last closing
};

}  // namespace

Result<DaySheet, ExportFault> daySheetOf(const TrailStore& trail, const ExportOrder& order)
{
    DaySheet sheet{.first = order.firstDay,
                   .last = order.lastDay,
                   .zone = order.zone,
                   .version = order.version,
                   .station = {},
                   .head = trail.head(),
                   .shifts = {},
                   .signatures = {},
                   .seals = {},
                   .people = {}};
    Collector collector(sheet, order);
    for (const SeqRange& run : order.runs) {
        const auto done = trail.read(run.first, run.last, [&](const Entry& entry) {
            collector.take(entry);
            return true;
        });
        if (!done)
            return failure(ExportFault{ExportFault::Kind::Trail, run.first, done.error(), {}});
    }
    collector.finish(order);
    return sheet;
}

}  // namespace bathside
