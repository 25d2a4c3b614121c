// The plan's sheet as a file: a PDF of its own each time, in our folder of the documents.

#include "app/station/plan_file.h"

#include <QFile>
#include <QFileInfo>

#include <gtest/gtest.h>

namespace bathside::app {
namespace {

ui::PlanSheet sheet()
{
    using namespace std::chrono_literals;
    ui::PlanSheet made;
    made.day = std::chrono::year(2026) / 3 / 5;
    made.site = "Hatchery by the mill";
    made.zone = "Europe/Amsterdam";
    made.lines.push_back({"A",
                          {{.volume = MicroLitres{400'000},
                            .lots = {{"serotype 3", "K07-112", 1}},
                            .pullStart = 7h + 49min,
                            .mixedBy = 7h + 57min,
                            .firstBird = 8h,
                            .lastBird = 8h + 40min,
                            .birds = 2000}}});
    return made;
}

TEST(PlanFile, isAPdfThatReplacesNoOther)
{
    const auto first = savePlanSheet(sheet()), second = savePlanSheet(sheet());
    ASSERT_TRUE(first && second);
    EXPECT_NE(*first, *second);
    for (const QString& path : {*first, *second}) {
        EXPECT_TRUE(QFileInfo(path).fileName().startsWith(QStringLiteral("plan-2026-03-05")));
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        EXPECT_EQ(file.read(5), QByteArray("%PDF-"));  // ISO 32000-1, 7.5.2: the file's header
        EXPECT_TRUE(file.remove());
    }
}

}  // namespace
}  // namespace bathside::app
