#include "ui/review/review_talk.h"

#include <QCoreApplication>

#include "ui/text/review.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

struct TalkText {
    Q_DECLARE_TR_FUNCTIONS(ReviewTalk)
};

constexpr int kShortestWords = 3, kLongestWords = 80;
const std::vector kAnyDisposition{Disposition::Use, Disposition::UseWithNote, Disposition::Discard};

Role roleOf(Disposition disposition)
{
    switch (disposition) {
        case Disposition::Use:
            return Role::Good;
        case Disposition::UseWithNote:
            return Role::HeadsUp;
        case Disposition::Discard:
            return Role::Limit;
    }
    Q_UNREACHABLE();
}

Choice back()
{
    return {.id = QStringLiteral("back"),
            .word = TalkText::tr("back"),
            .role = Role::Quiet,
            .mark = Mark::Back};
}

template <typename E>
Choice choiceOf(E value)
{
    return {.id = fromCore(std::string(nameOf(value))), .word = wordOf(value)};
}

template <typename E>
QList<Choice> choicesOf()
{
    QList<Choice> choices;
    for (std::size_t i = 0; i < Names<E>::all.size(); ++i)
        choices.append(choiceOf(static_cast<E>(i)));
    choices.append(back());
    return choices;
}

/// The card's own where it lists any, and always one in words of one's own.
QList<Choice> causesOf(const Card* card, const std::string& language)
{
    if (!card || card->content().causes.empty())
        return choicesOf<Cause>();
    QList<Choice> choices;
    for (const CauseOnCard& cause : card->content().causes)
        choices.append({.id = fromCore(cause.id), .word = fromCore(cause.words.in(language))});
    choices.append(choiceOf(Cause::Other));
    choices.append(back());
    return choices;
}

QString isDone(const QString& what, const QString& who, const QString& time)
{
    return TalkText::tr("%1: signed by %2 at %3.", "what, who, time").arg(what, who, time);
}

}  // namespace

void ReviewTalk::begin(const ReviewCase& one, const std::string& language)
{
    m_case = one;
    m_language = language;
    m_cause = m_words = m_remedy = m_note = {};
    m_disposition.reset();
    m_left = {};
    if (one.deviation)
        return askCause();
    askBag();
}

const Bag* ReviewTalk::bag() const
{
    return m_case.bag ? m_signing.model.bench().bag(*m_case.bag) : nullptr;
}

bool ReviewTalk::isOnItsWay() const { return bag() && bag()->isOpen(); }

void ReviewTalk::askCause()
{
    const Card* card = cardOf(m_signing.model.bench(), *m_case.deviation);
    m_signing.asker.choose(TalkText::tr("%1: what was the cause?").arg(titleOf(m_case)),
                           causesOf(card, m_language), [this](const QString& id, const AnswerTap&) {
                               if (id == back().id)
                                   return m_signing.asker.close();
                               m_cause = id.toStdString();
                               if (named<Cause>(m_cause) == Cause::Other)
                                   return askWords(TalkText::tr("The cause, in your words"),
                                                   &m_words, &ReviewTalk::askRemedy);
                               askRemedy();
                           });
}

void ReviewTalk::askRemedy()
{
    QList<Choice> choices = choicesOf<Remedy>();
    if (m_words.empty())
        choices.insert(choices.size() - 1,
                       {.id = QStringLiteral("words"),
                        .word = TalkText::tr("first add words to the cause …")});
    m_signing.asker.choose(TalkText::tr("What is done so that it does not happen again?"), choices,
                           [this](const QString& id, const AnswerTap&) {
                               if (id == QLatin1String("words"))
                                   return askWords(TalkText::tr("The cause, in your words"),
                                                   &m_words, &ReviewTalk::askRemedy);
                               const auto remedy = named<Remedy>(id.toStdString());
                               if (!remedy)
                                   return m_signing.asker.close();
                               m_remedy = id.toStdString();
                               if (*remedy == Remedy::Other)
                                   return askWords(TalkText::tr("What is done, in your words"),
                                                   &m_remedy, &ReviewTalk::askBag);
                               askBag();
                           });
}

void ReviewTalk::askWords(const QString& title, std::string* into, void (ReviewTalk::*then)())
{
    m_signing.asker.text({.title = title,
                          .shortest = kShortestWords,
                          .longest = kLongestWords,
                          .suggested = {},
                          .signs = TextQuestion::Signs::Any},
                         [this, into, then](const QString& text, const AnswerTap&) {
                             *into = text.toStdString();
                             (this->*then)();
                         });
}

