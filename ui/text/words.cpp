#include "ui/text/words.h"

#include <QCoreApplication>

#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct WordText {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

QString doneStep(Step step, int ampoules)
{
    switch (step) {
        case Step::Out:
            return WordText::tr("OUT OF CRYOGEN", "big button: done, for %n ampoules", ampoules);
        case Step::Bath:
            return WordText::tr("IN BATH", "big button: done, for %n ampoules", ampoules);
        case Step::Opened:
            return WordText::tr("OPENED", "big button: done, for %n ampoules", ampoules);
        case Step::Diluent:
            return WordText::tr("IN DILUENT", "big button: done, for %n ampoules", ampoules);
        case Step::Rinsed:
            return WordText::tr("RINSED", "big button: done, for %n ampoules", ampoules);
        case Step::Bagged:
            return WordText::tr("IN BAG", "big button: done, for %n ampoules", ampoules);
    }
    Q_UNREACHABLE();
}

}  // namespace

QString doneWord(NextDeed deed, Step step, int ampoules)
{
    switch (deed) {
        case NextDeed::OpenShift:
            return WordText::tr("SHIFT OPEN", "big button: the shift has been opened");
        case NextDeed::SetUp:
            return WordText::tr("SET UP", "big button: the bench has been set up");
        case NextDeed::StartBag:
            return WordText::tr("BAG STARTED", "big button");
        case NextDeed::Inspect:
            return WordText::tr("INSPECTED", "big button: the diluent bag, found good");
        case NextDeed::DrawDiluent:
            return WordText::tr("DILUENT DRAWN", "big button: into the syringe");
        case NextDeed::TakeOut:
            return doneStep(Step::Out, ampoules);
        case NextDeed::MoveOn:
            return doneStep(step, ampoules);
        case NextDeed::Mix:
            return WordText::tr("MIXED", "big button: the bag");
        case NextDeed::Hang:
            return WordText::tr("HUNG", "big button: the bag, on its line");
        case NextDeed::Wait:
            return WordText::tr("NOTHING TO DO", "big button: nothing is next");
    }
    Q_UNREACHABLE();
}

QString doneLine(const Next& next)
{
    if (next.deed == NextDeed::MoveOn)
        return ampoulesText(static_cast<int>(next.ampoules.size()));
    return next.bag ? subjectText(subjectOf(*next.bag)) : QString();
}

QString ampoulesText(int count) { return WordText::tr("%n ampoule(s)", "", count); }

QString wordOf(Step step)
{
    switch (step) {
        case Step::Out:
            return WordText::tr("out", "where the ampoule is: out of the cryogen");
        case Step::Bath:
            return WordText::tr("in bath", "where the ampoule is");
        case Step::Opened:
            return WordText::tr("opened", "how the ampoule is");
        case Step::Diluent:
            return WordText::tr("in diluent", "where the ampoule's content is");
        case Step::Rinsed:
            return WordText::tr("rinsed", "how the ampoule is");
        case Step::Bagged:
            return WordText::tr("in bag", "where the ampoule's content is");
    }
    Q_UNREACHABLE();
}

QString stateText(const Ampoule& ampoule)
{
    if (ampoule.lost)
        return WordText::tr("lost: %1", "an ampoule, and why").arg(wordOf(ampoule.lost->why));
    if (ampoule.bag)
        return WordText::tr("in bag %1", "an ampoule's content").arg(idText(*ampoule.bag));
    return wordOf(ampoule.reached());
}

QString whatText(const Ampoule& ampoule)
{
    if (ampoule.lot.empty())
        return idText(ampoule.component);
    return WordText::tr("%1, lot %2", "component of the vaccine and its lot")
        .arg(idText(ampoule.component), idText(ampoule.lot));
}

