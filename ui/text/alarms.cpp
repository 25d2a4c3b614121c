#include "ui/text/alarms.h"

#include <QCoreApplication>
#include <QLocale>

#include "ui/text/numbers.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

struct AlarmText {
    Q_DECLARE_TR_FUNCTIONS(Alarm)
};

/// A vessel's levels say different things.
QString vesselText(const Alarm& alarm)
{
    return (alarm.level == Level::HeadsUp
                ? AlarmText::tr("Vessel %1 loses more than usual: read its level more often")
                : AlarmText::tr("Vessel %1: its vacuum is failing: move the ampoules"))
        .arg(fromCore(alarm.subject.id));
}

QString levelText(const Alarm& alarm)
{
    return (alarm.level == Level::HeadsUp
                ? AlarmText::tr(
                      "Vessel %1 should be down to its minimum by now: read its level, fill it")
                : AlarmText::tr("Vessel %1 is below its minimum: fill it now"))
        .arg(fromCore(alarm.subject.id));
}

QString probeText(std::optional<ReadingFault> fault)
{
    if (!fault)
        return AlarmText::tr("The thermometer gives no reading: measure by hand");
    return AlarmText::tr("The thermometer gives no reading (%1): measure by hand",
                         "why: \"its check failed\"")
        .arg(shortWordOf(*fault));
}

QString ownText(const Alarm& alarm, StationCause cause, std::optional<ReadingFault> fault)
{
    switch (cause) {
        case StationCause::NoSound:
            return AlarmText::tr("No sound: watch the screen");
        case StationCause::NotRecorded:
            return AlarmText::tr("Not recorded: go on, call the shift lead, leave the station on");
        case StationCause::ClockStepped:
            return AlarmText::tr("The clock was changed: compare it with another");
        case StationCause::ProbeLost:
            return probeText(fault);
        case StationCause::Vessel:
            return vesselText(alarm);
        case StationCause::VesselLow:
            return levelText(alarm);
    }
    Q_UNREACHABLE();
}

QString whatToDo(const Alarm& alarm, LimitName limit, const Card* card, const std::string& language)
{
    if (card == nullptr)
        return capitalised(wordOf(limit));
    const Words& words = card->limit(limit).words.at(static_cast<std::size_t>(alarm.level));
    return words.byLanguage.empty() ? capitalised(wordOf(limit)) : fromCore(words.in(language));
}

// The bench and the bath are said by the card's own words already.
bool saysWhom(const Subject& subject)
{
    return subject.kind == SubjectKind::Ampoule || subject.kind == SubjectKind::Bag ||
           subject.kind == SubjectKind::Line;
}

}  // namespace

QString alarmText(const Alarm& alarm, const Card* card, const std::string& language,
                  std::optional<ReadingFault> fault)
{
    if (const auto* cause = std::get_if<StationCause>(&alarm.cause))
        return ownText(alarm, *cause, fault);
    const QString what = whatToDo(alarm, std::get<LimitName>(alarm.cause), card, language);
    if (!saysWhom(alarm.subject))
        return what;
    return AlarmText::tr("%1: %2", "whom it is about, and what to do")
        .arg(capitalised(subjectText(alarm.subject)), what);
}

QString alarmAmount(const Alarm& alarm)
{
    if (alarm.left)
        return leftText(*alarm.left);
    if (!alarm.birdsLeft)
        return {};
    const auto birds = static_cast<int>(*alarm.birdsLeft);
    return birds < 0 ? AlarmText::tr("%n bird(s) over", "past the limit", -birds)
                     : AlarmText::tr("%n bird(s) left", "until the limit", birds);
}

QString nothingDue() { return AlarmText::tr("Nothing is due."); }

QString moreAlarms(int count)
{
    return AlarmText::tr("+%n", "alarms without room on the screen", count);
}

}  // namespace bathside::ui
