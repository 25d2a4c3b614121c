// Draws the page of charts, each panel, language and scheme, for a person to look at.
// Usage: trends_pictures FOLDER

#include <QApplication>
#include <QDir>

#include <gtest/gtest.h>

#include "tests/ui/trends/trends_stand.h"
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
    std::vector<const char*> taps;
};

void draw(const QDir& folder, const Picture& picture, const Look& look)
{
    ui::theme().setScheme(look.scheme);
    test::TrendsStand pages(look.panel, QString::fromLatin1(look.language));
    test::liveThroughPulls(pages);
    pages.show();
    for (const char* place : picture.taps)
        pages.tap(place);
    QApplication::processEvents();
    const QString name =
        QStringLiteral("trends-%1_%2_%3.png")
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
        {"times", {}},
        {"picked", {"trends.before"}},
        {"bath", {"trends.what", "ask.n:2"}},
        {"dose", {"trends.what", "ask.n:3"}},
        {"whose", {"trends.whose"}},
        {"rules", {"trends.rules"}},
        {"days", {"trends.days"}},
        {"limits", {"trends.before", "trends.limits"}},
        {"pin", {"trends.limits", "ask.all"}},
        {"pull", {"trends.before", "trends.open"}},
    };
    for (const Picture& picture : pictures) {
        for (const Look& look : looks)
            draw(folder, picture, look);
    }
    return testing::Test::HasFailure() ? 1 : 0;
}
