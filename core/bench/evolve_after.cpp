// Rows of `evolve`: judgements, alarms, answers.

#include "core/bench/evolve_rows.h"

namespace bathside::folds {

void on(Bench& bench, const Event& event, const DeviationFound& fact)
{
    bench.judgements[{fact.limit, fact.subject}] = {fact.over, fact.bag, event.seq};
}

void on(Bench& bench, const Event& event, const Rejudged& fact)
{
    const JudgementKey key{fact.limit, fact.subject};
    if (fact.over)
        bench.judgements[key] = {*fact.over, fact.bag, event.seq};
    else
        bench.judgements.erase(key);
}

void on(Bench& bench, const Event& event, const AlarmRaised& fact)
{
    bench.alarms[fact.alarm] = {.alarm = fact.alarm,
                                .level = fact.level,
                                .subject = fact.subject,
                                .since = event.at,
                                .heard = {},
                                .sounded = false};
}

void on(Bench& bench, const Event&, const AlarmSounded& fact)
{
    if (const auto found = bench.alarms.find(fact.alarm); found != bench.alarms.end())
        found->second.sounded = true;
}

void on(Bench& bench, const Event& event, const AlarmHeard& fact)
{
    const auto found = bench.alarms.find(fact.alarm);
    if (found == bench.alarms.end())
        return;
    found->second.heard = event.at;
    if (fact.alarm.starts_with("clock stepped"))
        bench.clockStepped.reset();
}

void on(Bench& bench, const Event&, const AlarmEnded& fact) { bench.alarms.erase(fact.alarm); }

void on(Bench& bench, const Event&, const QuestionAnswered& fact)
{
    bench.answers[fact.question] = fact.choice;
}

}  // namespace bathside::folds
