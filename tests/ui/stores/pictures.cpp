// Draws the stores page, each panel, language and scheme, for a person to look at.
// Usage: stores_pictures FOLDER

#include <QApplication>
#include <QDir>

#include <gtest/gtest.h>

#include "tests/ui/stores/stores_stand.h"
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
    test::StoresStand pages(look.panel, QString::fromLatin1(look.language));
    test::fill(pages.stand());
    pages.deliveries().texts[QStringLiteral("delivery.csv")] = test::deliveryFile();
    pages.show();
    pages.stand().taps(picture.taps);
    QApplication::processEvents();
    const QString name =
        QStringLiteral("stores-%1_%2_%3.png")
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
        {"lots", {}},
        {"lot", {"stores.lot.ampoule:serotype 1:R22-019:0"}},
        {"receive", {"stores.receive"}},
        {"delivery", {"stores.file", "ask.file:delivery.csv"}},
        {"warnings", {"stores.warnings"}},
        {"sums", {"stores.sums"}},
    };
    for (const Picture& picture : pictures) {
        for (const Look& look : looks)
            draw(folder, picture, look);
    }
    return testing::Test::HasFailure() ? 1 : 0;
}
