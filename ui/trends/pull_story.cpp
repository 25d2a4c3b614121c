#include "ui/trends/pull_story.h"

#include <algorithm>

#include "core/trail/event_form.h"
#include "ui/record/about.h"
#include "ui/text/facts.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

bool isOf(const ChartPoint& point, const Event& event, const About& about)
{
    return point.pull > 0 ? about.ampoule && about.ampoule->pull == point.pull
                          : event.seq == point.seq;
}

}  // namespace

QList<Field> storyOf(const ChartPoint& point, const std::vector<Entry>& entries,
                     const Aliases& people, const std::string& zone)
{
    QList<Field> story;
    std::set<Seq> told;
    for (const Entry& entry : entries) {
        const auto event = eventOf(entry);
        if (!event)
            continue;
        const About about = aboutOf(event->fact);
        const bool follows =
            std::ranges::any_of(about.entries, [&](Seq seq) { return told.contains(seq); });
        if (!follows && !isOf(point, *event, about))
            continue;
        told.insert(event->seq);
        const QString who = event->person ? people.of(event->person->id) : QString();
        story.append({QStringLiteral("%1 %2").arg(localTimeText(event->at.wall, zone), who),
                      factText(event->fact)});
    }
    return story;
}

}  // namespace bathside::ui
