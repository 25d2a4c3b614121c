// The tables of what was planned, checked, judged and signed; those of the bench:
// day_sheet_bench.cpp

#include "ui/print/day_sheet_tables.h"

#include <QCoreApplication>

#include "ui/print/day_sheet_cells.h"
#include "ui/text/facts.h"
#include "ui/text/numbers.h"
#include "ui/text/review.h"
#include "ui/text/stores.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

struct DayText {
    Q_DECLARE_TR_FUNCTIONS(DaySheet)
};

using Row = SheetTable::Row;

QString resultText(const SheetCheck& check)
{
    if (!check.state)
        return check.check.blocking ? DayText::tr("! OPEN", "a set-up check nobody did")
                                    : DayText::tr("open", "a set-up check nobody did");
    if (!check.state->overridden.empty())
        return DayText::tr("! OVERRIDDEN: %1", "a set-up check, why")
            .arg(fromCore(check.state->overridden));
    return check.state->ok ? DayText::tr("done", "a set-up check")
                           : DayText::tr("! NOT GOOD", "a set-up check");
}

/// With the day where it is not the shift's own.
QString reviewText(const SheetShift& shift, const ReviewCase& one, const People& people)
{
    const auto& reviewed = one.deviation ? one.deviation->reviewed : std::optional<Reviewed>();
    if (!reviewed)
        return DayText::tr("! NOT REVIEWED", "a deviation");
    const QString who = reviewed->isSigned ? DayText::tr("%1, signed", "who reviewed a deviation")
                                                 .arg(personText(people, reviewed->by))
                                           : personText(people, reviewed->by);
    const auto day = localDay(reviewed->at.wall, shift.zone);
    return day == localDay(shift.opened, shift.zone)
               ? who
               : DayText::tr("%1, on %2", "who reviewed a deviation, a later day")
                     .arg(who, isoDayText(day));
}

QString causeOf(const ReviewCase& one, const SheetShift& shift, const std::string& language)
{
    if (!one.deviation || !one.deviation->reviewed)
        return kNone;
    const Reviewed& reviewed = *one.deviation->reviewed;
    QStringList parts;
    if (!reviewed.cause.empty())
        parts.append(causeText(reviewed.cause, shift.card.get(), language));
    if (!reviewed.words.empty())
        parts.append(fromCore(reviewed.words));
    return parts.isEmpty() ? kNone : parts.join(QStringLiteral(": "));
}

QString actionOf(const ReviewCase& one)
{
    const bool isReviewed = one.deviation && one.deviation->reviewed;
    return isReviewed && !one.deviation->reviewed->action.empty()
               ? actionText(one.deviation->reviewed->action)
               : kNone;
}

/// Within its subject's bag, where that says more.
QString caseText(const ReviewCase& one)
{
    const QString title = titleOf(one);
    if (!one.deviation || !one.bag || one.deviation->fact.subject.kind == SubjectKind::Bag)
        return title;
    return DayText::tr("%1, bag %2", "a deviation, the bag it touched")
        .arg(title, idText(*one.bag));
}

/// What is allowed: of a temperature both ends, by the card of the shift.
QString allowedText(const SheetShift& shift, LimitName name,
                    const std::optional<std::int64_t>& limit)
{
    if (!limit)
        return kNone;
    if (name == LimitName::BathAtPull && shift.card)
        return QStringLiteral("%1 ± %2").arg(temperatureText(shift.card->content().bath.target),
                                             overText(name, *limit));
    if (name == LimitName::Diluent && shift.card)
        return DayText::tr("%1 to %2", "temperatures")
            .arg(temperatureText(shift.card->content().diluentLow),
                 temperatureText(shift.card->content().diluentHigh));
    return overText(name, *limit);
}

/// What a signature is of.
QString signedText(const SheetSignature& one)
{
    QStringList parts;
    QStringList entries;
    for (const Seq seq : one.of)
        entries.append(QString::number(seq));
    if (!entries.isEmpty())
        parts.append(DayText::tr("entry %1", "what was signed, its numbers")
                         .arg(entries.join(QStringLiteral(", "))));
    if (!one.card.empty())
        parts.append(DayText::tr("card %1", "what was signed").arg(fromCore(one.card)));
    if (!one.chart.empty())
        parts.append(
            DayText::tr("baseline of chart %1", "what was signed").arg(fromCore(one.chart)));
    if (!one.words.empty())
        parts.append(fromCore(one.words));
    return parts.isEmpty() ? DayText::tr("the shift", "what was signed")
                           : parts.join(QStringLiteral("; "));
}

