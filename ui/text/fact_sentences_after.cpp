#include <QCoreApplication>
#include <QStringList>

#include "ui/text/fact_sentences.h"
#include "ui/text/fact_text.h"
#include "ui/text/facts.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

/// The cause that the id begins with, the longest of them; none where it is no cause of that sort.
template <typename Cause>
std::optional<QString> causeName(const std::string& id)
{
    std::optional<Cause> found;
    std::size_t length = 0;
    for (std::size_t i = 0; i < Names<Cause>::all.size(); ++i) {
        const std::string begin = std::string(Names<Cause>::all[i]) + ' ';
        if (id.starts_with(begin) && begin.size() > length) {
            found = static_cast<Cause>(i);
            length = begin.size();
        }
    }
    if (!found)
        return std::nullopt;
    return FactText::tr("%1, %2", "name of a limit, whom it is about")
        .arg(wordOf(*found), fullSubjectText(subjectFromText(id.substr(length))));
}

/// "thaw ampoule:3/2" as people say it; an id that names no cause stands as it is.
QString alarmName(const std::string& id)
{
    if (const auto name = causeName<LimitName>(id))
        return *name;
    return causeName<StationCause>(id).value_or(fromCore(id));
}

QString entries(const std::vector<Seq>& seqs)
{
    QStringList numbers;
    for (const Seq seq : seqs)
        numbers.append(QString::number(seq));
    return numbers.join(QStringLiteral(", "));
}

}  // namespace

QString sentenceOf(const DeviationFound& fact)
{
    return FactText::tr("Deviation: %1, %2, by %3.", "name of the limit, whom, by how much")
        .arg(wordOf(fact.limit), fullSubjectText(fact.subject), overText(fact.limit, fact.over));
}

QString sentenceOf(const Rejudged& fact)
{
    const QString limit = wordOf(fact.limit), whom = fullSubjectText(fact.subject);
    if (!fact.over)
        return FactText::tr("Judged again: %1, %2, the limit was kept.").arg(limit, whom);
    return FactText::tr("Judged again: %1, %2, passed by %3.")
        .arg(limit, whom, overText(fact.limit, *fact.over));
}

QString sentenceOf(const AlarmRaised& fact)
{
    return FactText::tr("Alarm, %1: %2.", "level, what about")
        .arg(wordOf(fact.level), alarmName(fact.alarm));
}

QString sentenceOf(const AlarmSounded& fact)
{
    return FactText::tr("Alarm sounded on %1, %2 after it was due: %3.",
                        "loudspeaker, time, what about")
        .arg(fromCore(fact.device), durationText(fact.late), alarmName(fact.alarm));
}

QString sentenceOf(const AlarmHeard& fact)
{
    return FactText::tr("Alarm heard: %1.").arg(alarmName(fact.alarm));
}
QString sentenceOf(const AlarmEnded& fact)
{
    return FactText::tr("Alarm ended: %1.").arg(alarmName(fact.alarm));
}

QString sentenceOf(const FactCorrected& fact)
{
    return FactText::tr("Entry %1 was corrected: %2 is %3. Reason: %4.",
                        "number, which part, new value, reason")
        .arg(fact.seq)
        .arg(fromCore(fact.field), fromCore(fact.value), fromCore(fact.why));
}

QString sentenceOf(const FactTakenBack& fact)
{
    const auto count = static_cast<int>(fact.seqs.size());
    if (!fact.why || fact.why->empty())
        return FactText::tr("Taken back: %n entries, %1.", "number of entries, which", count)
            .arg(entries(fact.seqs));
    return FactText::tr("Taken back: %n entries, %1. Reason: %2.",
                        "number of entries, which, reason", count)
        .arg(entries(fact.seqs), fromCore(*fact.why));
}

QString sentenceOf(const QuestionAnswered& fact)
{
    return FactText::tr("Asked \"%1\", answered \"%2\".", "question's id, choice")
        .arg(fromCore(fact.question), fromCore(fact.choice));
}

QString sentenceOf(const NoteMade& fact)
{
    return FactText::tr("Note: %1").arg(fromCore(fact.text));
}

QString sentenceOf(const TapRefused& fact)
{
    return FactText::tr("A tap was refused: %1 (%2).", "what was tapped, why")
        .arg(fromCore(fact.tap), fromCore(fact.why));
}

QString sentenceOf(const CodeScanned& fact)
{
    return FactText::tr("Scanned: %1").arg(fromCore(fact.text));
}

}  // namespace bathside::ui
