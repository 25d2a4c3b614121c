// Draws the review and people pages, each panel, language and scheme, for a person to look at.
// Usage: review_pictures FOLDER

#include <QApplication>
#include <QDir>

#include <gtest/gtest.h>

#include "core/record/cases.h"
#include "tests/ui/review/review_stand.h"
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
    const char* page;
    int opened;  // index of the case; below zero: none
    std::vector<const char*> taps;
};

void draw(const QDir& folder, const Picture& picture, const Look& look)
{
    ui::theme().setScheme(look.scheme);
    test::ReviewStand pages(look.panel, QString::fromLatin1(look.language));
    test::liveThroughDeviations(pages);
    pages.show(picture.page);
    if (picture.opened >= 0) {
        const auto cases = reviewCases(pages.bench());
        const auto& one = cases.at(static_cast<std::size_t>(picture.opened));
        pages.stand().tap(QStringLiteral("review.case.%1").arg(one.deviation->seq));
    }
    pages.stand().taps(picture.taps);
    QApplication::processEvents();
    const QString name =
        QStringLiteral("review-%1_%2_%3.png")
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
    const char* review = ui::Frame::kReview;
    const char* people = ui::Frame::kPeople;
    const Picture pictures[] = {
        {"list", review, -1, {}},
        {"in-use", review, 1, {}},
        {"exposure", review, 2, {}},
        {"diluent", review, 3, {}},
        {"cause", review, 2, {"review.judge"}},
        {"bag", review, -1, {"review.held.B3", "review.judge"}},
        {"pin", review, -1, {"review.held.B3", "review.judge", "ask.use", "pad.4", "pad.0"}},
        {"people", people, -1, {}},
        {"person", people, -1, {"people.person.MK"}},
        {"setup", ui::Frame::kSetUp, -1, {}},
    };
    for (const Picture& picture : pictures) {
        for (const Look& look : looks)
            draw(folder, picture, look);
    }
    return testing::Test::HasFailure() ? 1 : 0;
}
