// What set-up asks about copies of the record, and what it says of how they stand.

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/ui/setup/page_stand.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/text/copies.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;
using Doing = ui::CopyNews::Doing;
using Wrong = ui::CopyNews::Wrong;

class CopyChosen : public testing::Test {
protected:
    CopyChosen() : m_pages(kTenInch, QStringLiteral("en")) { m_pages.show(ui::Frame::kSetUp); }

    [[nodiscard]] Stand& stand() { return m_pages.stand(); }
    void ask() { stand().taps({"setup.screen", "ask.copies"}); }
    [[nodiscard]] QString lineOf(const char* place)
    {
        const auto* target =
            qobject_cast<ui::TapButton*>(stand().target(QString::fromLatin1(place)));
        return target ? target->line() : QStringLiteral("no such target");
    }
    [[nodiscard]] bool says(const QString& text)
    {
        const auto labels = stand().frame().current()->findChildren<ui::Label*>();
        return std::ranges::any_of(labels, [&](const ui::Label* each) {
            return each->isVisible() && each->text().contains(text);
        });
    }
    void tell(std::optional<Stamp> madeAt, Doing doing = {}, Wrong wrong = {}, bool isLate = false)
    {
        ui::CopyNews news;
        news.doing = doing;
        news.wrong = wrong;
        news.madeAt = madeAt;
        news.isLate = isLate;
        m_pages.copies().tell(news);
    }
    [[nodiscard]] const ui::CopyChoice& now() { return m_pages.preferences().now().copies; }
    [[nodiscard]] Stamp ago(Micros age) { return shifted(stand().model().now(), -age); }

    PageStand m_pages;
};

TEST_F(CopyChosen, oneNowByATap)
{
    ask();
    EXPECT_TRUE(says(QStringLiteral("There is no copy of the record yet.")));
    stand().tap(QStringLiteral("ask.copy-now"));
    EXPECT_EQ(m_pages.copies().copied, 1);
    tell({}, Doing::Copying);
    EXPECT_TRUE(says(QStringLiteral("being copied")));
    tell(ago(0s));
    EXPECT_TRUE(says(QStringLiteral("The last copy was made 0 min ago and found sound.")));
}

TEST_F(CopyChosen, theStickThatIsIn)
{
    ask();
    EXPECT_EQ(lineOf("ask.copy-place"), QStringLiteral("this computer"));
    stand().taps({"ask.copy-place", "ask.place:/media/stick/bathside"});
    EXPECT_EQ(now().folder, QStringLiteral("/media/stick/bathside"));
    EXPECT_EQ(lineOf("ask.copy-place"), QStringLiteral("STICK"));
    m_pages.copies().where.pop_back();
    stand().taps({"ask.back", "ask.copies"});
    EXPECT_THAT(lineOf("ask.copy-place").toStdString(), testing::EndsWith("not there now"));
    stand().tap(QStringLiteral("ask.copy-place"));
    EXPECT_EQ(lineOf("ask.place:/media/stick/bathside"), QStringLiteral("not there now"));
}

TEST_F(CopyChosen, byTheClockAndAtTheEndOfAShift)
{
    ask();
    EXPECT_EQ(lineOf("ask.copy-time"), QStringLiteral("only by a tap"));
    stand().taps({"ask.copy-time", "ask.every:4", "ask.at-shift-end"});
    EXPECT_EQ(now().plan(), (CopyPlan{.every = 4h, .atShiftEnd = true}));
    stand().tap(QStringLiteral("ask.every:24"));
    EXPECT_EQ(now().everyHours, 24);
    stand().tap(QStringLiteral("ask.every:24"));
    EXPECT_EQ(now().everyHours, 0) << "a second tap takes it back";
    stand().tap(QStringLiteral("ask.never"));
    EXPECT_FALSE(now().plan().isSet());
}

TEST_F(CopyChosen, whatHasToBeSeenToStandsOnTheBar)
{
    tell(ago(3h));
    EXPECT_EQ(lineOf("setup.screen"), QString());
    tell(ago(73h), Doing::Nothing, Wrong::Nothing, true);
    EXPECT_EQ(lineOf("setup.screen"), QStringLiteral("copy is old"));
    tell({}, Doing::Nothing, Wrong::NotThere);
    EXPECT_EQ(lineOf("setup.screen"), QStringLiteral("copy failed"));
    ask();
    EXPECT_TRUE(says(QStringLiteral("Put it in, or choose another place.")));
}

TEST_F(CopyChosen, everyFailureSaysWhatToDo)
{
    const Stamp at = stand().model().now();
    for (const StoreFault fault :
         {StoreFault::NoSpace, StoreFault::ReadOnly, StoreFault::NotPermitted,
          StoreFault::WriteFailed, StoreFault::Unconfirmed, StoreFault::Damaged, StoreFault::InUse,
          StoreFault::Unsafe}) {
        ui::CopyNews news;
        news.wrong = Wrong::NotWritten;
        news.last.trouble = StoreTrouble{fault, 0};
        const QString text = ui::copyText(news, at);
        EXPECT_TRUE(text.startsWith(QStringLiteral("Not copied. "))) << text.toStdString();
        EXPECT_TRUE(text.endsWith(u'.'));
        EXPECT_GT(text.size(), 40);
    }
    ui::CopyNews news;
    news.wrong = Wrong::NotSound;
    news.last.check.chain.flaw = Flaw{58, FlawKind::BadHash, 58, {}};
    EXPECT_THAT(ui::copyText(news, at).toStdString(), testing::HasSubstr("NOT sound at entry 58"));
}

TEST_F(CopyChosen, nothingOfItIsAFact)
{
    const auto before = stand().kept().all.size();
    ask();
    stand().taps({"ask.copy-time", "ask.every:4", "ask.back", "ask.copy-place",
                  "ask.place:/media/stick/bathside", "ask.back"});
    EXPECT_EQ(stand().kept().all.size(), before);
}

}  // namespace
}  // namespace bathside::test
