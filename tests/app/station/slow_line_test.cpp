// A line that runs at half its planned rate moves the countdown to the next pull, in the real
// window under a person's presses. The clock's figures are reckoned by hand (expected.json of the
// journeys says how).

#include <QApplication>
#include <QFile>

#include <gtest/gtest.h>

#include "app/station/played_window.h"
#include "ui/controls/big_clock.h"

namespace bathside::app {
namespace {

std::string textOf(const char* name)
{
    QFile file(QString::fromLatin1(name));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name;
    return file.readAll().toStdString();
}

class SlowLineTest : public testing::Test {
protected:
    void SetUp() override
    {
        qputenv("TZ",
                "Europe/Madrid");  // the script's: the window takes the site's from the machine
        auto script = scriptFrom(textOf(BATHSIDE_PLANNED_DAY));
        ASSERT_TRUE(script);
        m_script = std::move(*script);
        const auto wrong = m_stage.open(m_script, textOf(BATHSIDE_DEFAULT_CARD));
        ASSERT_FALSE(wrong) << wrong->toStdString();
    }

    /// Plays on until that many birds have been counted; where the big clock stands then.
    QString clockAfter(std::int64_t birds)
    {
        while (m_next < m_script.size()) {
            const ScriptEntry& entry = m_script[m_next++];
            const auto wrong = m_stage.player().play(entry);
            EXPECT_FALSE(wrong) << wrong->toStdString();
            const auto* intent = std::get_if<Intent>(&entry.statement);
            const auto* counted = intent ? std::get_if<CountBirds>(intent) : nullptr;
            if (counted && counted->total == birds)
                break;
        }
        const auto* clock = m_stage.window().findChild<ui::BigClock*>();
        return clock->state().time + u' ' + clock->state().unit + u' ' + clock->state().label;
    }

    std::vector<ScriptEntry> m_script;
    std::size_t m_next = 0;
    PlayedWindow m_stage{Options{}};
};

TEST_F(SlowLineTest, movesTheCountdown)
{
    // at 07:05 as planned: 07:17:30
    EXPECT_EQ(clockAfter(100), QStringLiteral("12 min until the next pull"));
    // at 07:10 the measured rate is half of that: 07:40
    EXPECT_EQ(clockAfter(200), QStringLiteral("30 min until the next pull"));
}

}  // namespace
}  // namespace bathside::app
