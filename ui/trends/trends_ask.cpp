// What the page of charts asks: what is shown, of whom, of which days, by which rules; and the
// baseline, which is signed.

#include "core/base/day.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/trends/trend_words.h"
#include "ui/trends/trends_page.h"

namespace bathside::ui {
namespace {

constexpr int kNamesAtATime = 8;
constexpr auto kNone = "none";

QString idOf(std::size_t index) { return QStringLiteral("n:%1").arg(index); }
std::size_t indexIn(const QString& id) { return id.mid(2).toULong(); }

}  // namespace

void TrendsPage::ask(const TapStamp& stamp, const std::function<void()>& question)
{
    m_signing.zone = zoneNow();
    m_ask->opening(stamp.inputMs);
    question();
    if (m_model.isInCriticalWindow())
        m_ask->close();
}

void TrendsPage::choose(const QString& title, QList<Choice> choices, Asker::Chosen chosen)
{
    choices.append({.id = QStringLiteral("back"),
                    .word = tr("back"),
                    .role = Role::Quiet,
                    .mark = Mark::Back});
    Asker& asker = *m_ask;
    asker.choose(title, choices,
                 [this, chosen = std::move(chosen)](const QString& id, const AnswerTap& tap) {
                     if (id == QLatin1String("back"))
                         return m_ask->close();
                     chosen(id, tap);
                 });
}

void TrendsPage::wish(const TrendWish& wish)
{
    m_wish = wish;
    const std::vector<RunRule> rules(m_wanted.begin(), m_wanted.end());
    m_trend = trendOf(m_points, m_wish, m_model.bench().baselines, rules);
    m_ask->close();
    pick({});
}

void TrendsPage::askWhat()
{
    QList<Choice> choices;
    for (std::size_t i = 0; i < kChartSeries; ++i)
        choices.append({.id = idOf(i), .word = wordOf(static_cast<ChartSeries>(i))});
    choose(tr("What shall be charted?"), choices, [this](const QString& id, const AnswerTap&) {
        TrendWish next = m_wish;
        next.series = static_cast<ChartSeries>(indexIn(id));
        wish(next);
    });
}

// --- of whom -------------------------------------------------------------------------------------

namespace {

template <typename Id>
QList<Choice> choicesOf(const std::set<Id>& ids, const auto& wordOfId)
{
    QList<Choice> choices;
    for (const Id& id : ids)
        choices.append({.id = QStringLiteral("id:") + idText(id), .word = wordOfId(id)});
    return choices;
}

std::string idIn(const QString& id) { return id.mid(3).toStdString(); }

}  // namespace

void TrendsPage::askWhose()
{
    std::set<PersonId> persons;
    std::set<StationId> benches;
    std::set<LotId> lots;
    for (const ChartPoint& point : m_points.all) {
        if (!point.person.empty())
            persons.insert(point.person);
        benches.insert(point.bench);
        lots.insert(point.lots.begin(), point.lots.end());
    }
    const auto more = [](const char* id, const QString& word, bool isThere, const QString& holds) {
        return Choice{.id = QString::fromLatin1(id),
                      .word = word,
                      .line = holds,
                      .reason = isThere ? QString() : tr("none in these days")};
    };
    const QList<Choice> choices{
        {.id = QStringLiteral("all"), .word = tr("of all")},
        more("person", tr("one person …"), !persons.empty(), m_people.of(m_wish.person)),
        more("lot", tr("one lot …"), !lots.empty(), idText(m_wish.lot)),
        more("bench", tr("one bench …"), !benches.empty(), idText(m_wish.bench)),
        {.id = QStringLiteral("names"),
         .word = m_people.areHidden() ? tr("show names") : tr("hide names"),
         .line = tr("on this page")}};
    choose(tr("Of whom and what?"), choices, [=, this](const QString& id, const AnswerTap&) {
        TrendWish next = m_wish;
        if (id == QLatin1String("all"))
            return wish({.series = m_wish.series});
        if (id == QLatin1String("names")) {
            m_people.hide(!m_people.areHidden());
            return wish(next);
        }
        if (id == QLatin1String("person") && !persons.empty())
            return askName(
                tr("Which person?"),
                choicesOf(persons, [this](const PersonId& one) { return m_people.of(one); }), 0,
                [this, next](const QString& name, const AnswerTap&) mutable {
                    next.person = {idIn(name)};
                    wish(next);
                });
        const auto word = [](const auto& one) { return idText(one); };
        if (id == QLatin1String("lot") && !lots.empty())
            return askName(tr("Which lot?"), choicesOf(lots, word), 0,
                           [this, next](const QString& name, const AnswerTap&) mutable {
                               next.lot = {idIn(name)};
                               wish(next);
                           });
        if (id == QLatin1String("bench") && !benches.empty())
            askName(tr("Which bench?"), choicesOf(benches, word), 0,
                    [this, next](const QString& name, const AnswerTap&) mutable {
                        next.bench = {idIn(name)};
                        wish(next);
                    });
    });
}

/// So many at a time as have room; the last choice brings the next ones.
void TrendsPage::askName(const QString& title, const QList<Choice>& names, int from,
                         Asker::Chosen chosen)
{
    QList<Choice> shown = names.mid(from, kNamesAtATime);
    if (names.size() > kNamesAtATime)
        shown.append(
            {.id = QStringLiteral("more"), .word = tr("more …", "names"), .mark = Mark::Arrow});
    choose(title, shown, [=, this](const QString& id, const AnswerTap& tap) {
        if (id != QLatin1String("more"))
            return chosen(id, tap);
        const int next = from + kNamesAtATime;
        askName(title, names, next < names.size() ? next : 0, chosen);
    });
}

// --- of which days -------------------------------------------------------------------------------

void TrendsPage::showDays(Day first, Day last)
{
    m_first = first;
    m_last = last;
    m_ask->close();
    pick({});
    read();
}

void TrendsPage::askDays()
{
    QList<Choice> choices{{.id = QStringLiteral("last:1"), .word = tr("today")}};
    for (const int days : {7, 30, 90, 365})
        choices.append({.id = QStringLiteral("last:%1").arg(days),
                        .word = tr("the last %n day(s)", nullptr, days)});
    choices.append({.id = QStringLiteral("earlier"), .word = tr("as many days earlier")});
    choices.append({.id = QStringLiteral("later"),
                    .word = tr("as many days later"),
                    .reason = m_last >= today() ? tr("up to today now") : QString()});
    choices.append({.id = QStringLiteral("typed"), .word = tr("from … to …", "days, typed")});
    choose(tr("Which days?"), choices, [this](const QString& id, const AnswerTap&) {
        const auto length = m_last - m_first + std::chrono::days(1);
        if (id == QLatin1String("earlier"))
            return showDays(m_first - length, m_last - length);
        if (id == QLatin1String("later"))
            return m_last < today() ? showDays(m_first + length, m_last + length) : void();
        if (id == QLatin1String("typed"))
            return askDay(tr("The first day? Year, month, day, e.g. 20270131"), [this](Day first) {
                askDay(tr("The last day? Year, month, day, e.g. 20270131"),
                       [this, first](Day last) {
                           showDays(std::min(first, last), std::max(first, last));
                       });
            });
        showDays(today() - std::chrono::days(id.mid(5).toInt() - 1), today());
    });
}

/// Eight digits, as certificates print a day.
void TrendsPage::askDay(const QString& title, const std::function<void(Day)>& chosen)
{
    constexpr qint64 kFirst = 20200101, kLast = 20991231;
    m_ask->number({.title = title, .lowest = kFirst, .highest = kLast},
                  [this, chosen](qint64 digits, const AnswerTap&) {
                      const std::string text = std::to_string(digits);
                      const auto day = dayFrom(text.substr(0, 4) + "-" + text.substr(4, 2) + "-" +
                                               text.substr(6, 2));
                      if (!day)
                          return tell(Role::HeadsUp, tr("There is no such day. Type it again."));
                      chosen(*day);
                  });
}

// --- by which rules, against which limits
// ----------------------------------------------------------

void TrendsPage::askRules()
{
    QList<Choice> choices;
    for (std::size_t i = 0; i < Names<RunRule>::all.size(); ++i) {
        const auto rule = static_cast<RunRule>(i);
        const bool isOn = m_wanted.contains(rule);
        const auto broken = std::ranges::count(m_trend.breaks, rule, &RunSignal::rule);
        choices.append({.id = idOf(i),
                        .word = wordOf(rule),
                        .line = isOn ? tr("on: %n point(s)", "a rule", static_cast<int>(broken))
                                     : tr("off", "a rule"),
                        .role = isOn ? Role::Good : Role::Neutral,
                        .mark = isOn ? Mark::Tick : Mark::None});
    }
    choose(tr("Which rules shall be looked for?"), choices,
           [this](const QString& id, const AnswerTap&) {
               const auto rule = static_cast<RunRule>(indexIn(id));
               if (!m_wanted.erase(rule))
                   m_wanted.insert(rule);
               wish(m_wish);
               askRules();
           });
}

void TrendsPage::askLimits()
{
    const auto many = static_cast<int>(m_trend.points.size());
    const int at = m_picked ? static_cast<int>(*m_picked) : -1;
    const auto choice = [](const char* id, const QString& word, int points) {
        const bool isFew = points < static_cast<int>(kFewestForLimits);
        return Choice{.id = QString::fromLatin1(id),
                      .word = word,
                      .line = tr("%n point(s)", nullptr, points),
                      .reason = isFew ? tr("at least %1 points").arg(kFewestForLimits) : QString()};
    };
    QList<Choice> choices{choice("all", tr("all points shown"), many)};
    if (m_picked) {
        choices.append(choice("until", tr("up to the point picked"), at + 1));
        choices.append(choice("since", tr("from the point picked on"), many - at));
    }
    if (m_trend.from == LimitsFrom::Baseline)
        choices.append({.id = QString::fromLatin1(kNone),
                        .word = tr("from no baseline any more"),
                        .line = tr("the points shown give the limits")});
    choose(tr("Which points shall the limits of this chart come from, from now on? A shift lead "
              "signs."),
           choices, [this, choices, at](const QString& id, const AnswerTap&) {
               if (id == QLatin1String(kNone))
                   return askWithdrawal();
               const auto picked = std::ranges::find(choices, id, &Choice::id);
               if (picked == choices.end() || !picked->reason.isEmpty())
                   return;
               const auto& points = m_trend.points;
               const auto place = static_cast<std::size_t>(std::max(at, 0));
               const bool isUntil = id == QLatin1String("until"),
                          isSince = id == QLatin1String("since");
               askBaseline(isSince ? points[place].seq : points.front().seq,
                           isUntil ? points[place].seq : points.back().seq);
           });
}

void TrendsPage::askBaseline(Seq from, Seq to)
{
    signBaseline(tr("Approved: baseline of \"%1\", events %2 to %3.", "chart, events")
                     .arg(wishText(m_wish, m_people))
                     .arg(from)
                     .arg(to),
                 {chartNameOf(m_wish), from, to}, tr("The baseline is chosen and signed by %1."));
}

/// Of the chart that gave it: this one, or that of everybody.
void TrendsPage::askWithdrawal()
{
    const bool isOwn = m_trend.baseline == chartNameOf(m_wish);
    const TrendWish of = isOwn ? m_wish : TrendWish{.series = m_wish.series};
    signBaseline(
        tr("Approved: \"%1\" has no baseline any more.", "chart").arg(wishText(of, m_people)),
        {m_trend.baseline, 0, 0}, tr("The baseline is withdrawn, signed by %1."));
}

void TrendsPage::signBaseline(const QString& what, const BaselineChosen& chosen,
                              const QString& done)
{
    askSignature(m_signing, Act::Approve, what,
                 [this, chosen, done](const Proven& by, const AnswerTap& tap) {
                     if (!m_model.say(ChooseBaseline{by.person(), chosen}, tap.inputMs,
                                      QStringLiteral("trends.baseline")))
                         return;
                     m_ask->close();
                     tell(Role::Good, done.arg(m_people.of(by.person())));
                     read();
                 });
}

}  // namespace bathside::ui
