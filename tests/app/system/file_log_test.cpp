#include "app/system/file_log.h"

#include <QtGlobal>
#include <fstream>
#include <iterator>
#include <regex>
#include <string>

#include <gtest/gtest.h>

#include "tests/support/file_bytes.h"
#include "tests/support/temp_folder.h"

namespace bathside::app {
namespace {

std::size_t filesIn(const std::filesystem::path& folder)
{
    return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(folder), {}));
}

TEST(FileLogTest, writesALineWithItsInstantInUtc)
{
    const test::TempFolder folder;
    EXPECT_EQ(startLog(folder.path() / "new" / "bathside"), LogsTo::File);
    logInfo("started {}");  // no format string: braces are text
    const std::string text = test::bytesOf(folder.path() / "new" / "bathside" / "bathside.log");
    EXPECT_TRUE(std::regex_match(
        text, std::regex(R"(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z info \[\d+\] started \{\}\n)")))
        << text;
}

TEST(FileLogTest, takesQtsMessagesToo)
{
    const test::TempFolder folder;
    startLog(folder.path());
    qWarning("no such screen");
    EXPECT_NE(test::bytesOf(folder.path() / "bathside.log").find("warning ["), std::string::npos);
    EXPECT_NE(test::bytesOf(folder.path() / "bathside.log").find("qt default: no such screen"),
              std::string::npos);
}

TEST(FileLogTest, keepsFiveFilesOfAMebibyte)
{
    const test::TempFolder folder;
    startLog(folder.path());
    const std::string line(1000, 'x');
    for (int i = 0; i < 8000; ++i)
        logInfo(line);
    EXPECT_EQ(filesIn(folder.path()), 5U);
    for (const auto& file : std::filesystem::directory_iterator(folder.path()))
        EXPECT_LE(file.file_size(), 1024U * 1024U) << file.path();
}

// The folder cannot be made because a file stands there; holds for root as well.
TEST(FileLogTest, goesToStandardErrorWhereTheFolderCannotBeWritten)
{
    const test::TempFolder folder;
    std::ofstream(folder.path() / "state") << "a file\n";
    testing::internal::CaptureStderr();
    EXPECT_EQ(startLog(folder.path() / "state"), LogsTo::StandardError);
    logError("the probe is lost");
    const std::string said = testing::internal::GetCapturedStderr();
    EXPECT_NE(said.find("the technical log goes to standard error"), std::string::npos) << said;
    EXPECT_NE(said.find("the probe is lost"), std::string::npos) << said;
}

// /dev/full takes the open and fails every write: a full disk.
TEST(FileLogTest, losesTheLineOnAFullDiskAndGoesOn)
{
    const test::TempFolder folder;
    std::filesystem::create_symlink("/dev/full", folder.path() / "bathside.log");
    startLog(folder.path());
    EXPECT_NO_THROW(logError("lost"));
    EXPECT_NO_THROW(logError("lost too"));
}

}  // namespace
}  // namespace bathside::app
