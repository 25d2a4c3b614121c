// Drafts outlive the program; a file that cannot be read or written loses nothing else.

#include "app/station/draft_file.h"

#include <QTemporaryDir>
#include <fstream>

#include <gtest/gtest.h>

namespace bathside::app {
namespace {

class DraftFileTest : public testing::Test {
protected:
    [[nodiscard]] std::filesystem::path file() const
    {
        return DraftFile::beside(std::filesystem::path(folder.path().toStdString()) / "trail.db");
    }

    QTemporaryDir folder;
    const QString weights = QStringLiteral("weights"), vessel = QStringLiteral("vessel");
};

TEST_F(DraftFileTest, whatIsKeptIsThereAtTheNextStart)
{
    {
        DraftFile drafts(file());
        EXPECT_EQ(drafts.kept(weights), "");
        drafts.keep(weights, R"({"a": 1})");
        drafts.keep(vessel, R"({"b": "ñ"})");
        drafts.keep(weights, R"({"a": 2})");
    }
    EXPECT_EQ(file().filename(), "trail.drafts");
    DraftFile again(file());
    EXPECT_EQ(again.kept(weights), R"({"a": 2})");
    EXPECT_EQ(again.kept(vessel), R"({"b": "ñ"})");
    again.keep(weights, {});
    EXPECT_EQ(DraftFile(file()).kept(weights), "");
    EXPECT_EQ(DraftFile(file()).kept(vessel), R"({"b": "ñ"})");
}

TEST_F(DraftFileTest, isForItsOwnerAlone)
{
    DraftFile(file()).keep(weights, "x");
    EXPECT_EQ(std::filesystem::status(file()).permissions(),
              std::filesystem::perms::owner_read | std::filesystem::perms::owner_write);
}

TEST_F(DraftFileTest, aDamagedFileHoldsNothingAndIsWrittenAnew)
{
    std::ofstream(file()) << "{\"weights\": \"half";
    DraftFile drafts(file());
    EXPECT_EQ(drafts.kept(weights), "");
    drafts.keep(weights, "whole");
    EXPECT_EQ(DraftFile(file()).kept(weights), "whole");
}

TEST_F(DraftFileTest, whatCannotBeWrittenIsKeptUntilTheEnd)
{
    DraftFile drafts(std::filesystem::path(folder.path().toStdString()) / "gone" / "trail.drafts");
    drafts.keep(weights, "here");
    EXPECT_EQ(drafts.kept(weights), "here");
}

}  // namespace
}  // namespace bathside::app
