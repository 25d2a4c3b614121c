// Every enumerator, refusal, fault, question and kind of fact has words in each language: not
// empty, no gap left unfilled, and in Spanish not the English ones.

#include "ui/text/words.h"

#include <QCoreApplication>
#include <QEvent>
#include <QLocale>
#include <QWidget>
#include <functional>
#include <vector>

#include <gtest/gtest.h>

#include "core/card/read.h"
#include "ui/text/alarms.h"
#include "ui/text/facts.h"
#include "ui/text/faults.h"
#include "ui/text/language.h"
#include "ui/text/questions.h"
#include "ui/text/refusals.h"
#include "ui/text/short_facts.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

constexpr auto kRefusals = static_cast<std::size_t>(RefusalCode::StationNotStarted) + 1;
constexpr auto kDeeds = static_cast<std::size_t>(NextDeed::Wait) + 1;
constexpr auto kQuestions = static_cast<std::size_t>(QuestionKind::WhichAmpoule) + 1;
constexpr auto kPrintFaults = static_cast<std::size_t>(PrintFault::CannotWrite) + 1;
constexpr auto kHealths = static_cast<std::size_t>(RecordState::Health::NotRecorded) + 1;

/// All texts of core's closed sets in the language that holds now.
class AllTexts {
public:
    [[nodiscard]] std::vector<QString> all()
    {
        named<Step>();
        named<Level>();
        named<LossReason>();
        named<HoldReason>();
        named<DownReason>();
        named<LimitName>();
        named<Verdict>();
        named<ReadingFault>();
        named<ReadingWarning>();
        named<Proof>();
        named<Severity>();
        named<Sort>();
        each<LimitName>(kLimits,
                        [](LimitName limit) { return untilText(limit) + u'|' + pastText(limit); });
        each<NextDeed>(kDeeds, [](NextDeed deed) { return doneWord(deed, Step::Opened, 2); });
        each<Step>(kSteps, [](Step step) { return doneWord(NextDeed::MoveOn, step, 1); });
        each<RecordState::Health>(kHealths, [](auto health) { return wordOf(health); });
        each<RecordState::Health>(kHealths - 1, [](auto health) {
            RecordState record;
            record.health = static_cast<RecordState::Health>(static_cast<int>(health) + 1);
            record.waiting = 3;
            return recordText(record);
        });
        each<StoreFault>(Names<StoreFault>::all.size(), [](StoreFault fault) {
            return faultText(StoreTrouble{fault, 28});
        });
        each<ScanFaultKind>(Names<ScanFaultKind>::all.size(), [](ScanFaultKind kind) {
            return faultText(ScanFault{kind, 3, "01"});
        });
        each<PrintFault>(kPrintFaults, [](PrintFault fault) { return faultText(fault); });
        each<StationCause>(Names<StationCause>::all.size(), [](StationCause cause) {
            Alarm alarm;
            alarm.cause = cause;
            return alarmText(alarm, nullptr, "en");
        });
        each<RefusalCode>(kRefusals, [](RefusalCode code) {
            return refusalText({code, subjectOf(BagId{"B4"}), "birds"});
        });
        each<SubjectKind>(Names<SubjectKind>::all.size(), [](SubjectKind kind) {
            return fullSubjectText({kind, "7"});
        });
        each<QuestionKind>(kQuestions, [](QuestionKind kind) {
            return questionText({"id", kind, subjectOf(AmpouleRef{3, 2}), LimitName::Thaw, {}});
        });
        for (const char* choice : {"interrupted", "too many at once", "hard to open", "tapped late",
                                   "small ampoule", "warm bath", "other", "yes"})
            texts.push_back(choiceText(QuestionKind::WhyLate, choice));
        facts(std::make_index_sequence<std::variant_size_v<AnyFact>>());
        return std::move(texts);
    }

private:
    template <typename E>
    void each(std::size_t count, const std::function<QString(E)>& text)
    {
        for (std::size_t i = 0; i < count; ++i)
            texts.push_back(text(static_cast<E>(i)));
    }
    template <typename E>
    void named()
    {
        each<E>(Names<E>::all.size(), [](E value) { return wordOf(value); });
    }
    template <std::size_t... I>
    void facts(std::index_sequence<I...>)
    {
        (texts.push_back(factText(std::variant_alternative_t<I, AnyFact>{})), ...);
    }

    std::vector<QString> texts;
};

class Words : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(language.use(QStringLiteral("en"))); }
    void TearDown() override { language.use(QStringLiteral("en")); }

    Language language;
};

TEST_F(Words, areThereInEachLanguage)
{
    const std::vector<QString> english = AllTexts().all();
    ASSERT_TRUE(language.use(QStringLiteral("es")));
    const std::vector<QString> spanish = AllTexts().all();
    ASSERT_EQ(english.size(), spanish.size());
    for (std::size_t i = 0; i < english.size(); ++i) {
        SCOPED_TRACE(qPrintable(english[i]));
        for (const QString& text : {english[i], spanish[i]}) {
            EXPECT_FALSE(text.trimmed().isEmpty());
            EXPECT_FALSE(text.contains(QStringLiteral("%"))) << qPrintable(text);
            EXPECT_FALSE(text.contains(QStringLiteral("(s)"))) << qPrintable(text);
        }
        const bool sameInBoth =  // a number or a name alone
            english[i] == QStringLiteral("8") || english[i] == QStringLiteral("7");
        EXPECT_TRUE(sameInBoth || english[i] != spanish[i]);
    }
}

