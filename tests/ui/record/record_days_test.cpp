// Which days the record page shows: several together, and of many a stretch at a time.

#include "tests/ui/record/record_stand.h"

namespace bathside::test {
namespace {

TEST_F(Record, showsAWeekTogetherAndMovesByIt)
{
    begin();
    stand().taps({"record.filter", "record.ask.day", "record.ask.last:7"});
    EXPECT_EQ(page().days(), (ui::DayRange{day(-6), trail().today}));
    trail().answer();
    EXPECT_EQ(page().day().rowCount(), static_cast<int>(kept().size()));
    EXPECT_TRUE(list()
                    .model()
                    ->index(0, 0)
                    .data(ui::DayModel::TimeRole)
                    .toString()
                    .contains(QStringLiteral("5 Mar")));
    EXPECT_TRUE(title().contains(QStringLiteral("Fri 27 February 2026 to Thu 5 March 2026")));
    stand().tap(QStringLiteral("record.before"));
    trail().answer();
    EXPECT_EQ(page().days(), (ui::DayRange{day(-13), day(-7)}));
}

TEST_F(Record, takesDaysByDate)
{
    begin();
    const auto ask = [this](const char* first, const char* last) {
        stand().taps({"record.filter", "record.ask.day", "record.ask.dates"});
        digits(first);
        if (last)
            digits(last);
    };
    ask("20260301", "20260305");
    EXPECT_EQ(page().days(), (ui::DayRange{day(-4), trail().today}));
    trail().answer();
    ask("20260230", nullptr);
    EXPECT_TRUE(stand().target(QStringLiteral("pad.set")));
    EXPECT_EQ(page().days(), (ui::DayRange{day(-4), trail().today}));
    stand().tap(QStringLiteral("pad.cancel"));
    ask("20260301", "20260228");  // the other way round
    EXPECT_EQ(page().days(), (ui::DayRange{day(-4), trail().today}));
    stand().tap(QStringLiteral("pad.cancel"));
    EXPECT_TRUE(list().isVisible());
}

// A year is asked for in stretches: the newest, with what is wished, and from there back and forth.
class LongRecord : public Record {
protected:
    void showAYear()
    {
        begin();
        stand().taps({"record.filter", "record.ask.day", "record.ask.last:365"});
        ASSERT_EQ(trail().stretches.size(), 1U);
    }
    /// As many entries as there may be, the first with that seq.
    void answerFrom(Seq first, int count = ui::RecordSource::kStretch)
    {
        std::vector<Entry> entries;
        for (int i = 0; i < count; ++i) {
            Entry entry = trail().entries().front();
            entry.seq = first + i;
            entries.push_back(entry);
        }
        emit trail().entriesRead(page().days(), entries);
        emit trail().laterRead(page().days(), {});
        emit trail().dayRead(page().days(), std::nullopt);
    }
    [[nodiscard]] const Trail::Stretch& asked() { return trail().stretches.back(); }
};

TEST_F(LongRecord, showsTheNewestStretchAndSaysThatThereIsMore)
{
    showAYear();
    EXPECT_EQ(page().days().count(), 365);
    EXPECT_EQ(asked().before, ui::RecordSource::kNewest);
    EXPECT_EQ(page().day().rowCount(), 0);
    answerFrom(5001);
    EXPECT_EQ(picked(), 6000);
    const QString time = list().model()->index(0, 0).data(ui::DayModel::TimeRole).toString();
    EXPECT_TRUE(time.startsWith(QStringLiteral("5 Mar 26 ")))
        << "a year began within: " << time.toStdString();
    EXPECT_TRUE(list().fits());
    EXPECT_TRUE(title().contains(QStringLiteral("1000 entries · earlier ones: up")))
        << title().toStdString();
    EXPECT_FALSE(title().contains(QStringLiteral("later ones")));
}

TEST_F(LongRecord, goesBackAndForthByStretches)
{
    showAYear();
    answerFrom(5001);
    list().goTo(0);
    stand().tap(QStringLiteral("record.page-up"));
    ASSERT_EQ(trail().stretches.size(), 2U);
    EXPECT_EQ(asked().before, 5001);
    answerFrom(4700, 300);
    EXPECT_EQ(picked(), 4999);
    EXPECT_FALSE(title().contains(QStringLiteral("earlier ones")));
    EXPECT_TRUE(title().contains(QStringLiteral("later ones: down")));
    list().goTo(0);
    stand().tap(QStringLiteral("record.up"));
    EXPECT_EQ(trail().stretches.size(), 2U) << "there is nothing before it";
    list().goTo(299);
    stand().tap(QStringLiteral("record.down"));
    ASSERT_EQ(trail().stretches.size(), 3U);
    EXPECT_EQ(asked().before, ui::RecordSource::kNewest);
    answerFrom(5001);
    EXPECT_EQ(picked(), 5001) << "on with the first of the next";
}

TEST_F(LongRecord, whatIsRecordedMeanwhileIsReadWhenItIsAskedFor)
{
    showAYear();
    answerFrom(1, 20);
    stand().say(MakeNote{"later"});
    RecordState state = stand().model().record();
    state.recorded = kept().back().seq;
    stand().recorded(state);
    EXPECT_EQ(trail().stretches.size(), 1U);
    EXPECT_TRUE(title().contains(QStringLiteral("later ones: down"))) << title().toStdString();
    stand().tap(QStringLiteral("record.down"));
    EXPECT_EQ(trail().stretches.size(), 2U);
}

// What is wished for on one day is looked for in all of them; what no entry names is typed.
TEST_F(LongRecord, aWishIsLookedForInAllOfTheDays)
{
    begin();
    stand().taps({"record.filter", "record.ask.lot", "record.ask.id:K07-112"});
    stand().taps({"record.filter", "record.ask.day", "record.ask.last:365"});
    ASSERT_EQ(trail().stretches.size(), 1U);
    EXPECT_EQ(asked().wish.lot, "K07-112");
    EXPECT_FALSE(asked().wish.isOfKind);
    answerFrom(11, 5);
    EXPECT_EQ(page().day().rowCount(), 5);
    EXPECT_EQ(list().model()->rowCount(), 5) << "the source has chosen";
    EXPECT_TRUE(title().contains(QStringLiteral("only lot K07-112 · 5 entries")))
        << title().toStdString();
    EXPECT_TRUE(stand().target(QStringLiteral("record.clear")));
    stand().taps({"record.filter", "record.ask.group:1"});
    ASSERT_EQ(trail().stretches.size(), 2U);
    EXPECT_TRUE(asked().wish.isOfKind("ampoule.out"));
    EXPECT_FALSE(asked().wish.isOfKind("bag.mixed"));
    answerFrom(11, 5);
    stand().taps({"record.filter", "record.ask.bag", "record.ask.typed"});
    stand().taps({"letters.B", "letters.X", "letters.set"});
    ASSERT_EQ(trail().stretches.size(), 3U);
    EXPECT_EQ(asked().wish.bag, "BX");
    answerFrom(11, 0);
    EXPECT_TRUE(title().contains(QStringLiteral("0 entries"))) << title().toStdString();
    stand().tap(QStringLiteral("record.clear"));
    ASSERT_EQ(trail().stretches.size(), 4U);
    EXPECT_TRUE(asked().wish.bag.empty() && asked().wish.lot.empty());
    answerFrom(11, 5);
    EXPECT_FALSE(stand().target(QStringLiteral("record.clear")));
}

// A question that is overtaken by another is not shown.
TEST_F(LongRecord, onlyTheLastQuestionsAnswerIsShown)
{
    showAYear();
    stand().taps({"record.filter", "record.ask.group:1"});
    EXPECT_EQ(trail().stretches.size(), 1U) << "one question at a time";
    answerFrom(1, 5);
    EXPECT_EQ(page().day().rowCount(), 0);
    ASSERT_EQ(trail().stretches.size(), 2U);
    answerFrom(1, 3);
    EXPECT_EQ(page().day().rowCount(), 3);
}

TEST_F(LongRecord, afterDamageItSaysWhereTheEarlierEntriesAre)
{
    begin();
    trail().earlier = 480;
    stand().taps({"record.filter", "record.ask.day", "record.ask.last:365"});
    answerFrom(481, 7);
    EXPECT_TRUE(title().contains(QStringLiteral("up to 480 are in an earlier file")))
        << title().toStdString();
}

}  // namespace
}  // namespace bathside::test
