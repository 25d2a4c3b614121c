#include "tests/ui/thermometers/thermo_stand.h"

#include <QLocale>
#include <cmath>

#include <gtest/gtest.h>

namespace bathside::test {
namespace {

using namespace std::chrono_literals;
using namespace std::chrono;

Probe wire()
{
    return {.id = {"BATH-LEFT"},
            .name = "BATH LEFT",
            .certificate = "K-2041",
            .calibrated = sys_days(2025y / 9 / 1),
            .due = sys_days(2026y / 9 / 1),
            .resolution = 0.0625,
            .drift = 0.05,
            .points = {{24.9, 25, 0.05}, {29.92, 30, 0.06}},
            .source = OneWire{"28-0000075f2b1c"},
            .inBath = true};
}

Probe glass()
{
    return {.id = {"GLASS"},
            .name = "GLASS",
            .certificate = "G-77",
            .calibrated = sys_days(2024y / 1 / 10),
            .due = sys_days(2026y / 1 / 10),
            .resolution = 0.1,
            .points = {{28.1, 28, 0.1}},
            .source = ByHand{}};
}

Probe line()
{
    return {.id = {"METER"},
            .name = "METER",
            .certificate = {},
            .calibrated = {},
            .due = {},
            .resolution = 0.01,
            .points = {},
            .source = SerialLine{.port = "/dev/ttyUSB0", .pattern = "T = # C"}};
}

void describe(Stand& stand, const Probe& probe)
{
    stand.say(DescribeProbe{probe.id, documentOf(probe)});
}

}  // namespace

ThermoStand::ThermoStand(const Panel& panel, const QString& language) : m_pages(panel, language)
{
    stand().frame().addPage(
        QString::fromLatin1(ui::ThermometersPage::kPage),
        new ui::ThermometersPage({.model = stand().model(),
                                  .language = stand().language(),
                                  .live = m_probes,
                                  .save = [this](const QImage& picture, const QString& name)
                                      -> Result<QString, ui::PrintFault> {
                                      EXPECT_FALSE(picture.isNull());
                                      if (saveFault)
                                          return failure(*saveFault);
                                      saved.push_back(name);
                                      return QStringLiteral("/documents/%1.png").arg(name);
                                  },
                                  .zone = "Europe/Madrid",
                                  .run =
                                      [this](std::function<void()> job) {
                                          if (!holdsWork)
                                              return job();
                                          work.push_back(std::move(job));
                                      },
                                  .balancePort = [this] { return balancePort; }}));
    stand().say(OpenShift{"Europe/Madrid", {"MK"}});
}

void ThermoStand::type(const QString& digits)
{
    for (const QChar sign : digits)
        stand().tap(sign.isDigit() ? QStringLiteral("pad.%1").arg(sign)
                                   : QStringLiteral("pad.sign"));
    stand().tap(QStringLiteral("pad.set"));
}

void ThermoStand::spell(const QString& letters)
{
    for (const QChar letter : letters)
        stand().tap(QStringLiteral("letters.%1").arg(letter));
    stand().tap(QStringLiteral("letters.set"));
}

void liveWithThermometers(ThermoStand& thermo)
{
    Stand& stand = thermo.stand();
    describe(stand, wire());
    describe(stand, glass());
    describe(stand, line());
    stand.say(TakeReading{{"METER"}, ReadingFault::Lost});
    stand.say(TakeReading{{"GLASS"}, MilliCelsius{28'100}});
    auto& trace = thermo.probes().traces[{"BATH-LEFT"}];
    for (int second = 0; second < 280; second += 2) {
        const double dip = second < 150 ? 0 : 0.4 * std::exp(-(second - 150) / 60.0);
        const MilliCelsius value{std::llround(27'980 - 1000 * dip)};
        trace.push_back({{"BATH-LEFT"}, stand.model().now(), value});
        stand.pass(2s);
    }
    stand.say(TakeReading{{"BATH-LEFT"}, MilliCelsius{27'950}});
}

}  // namespace bathside::test
