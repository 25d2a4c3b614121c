#include "ui/text/review.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "ui/text/numbers.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

struct ReviewText {
    Q_DECLARE_TR_FUNCTIONS(ReviewText)
};

constexpr std::string_view kBag = "; bag: ";

}  // namespace

QString wordOf(Cause cause)
{
    switch (cause) {
        case Cause::HandsNotReady:
            return ReviewText::tr("hands not ready");
        case Cause::Stuck:
            return ReviewText::tr("ampoule stuck or frozen in");
        case Cause::Interrupted:
            return ReviewText::tr("interrupted");
        case Cause::Tool:
            return ReviewText::tr("tool or bath");
        case Cause::PlanTight:
            return ReviewText::tr("plan too tight");
        case Cause::TapLate:
            return ReviewText::tr("done in time, tapped late");
        case Cause::Other:
            return ReviewText::tr("another cause …");
    }
    Q_UNREACHABLE();
}

QString wordOf(Remedy remedy)
{
    switch (remedy) {
        case Remedy::None:
            return ReviewText::tr("none needed");
        case Remedy::ShownAgain:
            return ReviewText::tr("shown again");
        case Remedy::ToolMended:
            return ReviewText::tr("tool mended or replaced");
        case Remedy::PlanChanged:
            return ReviewText::tr("plan changed");
        case Remedy::MoreHands:
            return ReviewText::tr("more hands");
        case Remedy::Other:
            return ReviewText::tr("something else …");
    }
    Q_UNREACHABLE();
}

QString wordOf(Disposition disposition)
{
    switch (disposition) {
        case Disposition::Use:
            return ReviewText::tr("use", "what becomes of a bag");
        case Disposition::UseWithNote:
            return ReviewText::tr("use with a note", "what becomes of a bag");
        case Disposition::Discard:
            return ReviewText::tr("discard", "what becomes of a bag");
    }
    Q_UNREACHABLE();
}

QString wordOf(Course::What what)
{
    switch (what) {
        case Course::What::Out:
            return wordOf(Step::Out);
        case Course::What::InBath:
            return wordOf(Step::Bath);
        case Course::What::Opened:
            return wordOf(Step::Opened);
        case Course::What::InDiluent:
            return wordOf(Step::Diluent);
        case Course::What::Rinsed:
            return wordOf(Step::Rinsed);
        case Course::What::InBag:
            return wordOf(Step::Bagged);
        case Course::What::Started:
            return ReviewText::tr("started", "a bag");
        case Course::What::FirstDiluent:
            return ReviewText::tr("first ampoule in");
        case Course::What::Mixed:
            return ReviewText::tr("mixed", "a bag");
        case Course::What::Hung:
            return ReviewText::tr("hung", "a bag");
        case Course::What::Down:
            return ReviewText::tr("down", "a bag");
    }
    Q_UNREACHABLE();
}

QString causeText(const std::string& cause)
{
    const auto known = named<Cause>(cause);
    return known && *known != Cause::Other ? wordOf(*known) : fromCore(cause);
}

QString causeText(const std::string& cause, const Card* card, const std::string& language)
{
    if (!card)
        return causeText(cause);
    const auto& all = card->content().causes;
    const auto found = std::ranges::find(all, cause, &CauseOnCard::id);
    return found == all.end() ? causeText(cause) : fromCore(found->words.in(language));
}

QString dispositionText(const std::string& text)
{
    const auto colon = text.find(": ");
    const auto known = named<Disposition>(text.substr(0, colon));
    if (!known)
        return fromCore(text);
    const QString note = colon == std::string::npos
                             ? QString()
                             : QStringLiteral(": ") + fromCore(text.substr(colon + 2));
    return wordOf(*known) + note;
}

QString actionText(const std::string& action)
{
    const auto at = action.find(kBag);
    const std::string remedy = action.substr(0, at);
    const auto known = named<Remedy>(remedy);
    const QString done = known && *known != Remedy::Other ? wordOf(*known) : fromCore(remedy);
    if (at == std::string::npos)
        return done;
    return ReviewText::tr("%1; the bag: %2", "what was done, what becomes of the bag")
        .arg(done, dispositionText(action.substr(at + kBag.size())));
}

QString meaningText(Meaning meaning)
{
    switch (meaning) {
        case Meaning::Done:
            return ReviewText::tr("I did this.");
        case Meaning::Reviewed:
            return ReviewText::tr("I looked at this and judged it.");
        case Meaning::Approved:
            return ReviewText::tr("This may be used from now on.");
        case Meaning::Witnessed:
            return ReviewText::tr("I saw this.");
    }
    Q_UNREACHABLE();
}

QString pinFaultText(PinFault fault)
{
    switch (fault) {
        case PinFault::NotDigits:
        case PinFault::Length:
            return ReviewText::tr("A PIN has 4 to 8 digits.");
        case PinFault::AllEqual:
            return ReviewText::tr(
                "All digits are the same: anybody would try that. Choose another.");
        case PinFault::Run:
            return ReviewText::tr(
                "Those digits follow each other: anybody would try that. Choose another.");
    }
    Q_UNREACHABLE();
}

QString personText(const People& people, const PersonId& person)
{
    const Member* member = people.find(person);
    return member ? QStringLiteral("%1, %2").arg(idText(person), fromCore(member->name))
                  : idText(person);
}

QString titleOf(const ReviewCase& one)
{
    if (one.hold)
        return ReviewText::tr("%1 on hold", "bag B2")
            .arg(subjectText(subjectOf(one.hold->fact.bag)));
    return ReviewText::tr("%1, %2", "limit, whom")
        .arg(wordOf(one.deviation->fact.limit), fullSubjectText(one.deviation->fact.subject));
}

QString caseDay(const ReviewCase& one, const std::string& zone)
{
    constexpr qsizetype kDay = 10;  // "2026-03-04"
    return localDateTimeText(one.at(), zone).left(kDay);
}

QString entryText(const ReviewCase& one)
{
    return ReviewText::tr("entry %1", "number in the record").arg(one.seq());
}

QString earlierText(const ReviewCase& one, const std::string& zone)
{
    return QStringLiteral("%1, %2").arg(caseDay(one, zone), entryText(one));
}

QString fullTitleOf(const ReviewCase& one, const std::string& zone)
{
    QStringList parts{titleOf(one)};
    const bool saysBag = one.hold || one.deviation->fact.subject.kind == SubjectKind::Bag;
    if (one.about() && !saysBag)
        parts.append(subjectText(subjectOf(*one.about())));
    if (one.isCarried)
        parts.append(earlierText(one, zone));
    return parts.join(QStringLiteral(", "));
}

QString wasWordOf(Disposition disposition)
{
    switch (disposition) {
        case Disposition::Use:
            return ReviewText::tr("it was used", "a bag that is down");
        case Disposition::UseWithNote:
            return ReviewText::tr("it was used, with a note", "a bag that is down");
        case Disposition::Discard:
            return ReviewText::tr("what was left was thrown away", "a bag that is down");
    }
    Q_UNREACHABLE();
}

QString courseText(CourseUnit unit, std::int64_t value)
{
    switch (unit) {
        case CourseUnit::Time:
            return durationText(Millis(value));
        case CourseUnit::Temperature:
            return temperatureText(MilliCelsius{value});
        case CourseUnit::Birds:
            return ReviewText::tr("%1 birds").arg(countText(value, QLocale()));
    }
    Q_UNREACHABLE();
}

}  // namespace bathside::ui
