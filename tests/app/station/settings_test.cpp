// What a machine keeps of its own comes back as it was written; what cannot be read is not set.

#include "app/station/settings.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include "app/station/options.h"

namespace bathside::app {
namespace {

class SettingsTest : public testing::Test {
protected:
    [[nodiscard]] std::filesystem::path file() const
    {
        return m_folder.filePath(QStringLiteral("station.conf")).toStdString();
    }
    void write(const QByteArray& text) const
    {
        QFile out(QString::fromStdString(file().string()));
        ASSERT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(text);
    }

private:
    QTemporaryDir m_folder;
};

TEST_F(SettingsTest, comeBackAsTheyWereWritten)
{
    ui::Preference written{.station = QStringLiteral("BENCH 2"),
                           .language = QStringLiteral("es"),
                           .dark = true,
                           .pitchCorrection = 1.25,
                           .soundDevice = QStringLiteral("usb, 2; \"left\""),
                           .print = {}};
    for (const ui::Paper label :
         {ui::Paper::Label, ui::Paper::Roll, ui::Paper::A4, ui::Paper::Letter}) {
        for (const ui::Paper sheet : {ui::Paper::A4, ui::Paper::Letter}) {
            written.print = {QStringLiteral("etiquetas, sala 2"), label, QStringLiteral("office=1"),
                             sheet};
            ASSERT_TRUE(writePreference(file(), written));
            EXPECT_EQ(readPreference(file()), written);
        }
    }
}

TEST_F(SettingsTest, aStationWithoutANameThatCanBeOneIsUnnamed)
{
    EXPECT_EQ(readPreference(file()).station, QStringLiteral("bench"));
    for (const char* name : {"\"\"", "\" a\"", "\"a\\n\"", "abcdefghijklmnopqrstuvwxy"}) {
        write(QByteArray("station=") + name + "\n");
        EXPECT_EQ(readPreference(file()).station, QStringLiteral("bench")) << name;
    }
    write("station=abcdefghijklmnopqrstuvwx\n");
    EXPECT_EQ(readPreference(file()).station, QStringLiteral("abcdefghijklmnopqrstuvwx"));
}

TEST_F(SettingsTest, theOptionsNameIsOneThatCanBe)
{
    const QString program = QStringLiteral("bathside"), option = QStringLiteral("--station");
    const auto named = optionsFrom({program, option, QStringLiteral("Bench 2")});
    ASSERT_TRUE(named);
    EXPECT_EQ(named->station, QStringLiteral("Bench 2"));
    EXPECT_TRUE(optionsFrom({program})->station.isEmpty());
    for (const QString& name : {QString(), QStringLiteral("b "), QString(25, u'b')}) {
        const auto wrong = optionsFrom({program, option, name});
        ASSERT_FALSE(wrong) << name.toStdString();
        EXPECT_TRUE(wrong.error().text.contains(option));
    }
}

TEST_F(SettingsTest, theBalanceComesBackAsItWasChosen)
{
    ui::Preference written;
    written.balance = {
        .port = "/dev/serial/by-id/usb-balance",
        .baud = 2'400,
        .format = {
            .unit = WeightUnit::Milligrams, .stillness = Stillness::MovingMark, .mark = "~, ;"}};
    ASSERT_TRUE(writePreference(file(), written));
    EXPECT_EQ(readPreference(file()), written);
    write("balance_port=/dev/ttyUSB0\nbalance_baud=12345\nbalance_unit=oz\nbalance_still=?\n");
    EXPECT_EQ(readPreference(file()).balance, (ui::BalanceChoice{.port = "/dev/ttyUSB0"}));
}

TEST_F(SettingsTest, ofAMachineThatHasNoneSaveLabelsAsPdf)
{
    const ui::PrintChoice print = readPreference(file()).print;
    EXPECT_EQ(print, ui::PrintChoice{});
    EXPECT_TRUE(print.labelPrinter.isEmpty());
    EXPECT_TRUE(print.sheetPrinter.isEmpty());
}

TEST_F(SettingsTest, aPaperThatIsNotKnownOrNoSheetIsNotSet)
{
    write("label_paper=foolscap\nsheet_paper=62\n");
    EXPECT_EQ(readPreference(file()).print, ui::PrintChoice{});
    write("label_paper=62\nsheet_paper=Letter\n");
    EXPECT_EQ(readPreference(file()).print.labelPaper, ui::Paper::Roll);
    EXPECT_EQ(readPreference(file()).print.sheetPaper, ui::Paper::Letter);
}

}  // namespace
}  // namespace bathside::app
