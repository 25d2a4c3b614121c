#include "app/system/paths.h"

#include <map>

#include <gtest/gtest.h>

namespace bathside::app {
namespace {

std::filesystem::path folderWith(Keeps what, const std::map<std::string, std::string>& variables)
{
    return folderFor(what, [&](const char* name) {
        const auto found = variables.find(name);
        return found == variables.end() ? std::string{} : found->second;
    });
}

// Published: XDG Base Directory Specification 0.8, "Environment variables": the defaults.
TEST(PathsTest, liesBelowTheHomeFolder)
{
    const std::map<std::string, std::string> home{{"HOME", "/house/anna"}};
    EXPECT_EQ(folderWith(Keeps::Data, home), "/house/anna/.local/share/bathside");
    EXPECT_EQ(folderWith(Keeps::State, home), "/house/anna/.local/state/bathside");
    EXPECT_EQ(folderWith(Keeps::Settings, home), "/house/anna/.config/bathside");
}

TEST(PathsTest, followsTheVariables)
{
    const std::map<std::string, std::string> given{{"HOME", "/house/anna"},
                                                   {"XDG_DATA_HOME", "/d"},
                                                   {"XDG_STATE_HOME", "/s"},
                                                   {"XDG_CONFIG_HOME", "/c"}};
    EXPECT_EQ(folderWith(Keeps::Data, given), "/d/bathside");
    EXPECT_EQ(folderWith(Keeps::State, given), "/s/bathside");
    EXPECT_EQ(folderWith(Keeps::Settings, given), "/c/bathside");
}

// Published, same section, "Basics": a relative path is invalid and to be ignored; empty is unset.
TEST(PathsTest, ignoresARelativeOrEmptyPath)
{
    for (const char* value : {"", "data", "./data"})
        EXPECT_EQ(folderWith(Keeps::Data, {{"HOME", "/house/anna"}, {"XDG_DATA_HOME", value}}),
                  "/house/anna/.local/share/bathside");
}

}  // namespace
}  // namespace bathside::app
