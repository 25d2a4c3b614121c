// Draws the checks' page, each panel, language and scheme, for a person to look at.
// Usage: checks_pictures FOLDER

#include <QApplication>
#include <QDir>
#include <functional>

#include <gtest/gtest.h>

#include "tests/ui/checks/checks_stand.h"
#include "ui/theme/theme.h"

using namespace bathside;

namespace {

struct Look {
    test::Panel panel;
    const char* language;
    ui::Scheme scheme;
};

struct Picture {
    const char* name;
    std::function<void(test::ChecksStand&)> set;
};

void draw(const QDir& folder, const Picture& picture, const Look& look)
{
    ui::theme().setScheme(look.scheme);
    test::ChecksStand pages(look.panel, QString::fromLatin1(look.language));
    test::openWithALine(pages.stand());
    pages.show();
    picture.set(pages);
    QApplication::processEvents();
    const QString name =
        QStringLiteral("checks-%1_%2_%3.png")
            .arg(QString::fromLatin1(picture.name), QString::fromLatin1(look.panel.name),
                 QString::fromLatin1(look.language));
    EXPECT_TRUE(pages.stand().frame().grab().save(folder.filePath(name)));
}

void setBalance(test::ChecksStand& pages)
{
    ui::Preference next = pages.preferences().now();
    next.balance = {.port = "/dev/serial/by-id/usb-scale-if00",
                    .format = {.stillness = Stillness::StillMark, .mark = "ok"}};
    pages.preferences().set(next);
    pages.balance().line = "ok +   0.1991 g";
}

}  // namespace

int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    const QApplication app(argc, argv);
    const QDir folder(QCoreApplication::arguments().value(1));
    folder.mkpath(QStringLiteral("."));
    const Look looks[] = {{test::kTenInch, "en", ui::Scheme::Light},
                          {test::kTenInch, "es", ui::Scheme::Dark},
                          {test::kFifteenInch, "en", ui::Scheme::Dark},
                          {test::kFifteenInch, "es", ui::Scheme::Light}};
    const auto vessel = [](std::int64_t loss) {
        return [loss](test::ChecksStand& pages) {
            test::keepAVessel(pages.stand(), loss);
            pages.tap("checks.vessel");
        };
    };
    const Picture pictures[] = {
        {"start", [](test::ChecksStand&) {}},
        {"weighed",
         [](test::ChecksStand& pages) {
             pages.tap("checks.weigh");
             pages.typeAll(test::kTenWeights);
         }},
        {"weighing", [](test::ChecksStand& pages) { pages.tap("checks.weigh"); }},
        {"weighing-balance",
         [](test::ChecksStand& pages) {
             setBalance(pages);
             pages.tap("checks.weigh");
             pages.weigh({{0}, {1'991}, {0}, {1'996}});
             emit pages.balance().said(WeightFault::Overload);
         }},
        {"balance",
         [](test::ChecksStand& pages) {
             setBalance(pages);
             pages.stand().taps({"checks.set", "ask.balance"});
         }},
        {"failed",
         [](test::ChecksStand& pages) {
             pages.tap("checks.cylinder");
             pages.typeAll({"10", "2.3", "0.1"});
             pages.tap("checks.record");
         }},
        {"birds",
         [](test::ChecksStand& pages) {
             pages.stand().taps({"checks.birds", "checks.looked"});
             pages.typeAll({"100", "97"});
         }},
        {"vessel-sound", vessel(3)},
        {"vessel-failing", vessel(12)},
    };
    for (const Picture& picture : pictures) {
        for (const Look& look : looks)
            draw(folder, picture, look);
    }
    return testing::Test::HasFailure() ? 1 : 0;
}
