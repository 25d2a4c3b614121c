// The file of PINs: what is kept, for whom to read, and what a bad file does.

#include "app/system/pin_file.h"

#include <fstream>
#include <sstream>

#include <gtest/gtest.h>
#include <sys/stat.h>

#include "tests/support/file_bytes.h"
#include "tests/support/temp_folder.h"

namespace bathside::app {
namespace {

TEST(PinFileTest, standsBesideItsTrail)
{
    EXPECT_EQ(PinFile::beside("/data/trail.db"), "/data/trail.pins");
}

TEST(PinFileTest, keepsPinsOverRestartsForItsOwnerAlone)
{
    const test::TempFolder folder;
    const auto file = folder.path() / "trail.pins";
    PinFile pins(file);
    EXPECT_FALSE(pins.knows({"LS"}));
    ASSERT_TRUE(pins.keep({"LS"}, "0815"));
    ASSERT_TRUE(pins.keep({"MK"}, "4071"));
    struct stat about {};
    ASSERT_EQ(stat(file.c_str(), &about), 0);
    EXPECT_EQ(about.st_mode & 0777U, 0600U);
    EXPECT_EQ(test::bytesOf(file).find("0815"), std::string::npos);

    const PinFile again(file);
    EXPECT_TRUE(again.isRight({"LS"}, "0815"));
    EXPECT_FALSE(again.isRight({"LS"}, "815"));
    EXPECT_FALSE(again.isRight({"LS"}, "4071"));
    EXPECT_TRUE(again.isRight({"MK"}, "4071"));
    EXPECT_FALSE(again.isRight({"ZZ"}, "4071"));
}

TEST(PinFileTest, aNewPinTakesThePlaceOfTheOld)
{
    const test::TempFolder folder;
    PinFile pins(folder.path() / "trail.pins");
    ASSERT_TRUE(pins.keep({"LS"}, "0815"));
    ASSERT_TRUE(pins.keep({"LS"}, "9042"));
    EXPECT_FALSE(pins.isRight({"LS"}, "0815"));
    EXPECT_TRUE(pins.isRight({"LS"}, "9042"));
}

TEST(PinFileTest, whatCannotBeWrittenChangesNothing)
{
    const test::TempFolder folder;
    const auto place = folder.path() / "kept";
    std::filesystem::create_directory(place);
    PinFile pins(place / "trail.pins");
    ASSERT_TRUE(pins.keep({"LS"}, "0815"));
    std::filesystem::rename(place, folder.path() / "gone");  // the disk went away
    EXPECT_FALSE(pins.keep({"LS"}, "9042"));
    EXPECT_TRUE(pins.isRight({"LS"}, "0815"));
}

TEST(PinFileTest, aFileThatIsNoneHoldsNothing)
{
    const test::TempFolder folder;
    const auto file = folder.path() / "trail.pins";
    for (const char* text : {"", "nonsense", "[]", R"({"pins": 7})", R"({"pins": {"LS": 7}})",
                             R"({"pins": {"LS": {"salt": "00", "key": "00", "n": 32768}}})"}) {
        std::ofstream(file) << text;
        const PinFile pins(file);
        EXPECT_FALSE(pins.knows({"LS"})) << text;
        EXPECT_FALSE(pins.isRight({"LS"}, "0815")) << text;
    }
}

}  // namespace
}  // namespace bathside::app
