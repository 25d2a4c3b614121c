// Prints every label and sheet as PDF in each language, for a person to look at (pdftoppm makes
// pictures of them). Usage: paper_pictures FOLDER

#include <QApplication>
#include <QDir>
#include <cstdio>

#include "tests/ui/print/papers.h"
#include "ui/print/press.h"
#include "ui/text/language.h"

using namespace bathside;

int main(int argc, char** argv)
{
    const QApplication app(argc, argv);
    const QDir folder(QCoreApplication::arguments().value(1));
    folder.mkpath(QStringLiteral("."));
    ui::Language language;
    for (const QString& code : ui::Language::offered()) {
        language.use(code);
        for (const test::PaperCase& each : test::paperCases()) {
            const QString name = QString::fromStdString(each.name) + u'_' + code;
            const auto saved =
                ui::savePdf(each.pages, folder.filePath(name + QStringLiteral(".pdf")));
            std::printf("%s: %s\n", qPrintable(name), saved ? "printed" : "NOT printed");
        }
    }
}