Row caseRow(const SheetShift& shift, std::size_t at, const People& people,
            const std::string& language)
{
    const ReviewCase& one = shift.cases[at];
    const auto& deviation = one.deviation;
    const LimitName name = deviation ? deviation->fact.limit : LimitName{};
    return {{caseText(one), true},
            {deviation ? QString::number(deviation->seq) : kNone},
            {deviation ? allowedText(shift, name, shift.limits[at]) : kNone},
            {deviation ? overText(name, deviation->fact.over) : kNone},
            {wordOf(one.severity)},
            {causeOf(one, shift, language)},
            {actionOf(one)},
            {reviewText(shift, one, people)}};
}

}  // namespace

SheetTable linesTable(const SheetShift& shift)
{
    SheetTable table{{{DayText::tr("line"), 0.1},
                      {DayText::tr("planned birds"), 0.15},
                      {DayText::tr("birds done"), 0.15},
                      {DayText::tr("planned rate an hour"), 0.15},
                      {DayText::tr("planned start"), 0.15},
                      {DayText::tr("first bag hung"), 0.12},
                      {DayText::tr("last bag down"), 0.12},
                      {DayText::tr("bags"), 0.06}},
                     {},
                     DayText::tr("No line ran and none was planned.")};
    for (const SheetLine& line : shift.lines) {
        const auto& plan = line.planned;
        const bool isShort = plan && line.birds < plan->birds;
        table.rows.push_back(
            {{idText(line.line), true},
             {plan ? countOf(plan->birds) : DayText::tr("not planned")},
             {isShort ? DayText::tr("%1, fewer than planned").arg(countOf(line.birds))
                      : countOf(line.birds),
              isShort},
             {plan ? countOf(plan->birdsPerHour) : kNone},
             {plan ? dayMinuteText(plan->start) : kNone},
             {timeText(line.firstHung, shift.zone)},
             {timeText(line.lastDown, shift.zone)},
             {QString::number(line.bags)}});
    }
    return table;
}

SheetTable checksTable(const SheetShift& shift, const std::string& language)
{
    SheetTable table{{{DayText::tr("check"), 0.5},
                      {DayText::tr("result"), 0.24},
                      {DayText::tr("value"), 0.14},
                      {DayText::tr("at", "a time"), 0.12}},
                     {},
                     shift.card ? DayText::tr("The card asks for no checks.")
                                : DayText::tr("The card is not in this file.")};
    for (const SheetCheck& check : shift.checks) {
        const QString result = resultText(check);
        table.rows.push_back(
            {{fromCore(check.check.words.in(language))},
             {result, result.startsWith(u'!')},
             {check.state && !check.state->value.empty() ? fromCore(check.state->value) : kNone},
             {check.state ? timeText(std::optional(check.state->moment), shift.zone) : kNone}});
    }
    return table;
}

SheetTable deviationsTable(const SheetShift& shift, const People& people,
                           const std::string& language)
{
    SheetTable table{{{DayText::tr("deviation"), 0.18},
                      {DayText::tr("entry"), 0.07},
                      {DayText::tr("limit"), 0.1},
                      {DayText::tr("over by"), 0.1},
                      {DayText::tr("severity"), 0.08},
                      {DayText::tr("cause"), 0.16},
                      {DayText::tr("what was done"), 0.17},
                      {DayText::tr("reviewed by"), 0.14}},
                     {},
                     DayText::tr("None.", "no deviations")};
    for (std::size_t i = 0; i < shift.cases.size(); ++i)
        table.rows.push_back(caseRow(shift, i, people, language));
    return table;
}

SheetTable sumsTable(const SheetShift& shift)
{
    SheetTable table{{{DayText::tr("what"), 0.36},
                      {DayText::tr("expected"), 0.12},
                      {DayText::tr("counted"), 0.12},
                      {DayText::tr("difference"), 0.12},
                      {DayText::tr("tolerance"), 0.12},
                      {DayText::tr("outcome"), 0.16}},
                     {},
                     DayText::tr("There is nothing to reckon up.")};
    for (const Reckoning& row : shift.sums ? shift.sums->rows : std::vector<Reckoning>()) {
        const bool isOff = row.outcome == Outcome::DoesNotAddUp;
        const QString word = wordOf(row.outcome);
        table.rows.push_back({{whatText(row)},
                              {figureText(row, row.expected)},
                              {row.counted ? figureText(row, *row.counted) : kNone},
                              {row.counted ? differenceText(row) : kNone},
                              {figureText(row, row.tolerance)},
                              {isOff ? QStringLiteral("! %1").arg(word.toUpper()) : word, isOff}});
    }
    return table;
}

