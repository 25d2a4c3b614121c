#include "app/system/key_file.h"

#include <QFile>
#include <fstream>

#include <gtest/gtest.h>

#include "tests/support/temp_folder.h"

namespace bathside::app {
namespace {

class KeyFileTest : public testing::Test {
protected:
    void write(const std::string& text, QFileDevice::Permissions mode)
    {
        std::ofstream(m_file) << text;
        ASSERT_TRUE(QFile::setPermissions(QString::fromStdString(m_file.string()), mode));
    }

    test::TempFolder m_folder;
    std::filesystem::path m_file = m_folder.path() / "seal.key";
};

constexpr auto kOwner = QFileDevice::ReadOwner | QFileDevice::WriteOwner;

TEST_F(KeyFileTest, isMadeOnceAndKept)
{
    const auto first = keyAt(m_file);
    ASSERT_TRUE(first);
    const auto again = keyAt(m_file);
    ASSERT_TRUE(again);
    EXPECT_EQ(again->publicKey(), first->publicKey());
}

TEST_F(KeyFileTest, isItsOwnersAlone)
{
    ASSERT_TRUE(keyAt(m_file));
    EXPECT_EQ(std::filesystem::status(m_file).permissions(), std::filesystem::perms(0600));
}

TEST_F(KeyFileTest, isNeverReplacedByAnother)
{
    write("something else\n", kOwner);
    EXPECT_EQ(keyAt(m_file).error(), KeyFault::NoKey);
    std::ifstream in(m_file);
    std::string left;
    std::getline(in, left);
    EXPECT_EQ(left, "something else");
}

TEST_F(KeyFileTest, isRefusedWhereOthersMayReadIt)
{
    write(std::string(64, 'a') + "\n", kOwner | QFileDevice::ReadOther);
    EXPECT_EQ(keyAt(m_file).error(), KeyFault::Open);
}

TEST_F(KeyFileTest, saysThatItCannotBeMade)
{
    EXPECT_EQ(keyAt(m_folder.path() / "not there" / "seal.key").error(), KeyFault::Unwritable);
}

}  // namespace
}  // namespace bathside::app
