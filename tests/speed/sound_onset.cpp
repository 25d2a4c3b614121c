// Which way to the loudspeaker: from the trigger to the first loud sample on a null device's
// monitor (to the arrival of its 5 ms piece), how often it is heard at all, for the ways there are.
// The decision built on it stands in DEVELOPERS.md. Fails when the way in use is not heard every
// time.

#include <QApplication>
#include <QElapsedTimer>
#include <QSoundEffect>
#include <QTemporaryDir>
#include <QUrl>
#include <QtEndian>
#include <fstream>
#include <functional>
#include <memory>
#include <optional>

#include "tests/speed/sound_figures.h"
#include "tests/ui/sound/monitor.h"
#include "tests/ui/sound/sound_server.h"
#include "ui/sound/pulse_out.h"
#include "ui/sound/qt_out.h"
#include "ui/sound/waiter.h"

using namespace bathside;
using namespace std::chrono_literals;

namespace {

constexpr auto kGiveUp = 1500ms;  // longer than any alarm may take
const std::string kDevice = "bench";

// One soft-edged pulse of 100 ms, as short as any alarm's.
std::shared_ptr<const ui::Burst> shortBurst()
{
    auto burst = std::make_shared<ui::Burst>(ui::burstOf(Level::HeadsUp));
    burst->pulses.resize(1);
    burst->samples.resize(static_cast<std::size_t>(ui::kSampleRate) / 10);
    return burst;
}

void writeWave(const std::string& path, const ui::Burst& burst)
{
    std::ofstream file(path, std::ios::binary);
    const auto put = [&](auto value) {
        const auto little = qToLittleEndian(value);
        file.write(reinterpret_cast<const char*>(&little), sizeof little);
    };
    const auto bytes = static_cast<quint32>(burst.samples.size() * 2);
    file << "RIFF";
    put(quint32{36 + bytes});
    file << "WAVEfmt ";
    put(quint32{16});
    put(quint16{1});
    put(quint16{1});
    put(quint32{ui::kSampleRate});
    put(quint32{ui::kSampleRate * 2});
    put(quint16{2});
    put(quint16{16});
    file << "data";
    put(bytes);
    for (const float sample : burst.samples)
        put(static_cast<qint16>(sample * 32'767.0F));
}

struct Way {
    std::function<void()> trigger;
    std::function<void()> letRun = [] {};  // what has to go on for it to sound
};

// A sound left over from the trial before would be taken for this one's: silence first.
test::Figures measure(const test::Monitor& monitor, const Way& way, std::size_t tries)
{
    test::Figures figures;
    for (std::size_t i = 0; i < tries; ++i) {
        for (const auto end = ui::bootNow() + 150ms + Micros{static_cast<int>(i % 7) * 3100};
             ui::bootNow() < end;) {
            way.letRun();
            (void)monitor.silence(5ms, 50ms);
        }
        (void)monitor.silence(50ms, 3s);
        const std::size_t from = monitor.position();
        const BootTime begin = ui::bootNow();
        way.trigger();
        std::optional<test::Onset> onset;
        while (!onset && ui::bootNow() - begin < kGiveUp) {
            way.letRun();
            onset = monitor.sound(from, 2ms);
        }
        if (onset)
            figures.add(onset->arrived - begin);
    }
    return figures;
}

std::size_t measureOut(const test::Monitor& monitor, ui::AudioOut& out, const std::string& name,
                       std::size_t tries)
{
    out.open(kDevice);
    for (const auto end = ui::bootNow() + 10s;
         out.status().state != ui::OutState::Ready && ui::bootNow() < end;)
        (void)monitor.silence(5ms, 50ms);
    const auto burst = shortBurst();
    Way way{.trigger = [&] { out.play(ui::Voice::Cue, burst); }};
    test::Figures figures = measure(monitor, way, tries);
    figures.print(name, tries, "");
    out.close();
    return figures.count();
}

void measureEffect(const test::Monitor& monitor, std::size_t tries)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("burst.wav"));
    writeWave(path.toStdString(), *shortBurst());
    QSoundEffect effect;
    effect.setSource(QUrl::fromLocalFile(path));
    const auto run = [] { QCoreApplication::processEvents(QEventLoop::AllEvents, 5); };
    for (const auto end = ui::bootNow() + 10s;
         effect.status() != QSoundEffect::Ready && ui::bootNow() < end;)
        run();
    test::Figures figures =
        measure(monitor, {.trigger = [&] { effect.play(); }, .letRun = run}, tries);
    figures.print("QSoundEffect, reused", tries, "");
}

}  // namespace

int main(int argc, char** argv)
{
    const std::size_t tries = test::howMany(20, 200);
    test::SoundServer server;
    server.addDevice(kDevice);
    const QApplication app(argc, argv);
    const test::Monitor monitor(server.address(), kDevice);
    std::printf(
        "trigger to first loud sample, heard / tried; wanted of the way in use: all, p95 60, max "
        "150 ms\n");
    std::size_t heard = 0;
    for (const auto buffer : {20ms, 40ms, 60ms, 80ms}) {
        ui::PulseOut out({}, buffer);
        const bool isInUse = buffer == ui::PulseOut::kBuffer;
        const std::string name = "libpulse, own thread, " + std::to_string(buffer.count()) + " ms";
        const std::size_t count =
            measureOut(monitor, out, name + (isInUse ? " (in use)" : ""), tries);
        heard = isInUse ? count : heard;
    }
    ui::QtOut sink;
    measureOut(monitor, sink, "QAudioSink, own thread, default buffer", tries);
    measureEffect(monitor, tries);
    return heard == tries ? EXIT_SUCCESS : EXIT_FAILURE;
}
