// Draws every scene of the bench, each panel, language and scheme, for a person to look at.
// Usage: bench_pictures FOLDER [SCENE …]

#include <QApplication>
#include <QDir>

#include <gtest/gtest.h>

#include "tests/ui/bench/stand.h"
#include "ui/theme/theme.h"

using namespace bathside;

namespace {

struct Look {
    test::Panel panel;
    const char* language;
    ui::Scheme scheme;
};

void draw(const QDir& folder, const test::Scene& scene, const Look& look)
{
    ui::theme().setScheme(look.scheme);
    test::Stand stand(look.panel, QString::fromLatin1(look.language));
    scene.set(stand);
    QString name = QString::fromLatin1(scene.name).replace(u' ', u'-');
    name += QStringLiteral("_%1_%2_%3.png")
                .arg(QString::fromLatin1(look.panel.name), QString::fromLatin1(look.language),
                     look.scheme == ui::Scheme::Dark ? QStringLiteral("dark")
                                                     : QStringLiteral("light"));
    EXPECT_TRUE(stand.frame().grab().save(folder.filePath(name)));
}

}  // namespace

int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    const QApplication app(argc, argv);
    const QStringList wanted = QCoreApplication::arguments().mid(2);
    const QDir folder(QCoreApplication::arguments().value(1));
    folder.mkpath(QStringLiteral("."));
    const Look looks[] = {{test::kTenInch, "en", ui::Scheme::Light},
                          {test::kTenInch, "es", ui::Scheme::Dark},
                          {test::kFifteenInch, "en", ui::Scheme::Dark}};
    for (const test::Scene& scene : test::scenes()) {
        if (!wanted.isEmpty() && !wanted.contains(QString::fromLatin1(scene.name)))
            continue;
        for (const Look& look : looks)
            draw(folder, scene, look);
    }
    return 0;
}
