#include "ui/setup/ask_copies.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>

#include "ui/setup/ask_parts.h"
#include "ui/text/copies.h"

namespace bathside::ui {
namespace {

constexpr auto kNow = "copy-now", kPlace = "copy-place", kTime = "copy-time",
               kShift = "at-shift-end", kNever = "never", kEvery = "every:";
constexpr std::array kHours{1, 4, 12, 24};
constexpr qsizetype kMostPlaces = 6;

struct AskCopiesText {
    Q_DECLARE_TR_FUNCTIONS(AskCopiesText)
};

QString everyText(int hours)
{
    if (hours == 1)
        return AskCopiesText::tr("every hour");
    return hours == 24 ? AskCopiesText::tr("once a day")
                       : AskCopiesText::tr("every %n hours", nullptr, hours);
}

QString nameOf(const RecordPlace& place)
{
    return place.stick.isEmpty() ? AskCopiesText::tr("this computer") : place.stick;
}

}  // namespace

Choice AskCopies::choice() const
{
    const CopyNews news = m_parts.copies->news();
    return {.id = QStringLiteral("copies"),
            .word = AskCopiesText::tr("copies …"),
            .line = copyLine(news, m_parts.now()),
            .role = roleOf(news)};
}

void AskCopies::ask()
{
    m_isAsking = true;
    const CopyNews news = m_parts.copies->news();
    const bool isIdle = news.doing == CopyNews::Doing::Nothing;
    const QList<Choice> choices{
        {.id = idOf(kNow),
         .word = AskCopiesText::tr("copy now"),
         .role = Role::Primary,
         .reason = isIdle ? QString() : copyLine(news, m_parts.now())},
        {.id = idOf(kPlace), .word = AskCopiesText::tr("where to …"), .line = placeLine()},
        {.id = idOf(kTime), .word = AskCopiesText::tr("when …"), .line = timeLine()},
        back(AskCopiesText::tr("back"))};
    m_parts.asker.choose(copyText(news, m_parts.now()), choices,
                         [this](const QString& id, const AnswerTap&) { choose(id); });
}

void AskCopies::refresh()
{
    if (m_isAsking)
        ask();
}

void AskCopies::choose(const QString& id)
{
    if (id == QLatin1String(kNow)) {
        if (m_parts.copies->news().doing == CopyNews::Doing::Nothing)
            m_parts.copies->copyNow();
        return ask();
    }
    m_isAsking = false;
    if (id == QLatin1String(kBack))
        return m_parts.back();
    if (id == QLatin1String(kPlace))
        return askPlace();
    askTime();
}

// One that is set stays in the list, also while it is not there.
void AskCopies::askPlace()
{
    std::vector<RecordPlace> places = m_parts.copies->places();
    const QString chosen = set().folder.isEmpty() ? places.front().folder : set().folder;
    const bool isGone = std::ranges::find(places, chosen, &RecordPlace::folder) == places.end();
    if (isGone)
        places.push_back({chosen, chosen});
    QList<Choice> choices;
    for (const RecordPlace& place : places) {
        const QString line = place.stick.isEmpty()
                                 ? AskCopiesText::tr("helps only while this computer is whole")
                             : isGone && place.folder == chosen ? AskCopiesText::tr("not there now")
                                                                : place.folder;
        if (choices.size() < kMostPlaces || place.folder == chosen)
            choices.append({.id = QStringLiteral("place:") + place.folder,
                            .word = nameOf(place),
                            .line = line,
                            .mark = tickIf(place.folder == chosen)});
    }
    choices.append(back(AskCopiesText::tr("back")));
    m_parts.asker.choose(places.size() > 1
                             ? AskCopiesText::tr("Where shall copies go?")
                             : AskCopiesText::tr("Where shall copies go? No stick was found."),
                         choices, [this](const QString& id, const AnswerTap&) {
                             if (id != QLatin1String(kBack)) {
                                 CopyChoice next = set();
                                 next.folder = id.mid(6);
                                 keep(next);
                             }
                             ask();
                         });
}

void AskCopies::askTime()
{
    const CopyChoice now = set();
    QList<Choice> choices{{.id = idOf(kShift),
                           .word = AskCopiesText::tr("at the end of a shift"),
                           .mark = tickIf(now.atShiftEnd)}};
    for (const int hours : kHours)
        choices.append({.id = idOf(kEvery) + QString::number(hours),
                        .word = everyText(hours),
                        .mark = tickIf(now.everyHours == hours)});
    choices.append({.id = idOf(kNever),
                    .word = AskCopiesText::tr("only by a tap"),
                    .mark = tickIf(!now.plan().isSet())});
    choices.append(back(AskCopiesText::tr("back")));
    m_parts.asker.choose(AskCopiesText::tr("When shall the record be copied?"), choices,
                         [this](const QString& id, const AnswerTap&) {
                             if (id == QLatin1String(kBack))
                                 return ask();
                             chooseTime(id);
                             askTime();
                         });
}

// The shift's end and the clock may both be chosen; a second tap takes the choice back.
void AskCopies::chooseTime(const QString& id)
{
    CopyChoice next = set();
    if (id == QLatin1String(kNever)) {
        next.everyHours = 0;
        next.atShiftEnd = false;
    } else if (id == QLatin1String(kShift)) {
        next.atShiftEnd = !next.atShiftEnd;
    } else {
        const int hours = id.mid(QLatin1String(kEvery).size()).toInt();
        next.everyHours = next.everyHours == hours ? 0 : hours;
    }
    keep(next);
}

void AskCopies::keep(const CopyChoice& choice)
{
    Preference next = m_parts.preferences.now();
    next.copies = choice;
    m_parts.preferences.set(next);
}

QString AskCopies::placeLine() const
{
    for (const RecordPlace& place : m_parts.copies->places()) {
        const bool isIt =
            set().folder.isEmpty() ? place.stick.isEmpty() : place.folder == set().folder;
        if (isIt)
            return nameOf(place);
    }
    return AskCopiesText::tr("%1: not there now").arg(set().folder);
}

QString AskCopies::timeLine() const
{
    const CopyChoice& now = set();
    if (now.atShiftEnd && now.everyHours > 0)
        return AskCopiesText::tr("%1, and at the end of a shift", "every 4 hours")
            .arg(everyText(now.everyHours));
    if (now.atShiftEnd)
        return AskCopiesText::tr("at the end of a shift");
    return now.everyHours > 0 ? everyText(now.everyHours) : AskCopiesText::tr("only by a tap");
}

}  // namespace bathside::ui
