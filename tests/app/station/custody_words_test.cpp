// Four ways to spoil a record, each done to a real trail as somebody would do it, and what a person
// who knows nothing of chains is told: by `verify`, and on the Record page.

#include <sstream>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "app/cli/verify.h"
#include "app/station/trail_record.h"
#include "core/trail/event_form.h"
#include "core/trail/store/check.h"
#include "tests/app/station/session_stand.h"
#include "tests/core/trail/store/support.h"
#include "ui/record/record_text.h"
#include "ui/text/facts.h"

namespace bathside::app {
namespace {

using namespace std::chrono_literals;
using testing::HasSubstr;

class CustodyWordsTest : public testing::Test {
protected:
    void aSealedShift()
    {
        stand.open();
        stand.say(OpenShift{"Europe/Madrid", {"MK"}});
        for (int i = 0; i < 300; ++i)  // farther back than opening looks
            stand.say(MakeNote{"note"});
        stand.say(CloseShift{});
        SessionStand::waitFor([this] {
            return stand.bench().sealed && *stand.bench().sealed > stand.bench().shift->closed->seq;
        });
        ASSERT_TRUE(stand.session->store().flush(60s));
    }

    void end() { stand.session.reset(); }

    [[nodiscard]] Head head() const
    {
        return store::opened(stand.trail(), store::Mode::ReadOnly)->head();
    }

    struct Said {
        cli::Exit exit{};
        std::string words;
    };

    [[nodiscard]] Said verify(const std::string& witness = {}) const
    {
        std::istringstream in;
        std::ostringstream out, err;
        cli::Terminal terminal{in, out, err};
        cli::VerifyOrder order;
        order.file = stand.trail().string();
        order.head = witness;
        const cli::Exit exit = cli::verifyVerb(order, terminal);
        return {exit, out.str()};
    }

    /// What the Record page's own check says of the trail that is open.
    ui::VerifyAnswer checkedOnThePage()
    {
        TrailRecord record(*stand.session);
        std::optional<ui::VerifyAnswer> answer;
        QObject::connect(&record, &ui::RecordSource::verified, &record,
                         [&](const ui::VerifyAnswer& given) { answer = given; });
        record.verify();
        SessionStand::waitFor([&] { return answer.has_value(); });
        return answer.value_or(ui::VerifyAnswer{});
    }

    SessionStand stand;
};

TEST_F(CustodyWordsTest, anUntouchedRecord)
{
    aSealedShift();
    EXPECT_THAT(ui::sheetOf(checkedOnThePage()).title.toStdString(),
                HasSubstr("The record is sound"));
    end();
    EXPECT_EQ(verify().exit, cli::Exit::Done) << verify().words;
}

TEST_F(CustodyWordsTest, anEntryThatWasChanged)
{
    aSealedShift();
    end();
    ASSERT_EQ(store::tamper(stand.trail(),
                            "UPDATE event SET payload = '{\"text\":\"nothing\"}' "
                            "WHERE seq = 20")
                  .first,
              0);
    EXPECT_THAT(
        verify().words,
        HasSubstr("first bad event: seq 20, bad hash: it was changed after it was written"));
    stand.open();
    EXPECT_THAT(ui::sheetOf(checkedOnThePage()).title.toStdString(),
                HasSubstr("NOT sound. First at entry 20: it was changed after it was written"));
}

TEST_F(CustodyWordsTest, anEndThatWasCutOff)
{
    aSealedShift();
    end();
    const Head noted = head();
    const std::string from = std::to_string(noted.seq - 9);
    ASSERT_EQ(store::tamper(stand.trail(), "DELETE FROM event WHERE seq > " + from +
                                               "; DELETE FROM subject_index WHERE seq > " + from +
                                               "; DELETE FROM loose WHERE seq > " + from +
                                               "; UPDATE shift SET closed_seq = NULL, closed_at = "
                                               "NULL")
                  .first,
              0);
    EXPECT_EQ(verify().exit, cli::Exit::Done) << "without what was noted nobody can tell";
    EXPECT_THAT(
        verify(std::to_string(noted.seq) + ":" + toHex(noted.hash)).words,
        HasSubstr("the trail ends before it: its end was cut off, or this is an older copy"));
    const auto trail = store::opened(stand.trail(), store::Mode::ReadOnly);
    const auto found = store::check(*trail, {noted});
    const ui::Sheet sheet = ui::sheetOf(ui::VerifyAnswer{found.chain, found.projectionsAgree, {}});
    EXPECT_THAT(sheet.title.toStdString(), HasSubstr("the record ends before it"));
}

TEST_F(CustodyWordsTest, aKeyThatWasReplaced)
{
    aSealedShift();
    end();
    std::filesystem::remove(stand.folder / "seal.key");
    aSealedShift();
    EXPECT_TRUE(checkedOnThePage().chain.badSeal);
    end();
    EXPECT_EQ(verify().exit, cli::Exit::No);
    EXPECT_THAT(verify().words, HasSubstr("is by another key than it should be: the key was "
                                          "replaced, or somebody else sealed it"));
}

TEST_F(CustodyWordsTest, aClockThatWasSetBackWhileTheProgramRan)
{
    aSealedShift();
    stand.clock.stepWall(-1h);
    const auto noted = stand.session->station().note(NoteClockStep{-1h});
    ASSERT_TRUE(noted);
    const Seq at = noted->first;
    ASSERT_TRUE(stand.session->store().flush(60s));
    EXPECT_THAT(ui::factText(Fact(ClockStepped{-1h})).toStdString(),
                HasSubstr("The wall clock was put back by"));
    end();
    EXPECT_EQ(verify().exit, cli::Exit::Done);
    EXPECT_THAT(verify().words,
                HasSubstr("The computer's clock was set back once at seq " + std::to_string(at)));
}

TEST_F(CustodyWordsTest, aClockThatWasSetBackWhileItWasOff)
{
    aSealedShift();
    end();
    const Seq last = head().seq;
    stand.clock.restart(stand.clock.now().wall - 24h);
    stand.open();
    const auto& page = checkedOnThePage();
    EXPECT_EQ(page.chain.setBacks, 1);
    const auto fields = ui::sheetOf(page).fields;
    EXPECT_TRUE(std::ranges::any_of(fields, [&](const ui::Field& field) {
        return field.value.contains(QStringLiteral("set back once, at entry %1;").arg(last + 1));
    }));
    end();
    EXPECT_THAT(verify().words, HasSubstr("The computer's clock was set back once at seq " +
                                          std::to_string(last + 1)));
}

}  // namespace
}  // namespace bathside::app