QString capitalised(QString text)
{
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

QString wordOf(Level level)
{
    switch (level) {
        case Level::HeadsUp:
            return WordText::tr("heads-up", "first level: a limit is near");
        case Level::Limit:
            return WordText::tr("limit", "second level: the limit is passed");
        case Level::Overrun:
            return WordText::tr("overrun", "third level: passed and still nobody acted");
    }
    Q_UNREACHABLE();
}

QString wordOf(bathside::Role role)
{
    switch (role) {
        case bathside::Role::Vaccinator:
            return WordText::tr("vaccinator");
        case bathside::Role::ShiftLead:
            return WordText::tr("shift lead");
        case bathside::Role::Auditor:
            return WordText::tr("auditor");
    }
    Q_UNREACHABLE();
}

QString wordOf(Meaning meaning)
{
    switch (meaning) {
        case Meaning::Done:
            return WordText::tr("done by me", "meaning of a signature");
        case Meaning::Reviewed:
            return WordText::tr("reviewed", "meaning of a signature");
        case Meaning::Approved:
            return WordText::tr("approved", "meaning of a signature");
        case Meaning::Witnessed:
            return WordText::tr("witnessed", "meaning of a signature");
    }
    Q_UNREACHABLE();
}

QString wordOf(LossReason why)
{
    switch (why) {
        case LossReason::Broken:
            return WordText::tr("broken", "an ampoule was lost");
        case LossReason::Dropped:
            return WordText::tr("dropped", "an ampoule was lost");
        case LossReason::Abandoned:
            return WordText::tr("abandoned", "an ampoule was lost on purpose");
        case LossReason::HandedOver:
            return WordText::tr("handed over", "an ampoule went to another bench");
    }
    Q_UNREACHABLE();
}

QString wordOf(HoldReason why)
{
    switch (why) {
        case HoldReason::Leak:
            return WordText::tr("leak", "why a bag is on hold");
        case HoldReason::Colour:
            return WordText::tr("colour", "why a bag is on hold");
        case HoldReason::WrongLot:
            return WordText::tr("wrong lot", "why a bag is on hold");
        case HoldReason::AgeUnknown:
            return WordText::tr("age unknown", "why a bag is on hold");
        case HoldReason::Inspection:
            return WordText::tr("failed inspection", "why a bag is on hold");
        case HoldReason::Other:
            return WordText::tr("another reason", "why a bag is on hold");
        case HoldReason::LotNotFit:
            return WordText::tr("a lot expired, in quarantine or unknown", "why a bag is on hold");
    }
    Q_UNREACHABLE();
}

QString wordOf(DownReason why)
{
    switch (why) {
        case DownReason::Empty:
            return WordText::tr("empty", "why a bag was taken down");
        case DownReason::Expired:
            return WordText::tr("past its time", "why a bag was taken down");
        case DownReason::Discarded:
            return WordText::tr("discarded", "why a bag was taken down");
        case DownReason::Finished:
            return WordText::tr("work finished", "why a bag was taken down");
    }
    Q_UNREACHABLE();
}

QString wordOf(StationCause cause)
{
    switch (cause) {
        case StationCause::NoSound:
            return WordText::tr("no sound", "name of an alarm");
        case StationCause::NotRecorded:
            return WordText::tr("not recorded", "name of an alarm");
        case StationCause::ClockStepped:
            return WordText::tr("clock changed", "name of an alarm");
        case StationCause::ProbeLost:
            return WordText::tr("no thermometer reading", "name of an alarm");
        case StationCause::Vessel:
            return WordText::tr("vessel loses too much", "name of an alarm");
        case StationCause::VesselLow:
            return WordText::tr("vessel low", "name of an alarm");
    }
    Q_UNREACHABLE();
}

QString wordOf(LimitName limit)
{
    switch (limit) {
        case LimitName::Exposure:
            return WordText::tr("time out of the cryogen", "name of a limit");
        case LimitName::Thaw:
            return WordText::tr("time from bath to diluent", "name of a limit");
        case LimitName::InUse:
            return WordText::tr("time a bag is in use", "name of a limit");
        case LimitName::BathAtPull:
            return WordText::tr("bath when ampoules go in", "name of a limit");
        case LimitName::Diluent:
            return WordText::tr("temperature of the diluent", "name of a limit");
        case LimitName::BathBetweenPulls:
            return WordText::tr("bath before the next pull", "name of a limit");
        case LimitName::Reading:
            return WordText::tr("age of the bath reading", "name of a limit");
        case LimitName::Swirl:
            return WordText::tr("swirling the bag", "name of a limit");
        case LimitName::Needle:
            return WordText::tr("birds with one needle", "name of a limit");
        case LimitName::DoseCheck:
            return WordText::tr("dose check", "name of a limit");
        case LimitName::NextPull:
            return WordText::tr("start of the next pull", "name of a limit");
    }
    Q_UNREACHABLE();
}

QString untilText(LimitName limit)
{
    switch (limit) {
        case LimitName::Exposure:
            return WordText::tr("until in the bath", "under the time left");
        case LimitName::Thaw:
            return WordText::tr("until in diluent", "under the time left");
        case LimitName::InUse:
            return WordText::tr("until it is down", "under the time left");
        case LimitName::BathAtPull:
        case LimitName::BathBetweenPulls:
            return WordText::tr("until the bath is right", "under the time left");
        case LimitName::Diluent:
            return WordText::tr("until the diluent is right", "under the time left");
        case LimitName::Reading:
            return WordText::tr("until the bath is measured", "under the time left");
        case LimitName::Swirl:
            return WordText::tr("until the next swirl", "under the time left");
        case LimitName::Needle:
            return WordText::tr("until the needle is changed", "under the time left");
        case LimitName::DoseCheck:
            return WordText::tr("until the dose check", "under the time left");
        case LimitName::NextPull:
            return WordText::tr("until the next pull", "under the time left");
    }
    Q_UNREACHABLE();
}

QString pastText(LimitName limit)
{
    switch (limit) {
        case LimitName::Exposure:
            return WordText::tr("too long out of the cryogen", "under the time that is over");
        case LimitName::Thaw:
            return WordText::tr("to the diluent", "under the time that is over");
        case LimitName::InUse:
            return WordText::tr("take it down", "under the time that is over");
        case LimitName::BathAtPull:
        case LimitName::BathBetweenPulls:
            return WordText::tr("bath not right", "under the time that is over");
        case LimitName::Diluent:
            return WordText::tr("diluent not right", "under the time that is over");
        case LimitName::Reading:
            return WordText::tr("bath not measured", "under the time that is over");
        case LimitName::Swirl:
            return WordText::tr("swirl is late", "under the time that is over");
        case LimitName::Needle:
            return WordText::tr("needle change is late", "under the time that is over");
        case LimitName::DoseCheck:
            return WordText::tr("dose check is late", "under the time that is over");
        case LimitName::NextPull:
            return WordText::tr("pull is late", "under the time that is over");
    }
    Q_UNREACHABLE();
}

QString wordOf(Verdict verdict)
{
    switch (verdict) {
        case Verdict::Inside:
            return WordText::tr("inside", "the bath's temperature against its tolerance");
        case Verdict::Undecided:
            return WordText::tr("not sure", "the bath's temperature against its tolerance");
        case Verdict::Outside:
            return WordText::tr("outside", "the bath's temperature against its tolerance");
    }
    Q_UNREACHABLE();
}

QString wordOf(ReadingFault fault)
{
    switch (fault) {
        case ReadingFault::CheckFailed:
            return WordText::tr("The thermometer's own check failed.");
        case ReadingFault::PowerOn:
            return WordText::tr("The thermometer has not measured yet.");
        case ReadingFault::OpenLine:
            return WordText::tr("No thermometer is connected.");
        case ReadingFault::Shorted:
            return WordText::tr("The thermometer's line is shorted.");
        case ReadingFault::Empty:
            return WordText::tr("The thermometer gave no answer.");
        case ReadingFault::Unreadable:
            return WordText::tr("The thermometer's answer cannot be read.");
        case ReadingFault::Implausible:
            return WordText::tr("That is no temperature of a water bath.");
        case ReadingFault::Jump:
            return WordText::tr("Water cannot change that fast.");
        case ReadingFault::Lost:
            return WordText::tr("The thermometer is gone.");
    }
    Q_UNREACHABLE();
}

QString shortWordOf(ReadingFault fault)
{
    switch (fault) {
        case ReadingFault::CheckFailed:
            return WordText::tr("its check failed", "why a thermometer gives no reading");
        case ReadingFault::PowerOn:
            return WordText::tr("not measured yet", "why a thermometer gives no reading");
        case ReadingFault::OpenLine:
            return WordText::tr("not connected", "why a thermometer gives no reading");
        case ReadingFault::Shorted:
            return WordText::tr("line shorted", "why a thermometer gives no reading");
        case ReadingFault::Empty:
            return WordText::tr("no answer", "why a thermometer gives no reading");
        case ReadingFault::Unreadable:
            return WordText::tr("answer unreadable", "why a thermometer gives no reading");
        case ReadingFault::Implausible:
            return WordText::tr("impossible value", "why a thermometer gives no reading");
        case ReadingFault::Jump:
            return WordText::tr("changed too fast", "why a thermometer gives no reading");
        case ReadingFault::Lost:
            return WordText::tr("thermometer gone", "why a thermometer gives no reading");
    }
    Q_UNREACHABLE();
}

QString wordOf(ReadingWarning warning)
{
    switch (warning) {
        case ReadingWarning::BeyondRange:
            return WordText::tr("beyond the calibrated range", "a reading");
        case ReadingWarning::Overdue:
            return WordText::tr("calibration is overdue", "a thermometer");
        case ReadingWarning::NotCalibrated:
            return WordText::tr("not calibrated", "a thermometer");
        case ReadingWarning::CannotDecide:
            return WordText::tr("too uncertain to say inside", "a thermometer");
    }
    Q_UNREACHABLE();
}

QString wordOf(Proof proof)
{
    switch (proof) {
        case Proof::Claimed:
            return WordText::tr("by name", "how a person is known: one tap on a name");
        case Proof::Proven:
            return WordText::tr("proven", "how a person is known: by PIN or badge");
    }
    Q_UNREACHABLE();
}

QString wordOf(Severity severity)
{
    switch (severity) {
        case Severity::Minor:
            return WordText::tr("minor", "severity of a deviation");
        case Severity::Major:
            return WordText::tr("major", "severity of a deviation");
        case Severity::Critical:
            return WordText::tr("critical", "severity of a deviation");
    }
    Q_UNREACHABLE();
}

QString wordOf(Sort sort)
{
    switch (sort) {
        case Sort::Limit:
            return WordText::tr("limit", "sort of a rule: passing it is a deviation");
        case Sort::Reminder:
            return WordText::tr("reminder", "sort of a rule: passing it is only late");
    }
    Q_UNREACHABLE();
}

QString wordOf(RecordState::Health health)
{
    switch (health) {
        case RecordState::Health::Recorded:
            return WordText::tr("recorded", "status of the record");
        case RecordState::Health::Behind:
            return WordText::tr("recording …", "status of the record: something waits");
        case RecordState::Health::NotConfirmed:
            return WordText::tr("NOT CONFIRMED", "status of the record");
        case RecordState::Health::NotRecorded:
            return WordText::tr("NOT RECORDED", "status of the record");
    }
    Q_UNREACHABLE();
}

}  // namespace bathside::ui
