// The checks' page on every panel and in each language: sizes, gaps, nothing clipped. (Sources:
// tests/ui/bench/walk_test.cpp.)

#include <gtest/gtest.h>

#include "tests/ui/checks/checks_stand.h"
#include "tests/ui/setup/page_stand.h"

namespace bathside::test {
namespace {

struct PageLook {
    const char* name;
    Panel panel;
    const char* language;
};
class ChecksLook : public testing::TestWithParam<PageLook> {};

TEST_P(ChecksLook, everyTargetIsLargeApartAndWhole)
{
    ChecksStand pages(GetParam().panel, QString::fromLatin1(GetParam().language));
    openWithALine(pages.stand());
    keepAVessel(pages.stand(), 12);
    pages.show();
    const auto look = [&] { expectTargetsAsTheyMustBe(pages.stand().frame()); };
    look();
    pages.tap("checks.cylinder");
    pages.typeAll({"10", "2.3", "0.1"});
    look();
    pages.tap("checks.record");
    look();
    pages.tap("checks.birds");
    pages.tap("checks.looked");
    pages.typeAll({"100", "97"});
    look();
    pages.tap("checks.vessel");
    look();
    if (pages.stand().target(QStringLiteral("checks.more"))) {
        pages.tap("checks.more");
        look();
    }
}

INSTANTIATE_TEST_SUITE_P(Looks, ChecksLook,
                         testing::Values(PageLook{"TenEnglish", kTenInch, "en"},
                                         PageLook{"TenSpanish", kTenInch, "es"},
                                         PageLook{"FifteenEnglish", kFifteenInch, "en"},
                                         PageLook{"FifteenSpanish", kFifteenInch, "es"}),
                         [](const auto& test) { return std::string(test.param.name); });

}  // namespace
}  // namespace bathside::test
