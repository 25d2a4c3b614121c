// Draws the thermometers page, each panel, language and scheme, for a person to look at.
// Usage: thermometer_pictures FOLDER

#include <QApplication>
#include <QDir>

#include <gtest/gtest.h>

#include "tests/ui/thermometers/thermo_stand.h"
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
    test::ThermoStand thermo(look.panel, QString::fromLatin1(look.language));
    if (std::string(picture.name) != "none")
        test::liveWithThermometers(thermo);
    thermo.probes().plugged = {
        OneWire{"28-00000000aaaa"},
        SerialLine{.port = "/dev/serial/by-id/usb-meter-if00", .pattern = {}}};
    thermo.probes().line = "2026-03-05 07:12:40 T1 = 28.13 C";
    thermo.show();
    thermo.stand().taps(picture.taps);
    const QString name =
        QStringLiteral("%1_%2_%3_%4.png")
            .arg(
                QString::fromLatin1(picture.name), QString::fromLatin1(look.panel.name),
                QString::fromLatin1(look.language),
                look.scheme == ui::Scheme::Dark ? QStringLiteral("dark") : QStringLiteral("light"));
    QApplication::processEvents();
    EXPECT_TRUE(thermo.stand().frame().grab().save(folder.filePath(name)));
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
        {"none", {}},
        {"list", {"thermometers.probe.BATH-LEFT"}},
        {"gone", {"thermometers.probe.METER"}},
        {"hand", {"thermometers.probe.GLASS"}},
        {"add", {"thermometers.add"}},
        {"change", {"thermometers.probe.METER", "thermometers.change"}},
        {"pattern", {"thermometers.probe.METER", "thermometers.change", "ask.pattern"}},
        {"speed", {"thermometers.probe.METER", "thermometers.change", "ask.speed"}},
        {"certificate", {"thermometers.probe.BATH-LEFT", "thermometers.calibrate"}},
        {"point", {"thermometers.probe.BATH-LEFT", "thermometers.calibrate", "ask.add"}},
        {"forecast", {"thermometers.forecast"}},
    };
    for (const Picture& picture : pictures) {
        for (const Look& look : looks)
            draw(folder, picture, look);
    }
    return testing::Test::HasFailure() ? 1 : 0;
}
