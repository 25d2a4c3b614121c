// What the record page asks beyond a choice: which days, and a shift lead's comment.

#include "core/base/day.h"
#include "ui/bench/ask_pane.h"
#include "ui/record/record_page.h"
#include "ui/text/refusals.h"
#include "ui/text/review.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

constexpr int kShortestComment = 3, kLongestComment = 80;

/// Eight digits: year, month, day.
NumberQuestion dateQuestion(const QString& title)
{
    return {.title = title,
            .unit = {},
            .lowest = 20200101,
            .highest = 20991231,
            .decimals = 0,
            .typedDecimals = 0,
            .suggested = {}};
}

std::optional<Date> dateFrom(qint64 digits)
{
    const std::string text = std::to_string(digits);
    const auto day = dayFrom(text.substr(0, 4) + "-" + text.substr(4, 2) + "-" + text.substr(6, 2));
    return day ? std::optional<Date>(*day) : std::nullopt;
}

}  // namespace

void RecordPage::askDays()
{
    const Date today = m_source.currentDay();
    QList<Choice> choices{{.id = QStringLiteral("day:now"), .word = tr("today")}};
    for (const int days : {7, 30, 365})
        choices.append({.id = QStringLiteral("day:-%1").arg(days),
                        .word = tr("%n day(s) earlier", nullptr, days),
                        .line = dayText(daysAfter(m_days.last, -days))});
    for (const int days : {7, 30, 365}) {
        if (daysAfter(m_days.last, days) < today)
            choices.append({.id = QStringLiteral("day:%1").arg(days),
                            .word = tr("%n day(s) later", nullptr, days),
                            .line = dayText(daysAfter(m_days.last, days))});
    }
    for (const int days : {kWholeDays, 31, 365})
        choices.append({.id = QStringLiteral("last:%1").arg(days),
                        .word = tr("%n day(s) together", nullptr, days),
                        .line = tr("up to %1").arg(dayText(m_days.last))});
    choices.append({.id = QStringLiteral("dates"), .word = tr("by date …")});
    choose(tr("Which days?"), choices, [this, today](const QString& id) {
        if (id == QLatin1String("dates"))
            return askFirst();
        if (id == QLatin1String("day:now"))
            return showDays({today, today}, m_wish);
        const int days = id.section(u':', 1).toInt();
        if (id.startsWith(QLatin1String("last:")))
            return showDays({daysAfter(m_days.last, 1 - days), m_days.last}, m_wish);
        const Date day = daysAfter(m_days.last, days);
        showDays({day, day}, m_wish);
    });
}

void RecordPage::askFirst()
{
    put(Over::Question);
    m_ask->number(dateQuestion(tr("From which day? Year, month, day, e.g. 20270131")),
                  [this](qint64 digits, const AnswerTap&) {
                      const auto first = dateFrom(digits);
                      if (!first)
                          return tell(tr("There is no such day."));
                      askLast(*first);
                  });
}

void RecordPage::askLast(Date first)
{
    NumberQuestion question = dateQuestion(
        tr("From %1 to which day? The same one for that day alone").arg(dayText(first)));
    question.suggested = int(first.year()) * 10000 +
                         static_cast<int>(unsigned(first.month())) * 100 +
                         static_cast<int>(unsigned(first.day()));
    m_ask->number(question, [this, first](qint64 digits, const AnswerTap&) {
        const auto last = dateFrom(digits);
        if (!last || *last < first)
            return tell(tr("There is no such day, or it is before the first one."));
        showDays({first, *last}, m_wish);
    });
}

// --- a comment on a note -------------------------------------------------------------------------

/// By the same rule that will judge it.
bool RecordPage::offersComment() const
{
    const DayRow* row = picked();
    if (!row || !row->fact || !std::holds_alternative<NoteMade>(*row->fact))
        return false;
    const Bench& bench = m_model.bench();
    const auto leads = signersFor(bench, m_parts.pins, Act::Judge);
    return !leads.empty() &&
           m_model.wouldTake(CommentNote{leads.front(), {.of = row->entry.seq, .text = "?"}});
}

void RecordPage::pressComment(const TapStamp& stamp)
{
    if (!offersComment())
        return;
    const Seq note = picked()->entry.seq;
    m_signing.zone = m_source.zone();
    m_ask->opening(stamp.inputMs);
    put(Over::Question);
    m_ask->text(
        {.title = tr("Comment on the note of entry %1").arg(note),
         .shortest = kShortestComment,
         .longest = kLongestComment,
         .suggested = {},
         .signs = TextQuestion::Signs::Any},
        [this, note](const QString& text, const AnswerTap&) { askCommentSigned(note, text); });
    if (m_model.isInCriticalWindow())
        m_ask->close();
}

void RecordPage::askCommentSigned(Seq note, const QString& text)
{
    askSignature(
        m_signing, Act::Judge, tr("Comment on entry %1: %2", "number, words").arg(note).arg(text),
        [this, note, text](const Proven& by, const AnswerTap& tap) {
            if (!m_model.say(CommentNote{by.person(), {.of = note, .text = text.toStdString()}},
                             tap.inputMs, QStringLiteral("record.comment.signed")))
                return;
            m_ask->close();
            show({Role::Good,
                  tr("Comment on entry %1: signed by %2 at %3.", "number, who, time")
                      .arg(note)
                      .arg(personText(m_model.bench().people, by.person()),
                           localTimeText(m_model.now().wall, m_signing.zone)),
                  {}});
        });
}

/// On the pad while one stands, else over the list.
void RecordPage::tell(const QString& sentence)
{
    if (m_ask->isOpen())
        return m_ask->showRefusal(sentence);
    show({Role::HeadsUp, sentence, {}});
}

void RecordPage::showRefusal(const Refusal& refusal)
{
    if (isVisible() && m_over == Over::Question)
        tell(refusalText(refusal, m_model.bench().card.get(), m_parts.language.cardCode()));
}

}  // namespace bathside::ui