/// Of a bag from a shift before no more is known than that it is down.
void ReviewTalk::askBag()
{
    if (!m_case.about())
        return askSigned();
    const bool isHeld = m_case.hold || (bag() && bag()->held());
    const QString name = subjectText(subjectOf(*m_case.about()));
    const auto lineOf = [&](Disposition what) {
        if (what == Disposition::Discard && isOnItsWay())
            return TalkText::tr("volume left …");
        return isHeld ? TalkText::tr("ends the hold") : QString();
    };
    QList<Choice> choices;
    for (const Disposition what : bag() ? dispositionsFor(*bag()) : kAnyDisposition)
        choices.append({.id = fromCore(std::string(nameOf(what))),
                        .word = isOnItsWay() ? wordOf(what) : wasWordOf(what),
                        .line = lineOf(what),
                        .role = roleOf(what)});
    choices.append(back());
    m_signing.asker.choose(isOnItsWay()
                               ? TalkText::tr("What becomes of %1?").arg(name)
                               : TalkText::tr("%1 is down: what was done with it?").arg(name),
                           choices, [this](const QString& id, const AnswerTap&) {
                               m_disposition = named<Disposition>(id.toStdString());
                               if (!m_disposition)
                                   return m_signing.asker.close();
                               if (*m_disposition == Disposition::UseWithNote)
                                   return askNote();
                               if (*m_disposition == Disposition::Discard && isOnItsWay())
                                   return askLeft();
                               askSigned();
                           });
}

void ReviewTalk::askNote()
{
    askWords(TalkText::tr("The note for the bag"), &m_note, &ReviewTalk::askSigned);
}

void ReviewTalk::askLeft()
{
    const Bench& bench = m_signing.model.bench();
    const qint64 most = bag()->volume.count + bench.card->content().syringe.count;
    m_signing.asker.number({.title = TalkText::tr("How much is left in the bag?"),
                            .unit = QStringLiteral("mL"),
                            .lowest = 0,
                            .highest = most,
                            .decimals = 3,
                            .typedDecimals = 0,
                            .suggested = {}},
                           [this](qint64 left, const AnswerTap&) {
                               m_left = {left};
                               askSigned();
                           });
}

/// Names the case, its bag and what becomes of that.
QString ReviewTalk::signedSentence() const
{
    QStringList parts{fullTitleOf(m_case, m_signing.zone)};
    if (m_disposition)
        parts.append(isOnItsWay() ? wordOf(*m_disposition) : wasWordOf(*m_disposition));
    if (!m_note.empty())
        parts.append(fromCore(m_note));
    return QStringLiteral("%1. %2").arg(parts.join(QStringLiteral(": ")),
                                        meaningText(Meaning::Reviewed));
}

void ReviewTalk::askSigned()
{
    askSignature(m_signing, Act::Judge, signedSentence(),
                 [this](const Proven& by, const AnswerTap& tap) { write(by, tap); });
}

std::string ReviewTalk::becomes() const
{
    return m_disposition ? bathside::textOf(*m_disposition, m_note) : std::string();
}

/// A discarded bag's hold is decided on, too. What the lead decides comes last:
/// no tap goes back behind it.
std::vector<Intent> ReviewTalk::intents(const PersonId& by) const
{
    std::vector<Intent> all;
    if (m_disposition == Disposition::Discard && isOnItsWay())
        all.emplace_back(TakeBagDown{bag()->id, DownReason::Discarded, m_left, by});
    if (m_case.deviation)
        all.emplace_back(ReviewDeviation{by,
                                         {.of = m_case.deviation->seq,
                                          .cause = m_cause,
                                          .words = m_words,
                                          .action = bathside::actionText(m_remedy, becomes())}});
    else
        all.emplace_back(Sign{by,
                              Meaning::Reviewed,
                              {m_case.hold->seq},
                              "bag " + m_case.hold->fact.bag.text + ": " + becomes()});
    if (bag() && bag()->held())
        all.emplace_back(ReleaseBag{bag()->id, by, becomes()});
    else if (m_case.hold)
        all.emplace_back(ReleaseBag{m_case.hold->fact.bag, by, becomes(), m_case.hold->seq});
    return all;
}

/// All of it or nothing: what would be refused is found before the first is said.
void ReviewTalk::write(const Proven& by, const AnswerTap& tap)
{
    StationModel& model = m_signing.model;
    const std::vector<Intent> all = intents(by.person());
    for (const Intent& intent : all) {
        if (const auto no = model.refusal(intent)) {
            m_signing.asker.close();
            return model.refuse(*no);
        }
    }
    int part = 0;
    for (const Intent& intent : all)
        model.say(intent, tap.inputMs, QStringLiteral("review.signed.%1").arg(++part));
    m_signing.asker.close();
    m_signing.tell(isDone(titleOf(m_case), personText(model.bench().people, by.person()),
                          localTimeText(model.now().wall, m_signing.zone)));
}

}  // namespace bathside::ui
