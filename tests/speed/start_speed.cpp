// Start to a usable bench screen: process start until the first frame with the restored day is
// drawn, against an empty Widgets window in the same run (the bound), with an empty trail and a
// long one.
//
// Every figure is a whole process, started anew; kinds take turns, so that a slow moment of the
// machine meets them all. Offscreen: drawing is counted, a display is not.

#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QPixmap>
#include <QProcess>
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <vector>

#include "app/station/bench_day.h"
#include "app/station/delivery_files.h"
#include "app/station/paper_desk.h"
#include "app/station/window.h"
#include "app/system/boot_clock.h"
#include "tests/support/big_trail.h"
#include "tests/support/temp_folder.h"
#include "ui/text/language.h"
#include "ui/theme/theme.h"

namespace bathside {
namespace {

constexpr QSize kPanel{1280, 800};

class Deaf final : public ui::Feedback {
public:
    void taken() override {}
    void refused() override {}
};

class Mute final : public ui::SoundTest {
public:
    void play() override {}
    [[nodiscard]] QString device() const override { return {}; }
    [[nodiscard]] std::vector<ui::Loudspeaker> devices() const override { return {}; }
    void use(const QString&) override {}
    void heard() override {}
};

/// Draws `window` once and ends the process on the spot.
[[noreturn]] void drawnAndDone(QWidget& window)
{
    window.resize(kPanel);
    window.show();
    QCoreApplication::processEvents();
    std::_Exit(window.grab().isNull() ? 1 : 0);
}

int emptyWindow()
{
    QWidget window;
    drawnAndDone(window);
}

int station(const char* trail)
{
    QFile card(QStringLiteral(":/cards/default.json"));
    (void)card.open(QIODevice::ReadOnly);
    const app::BootClock clock;
    Deaf deaf;
    Mute mute;
    ui::theme().setMetrics({5.9, QSizeF(kPanel) / 5.9});
    ui::Language language;
    language.use(QStringLiteral("en"));
    ui::Preferences preferences{ui::Preference{}};
    const auto session = app::Session::open({.trail = trail,
                                             .spoolFolder = {},
                                             .card = {},
                                             .defaultCard = card.readAll().toStdString(),
                                             .rehearsal = true,
                                             .clockSynchronised = true,
                                             .clockOffset = {}},
                                            {.clock = clock,
                                             .feedback = deaf,
                                             .inputTime =
                                                 [&clock](std::uint64_t) {
                                                     return ui::InputTime{clock.now(), false};
                                                 },
                                             .ticking = ui::StationModel::Ticking::ByTimer});
    if (!session) {
        std::fputs(qPrintable(session.error()), stderr);
        return 1;
    }
    app::PaperDesk printing(preferences);
    app::Window window;
    const app::DeliveryFiles deliveries;
    window.put(app::frameFor(**session, {.language = language,
                                         .preferences = preferences,
                                         .sound = mute,
                                         .deliveries = deliveries,
                                         .printing = printing}));
    drawnAndDone(window);
}

/// Milliseconds from start to end of this program run so; below zero: it failed.
double timed(const QStringList& arguments)
{
    QProcess process;
    process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    QElapsedTimer clock;
    clock.start();
    process.start(QCoreApplication::applicationFilePath(), arguments);
    const bool good = process.waitForFinished(60'000) && process.exitCode() == 0;
    return good ? static_cast<double>(clock.nsecsElapsed()) / 1e6 : -1;
}

int measure()
{
    const bool isLong = std::getenv("BATHSIDE_LONG") != nullptr;
    const int rounds = isLong ? 30 : 9;
    const test::TempFolder folder;
    const Seq events = test::writeBigTrail(folder / "long.db", isLong ? 1'000'000 : 200'000);
    const QString empty = QString::fromStdString((folder / "empty.db").string());
    const QString full = QString::fromStdString((folder / "long.db").string());
    const std::vector<std::pair<const char*, QStringList>> kinds{
        {"an empty Widgets window (bound)", {QStringLiteral("--empty")}},
        {"the bench, empty trail", {QStringLiteral("--trail"), empty}},
        {"the bench, long trail", {QStringLiteral("--trail"), full}}};
    std::vector<std::vector<double>> times(kinds.size());
    for (int round = 0; round < rounds; ++round) {
        for (std::size_t i = 0; i < kinds.size(); ++i) {
            times[i].push_back(timed(kinds[i].second));
            if (times[i].back() < 0)
                return std::printf("%s: did not start\n", kinds[i].first), 1;
        }
    }
    std::printf("start to a drawn screen, %d rounds, long trail %lld events\n", rounds,
                static_cast<long long>(events));
    double bound = 0;
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        std::ranges::sort(times[i]);
        const double median = times[i][times[i].size() / 2];
        if (i == 0)
            bound = median;
        std::printf("  %-34s median %7.1f ms, max %7.1f ms, %.2f x the bound\n", kinds[i].first,
                    median, times[i].back(), median / bound);
    }
    return 0;
}

}  // namespace
}  // namespace bathside

int main(int argc, char** argv)
{
    const QApplication application(argc, argv);
    const std::string_view mode = argc > 1 ? argv[1] : "";
    if (mode == "--empty")
        return bathside::emptyWindow();
    if (mode == "--trail" && argc > 2)
        return bathside::station(argv[2]);
    return bathside::measure();
}
