// Draws the plan page, each panel, language and scheme, for a person to look at.
// Usage: plan_pictures FOLDER

#include <QApplication>
#include <QDir>

#include <gtest/gtest.h>

#include "tests/ui/plan/plan_stand.h"
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
    void (*set)(test::Stand&);
    std::vector<const char*> taps;
};

void nothing(test::Stand&) {}

void anHourOn(test::Stand& stand)
{
    test::planTwoLines(stand);
    test::runForAnHour(stand);
}

void draw(const QDir& folder, const Picture& picture, const Look& look)
{
    ui::theme().setScheme(look.scheme);
    test::PlanStand pages(look.panel, QString::fromLatin1(look.language));
    picture.set(pages.stand());
    pages.show();
    pages.stand().taps(picture.taps);
    QApplication::processEvents();
    const QString name =
        QStringLiteral("plan-%1_%2_%3.png")
            .arg(QString::fromLatin1(picture.name), QString::fromLatin1(look.panel.name),
                 QString::fromLatin1(look.language));
    EXPECT_TRUE(pages.stand().frame().grab().save(folder.filePath(name)));
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
    const Picture pictures[] = {
        {"empty", nothing, {}},
        {"morning", test::planTwoLines, {}},
        {"crowded", test::planTooManyLines, {}},
        {"many", test::planALineForEveryLetter, {}},
        {"running", anHourOn, {}},
        {"list", test::planTwoLines, {"plan.list"}},
        {"words", anHourOn, {"plan.words"}},
        {"lines", test::planTooManyLines, {"plan.lines"}},
        {"line", test::planTooManyLines, {"plan.lines", "ask.line:A"}},
    };
    for (const Picture& picture : pictures) {
        for (const Look& look : looks)
            draw(folder, picture, look);
    }
    return testing::Test::HasFailure() ? 1 : 0;
}