SheetTable notesTable(const SheetShift& shift)
{
    SheetTable table{{{DayText::tr("at", "a time"), 0.1},
                      {DayText::tr("who"), 0.1},
                      {DayText::tr("note"), 0.5},
                      {DayText::tr("comment"), 0.3}},
                     {},
                     DayText::tr("None.", "no notes")};
    for (const SheetNote& note : shift.notes) {
        QStringList comments;
        for (const NoteComment& comment : note.comments)
            comments.append(DayText::tr("%1 (%2, %3)", "a comment, who, when")
                                .arg(fromCore(comment.text),
                                     comment.by ? idText(*comment.by) : kNone,
                                     localDateTimeText(comment.at.wall, shift.zone)));
        table.rows.push_back({{localTimeText(note.at, shift.zone)},
                              {note.person ? idText(*note.person) : kNone},
                              {fromCore(note.text)},
                              {comments.isEmpty() ? kNone : comments.join(QStringLiteral(" / "))}});
    }
    return table;
}

/// The deviations of earlier shifts that this one began with: entry and day say which they are.
SheetTable carriedTable(const SheetShift& shift, const People& people, const std::string& language)
{
    SheetTable table{{{DayText::tr("entry"), 0.08},
                      {DayText::tr("day"), 0.12},
                      {DayText::tr("deviation"), 0.24},
                      {DayText::tr("over by"), 0.1},
                      {DayText::tr("cause"), 0.16},
                      {DayText::tr("what was done"), 0.16},
                      {DayText::tr("reviewed by"), 0.14}},
                     {},
                     DayText::tr("None.", "no deviations")};
    for (const ReviewCase& one : shift.carried) {
        if (one.hold) {
            table.rows.push_back({{QString::number(one.seq())},
                                  {isoDayText(localDay(one.at(), shift.zone))},
                                  {caseText(one), true},
                                  {kNone},
                                  {kNone},
                                  {kNone},
                                  {DayText::tr("open in this shift", "a deviation")}});
            continue;
        }
        const DeviationOnRecord& deviation = *one.deviation;
        table.rows.push_back(
            {{QString::number(deviation.seq)},
             {isoDayText(localDay(deviation.at.wall, shift.zone))},
             {caseText(one), true},
             {overText(deviation.fact.limit, deviation.fact.over)},
             {causeOf(one, shift, language)},
             {actionOf(one)},
             {deviation.reviewed ? reviewText(shift, one, people)
                                 : DayText::tr("open in this shift", "a deviation")}});
    }
    return table;
}

SheetTable signaturesTable(const DaySheet& sheet)
{
    SheetTable table{{{DayText::tr("name"), 0.25},
                      {DayText::tr("at", "a time"), 0.2},
                      {DayText::tr("meaning"), 0.25},
                      {DayText::tr("of what"), 0.3}},
                     {},
                     DayText::tr("Nobody has signed.")};
    for (const SheetSignature& one : sheet.signatures)
        table.rows.push_back({{personText(sheet.people, one.person), true},
                              {localDateTimeText(one.at, sheet.zone)},
                              {meaningText(one.meaning)},
                              {signedText(one)}});
    return table;
}

QString probeText(const Probe& probe)
{
    const auto day = [](const std::optional<std::chrono::sys_days>& at) {
        return at ? isoDayText(*at) : kNone;
    };
    if (probe.points.empty())
        return DayText::tr("%1 %2: not calibrated.", "a thermometer: id, name")
            .arg(idText(probe.id), fromCore(probe.name));
    return DayText::tr("%1 %2: certificate %3, calibrated %4, due %5.", "a thermometer: id, name")
        .arg(idText(probe.id), fromCore(probe.name),
             probe.certificate.empty() ? kNone : fromCore(probe.certificate), day(probe.calibrated),
             day(probe.due));
}

QString keptText(const Deviation& deviation)
{
    return DayText::tr("Entry %1: %2, %3: the limit was kept, as a correction has shown.",
                       "of a deviation: its number, limit, whom")
        .arg(deviation.seq)
        .arg(wordOf(deviation.key.first), fullSubjectText(deviation.key.second));
}

}  // namespace bathside::ui