TEST_F(Words, pluralsAreOfEachLanguage)
{
    EXPECT_EQ(ampoulesText(1), QStringLiteral("1 ampoule"));
    EXPECT_EQ(ampoulesText(3), QStringLiteral("3 ampoules"));
    language.use(QStringLiteral("es"));
    EXPECT_EQ(ampoulesText(1), QStringLiteral("1 ampolla"));
    EXPECT_EQ(ampoulesText(3), QStringLiteral("3 ampollas"));
    EXPECT_NE(doneWord(NextDeed::MoveOn, Step::Opened, 1),
              doneWord(NextDeed::MoveOn, Step::Opened, 2));
}

class Listener final : public QWidget {
public:
    int heard = 0;

protected:
    void changeEvent(QEvent* event) override
    {
        heard += event->type() == QEvent::LanguageChange ? 1 : 0;
    }
};

TEST_F(Words, switchAtRunTimeWithQtsOwnAndTheNumbers)
{
    Listener listener;
    listener.show();
    ASSERT_TRUE(language.use(QStringLiteral("es")));
    QCoreApplication::processEvents();
    EXPECT_GE(listener.heard, 1);
    EXPECT_EQ(language.code(), QStringLiteral("es"));
    EXPECT_EQ(QLocale().decimalPoint(), QStringLiteral(","));
    EXPECT_EQ(QCoreApplication::translate("QPlatformTheme", "Cancel"), QStringLiteral("Cancelar"));
    EXPECT_FALSE(language.use(QStringLiteral("xx")));
    EXPECT_EQ(language.code(), QStringLiteral("es"));
}

TEST_F(Words, refusalsSayWhomAndWhat)
{
    EXPECT_EQ(refusalText({RefusalCode::AmpouleIsLost, subjectOf(AmpouleRef{3, 2}), {}}),
              QStringLiteral("Ampoule 2 is lost. It takes no more steps."));
    EXPECT_EQ(refusalText({RefusalCode::LineHasBag, subjectOf(LineId{"A"}), "B4"}),
              QStringLiteral("Line A: take bag B4 down first."));
    EXPECT_EQ(
        refusalText({RefusalCode::CheckStillOpen, {}, "alarm-heard"}),
        QStringLiteral("The check \"alarm-heard\" is open. Do it, or override it with a reason."));
}

Fact bathOf(int no, bool timed = true) { return AmpouleInBath{{1, no}, timed}; }

TEST_F(Words, oneTapIsSaidInAFewWords)
{
    EXPECT_EQ(shortText(std::vector<Fact>{bathOf(1), bathOf(2)}), QStringLiteral("in bath 1, 2"));
    const std::vector<Fact> implied{bathOf(1, false), AmpouleOpened{{1, 1}, true},
                                    DeviationFound{}};
    EXPECT_EQ(shortText(implied), QStringLiteral("opened 1, deviation"));
    EXPECT_EQ(shortText(Fact{BagMixed{BagId{"B4"}}}), QStringLiteral("bag B4 mixed"));
    EXPECT_TRUE(shortText(Fact{AlarmRaised{}}).isEmpty());
}

TEST_F(Words, factsAreWholeSentences)
{
    EXPECT_EQ(factText(AmpouleInBath{{3, 2}, true}),
              QStringLiteral("Ampoule 2 of pull 3 went into the bath."));
    EXPECT_EQ(factText(AmpouleInBath{{3, 2}, false}),
              QStringLiteral(
                  "Ampoule 2 of pull 3 went into the bath. Implied by a later step, not timed."));
    EXPECT_EQ(
        factText(DeviationFound{LimitName::Thaw, subjectOf(AmpouleRef{3, 2}), {}, 1200, {}}),
        QStringLiteral("Deviation: time from bath to diluent, ampoule 2 of pull 3, by 1.2 s."));
    EXPECT_EQ(factText(AlarmHeard{"vessel low station:V2"}),
              QStringLiteral("Alarm heard: vessel low, V2."));
    EXPECT_EQ(factText(AlarmHeard{"something of a later version"}),
              QStringLiteral("Alarm heard: something of a later version."));
    EXPECT_EQ(factText(AlarmHeard{"thaw ampoule:3/2"}),
              QStringLiteral("Alarm heard: time from bath to diluent, ampoule 2 of pull 3."));
}

TEST_F(Words, aLoudspeakerWithoutANameIsNotNamed)
{
    EXPECT_EQ(factText(SoundLost{"USB"}), QStringLiteral("The sound was lost on USB."));
    EXPECT_EQ(factText(SoundLost{}), QStringLiteral("The sound was lost."));
    EXPECT_EQ(factText(SoundFound{}), QStringLiteral("The sound is back."));
    EXPECT_EQ(factText(SoundProven{}), QStringLiteral("The alarm was heard."));
}

TEST_F(Words, valuesFromTheTrailStandAsTheyAreEvenWithPercentSigns)
{
    EXPECT_EQ(factText(BagReleased{BagId{"%2"}, PersonId{"%3"}, "100 %1"}),
              QStringLiteral("%3 ended the hold of bag %2: 100 %1."));
}

}  // namespace
}  // namespace bathside::ui
