#include "ui/sound/qt_out.h"

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSink>
#include <QDeadlineTimer>
#include <QIODevice>
#include <QMediaDevices>
#include <QThread>
#include <atomic>
#include <cstring>
#include <mutex>
#include <vector>

namespace bathside::ui {

// What the thread and its owner both use. Each `open` and `close` has a number, so that what the
// thread still says about an earlier one is not believed.
struct QtOut::Shared {
    Mixer mixer;
    std::atomic<std::uint64_t> asked = 0;
    std::mutex mutex;  // all below
    OutStatus status;
    std::function<void()> changed;
    std::uint64_t number = 0;

    std::uint64_t order(OutState state)
    {
        const std::scoped_lock lock(mutex);
        status = {.state = state};
        return ++number;
    }

    void become(std::uint64_t by, OutStatus next)
    {
        std::function<void()> tell;
        {
            const std::scoped_lock lock(mutex);
            if (by != number)
                return;
            status = std::move(next);
            tell = changed;
        }
        if (tell)
            tell();
    }
};

namespace {

constexpr auto kGoodbye = std::chrono::seconds{1};  // for the thread to end

constexpr const char* kDummy = "auto_null";  // made up by the server where there is no device

QAudioFormat format()
{
    QAudioFormat format;
    format.setSampleRate(kSampleRate);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Float);
    return format;
}

QAudioDevice deviceNamed(const std::string& id)
{
    const QByteArray wanted = QByteArray::fromStdString(id);
    for (const QAudioDevice& device : QMediaDevices::audioOutputs()) {
        if (device.id() == wanted)
            return device;
    }
    return QMediaDevices::defaultAudioOutput();
}

// Endless samples for the sink to pull.
class Source final : public QIODevice {
public:
    Source(Mixer& mixer, std::atomic<std::uint64_t>& asked) : m_mixer(mixer), m_asked(asked)
    {
        open(QIODevice::ReadOnly | QIODevice::Unbuffered);
    }

    [[nodiscard]] bool isSequential() const override { return true; }
    [[nodiscard]] qint64 bytesAvailable() const override
    {
        return kSampleRate * qint64{sizeof(float)};
    }

protected:
    qint64 readData(char* data, qint64 size) override
    {
        const auto frames = static_cast<std::size_t>(size) / sizeof(float);
        if (frames == 0)
            return 0;
        std::vector<float> samples(frames);
        m_mixer.render(samples);
        std::memcpy(data, samples.data(), frames * sizeof(float));
        ++m_asked;
        return static_cast<qint64>(frames * sizeof(float));
    }
    qint64 writeData(const char*, qint64) override { return -1; }

private:
    Mixer& m_mixer;
    std::atomic<std::uint64_t>& m_asked;
};

}  // namespace

// Lives on the sound thread.
class QtOut::Worker final : public QObject {
public:
    explicit Worker(std::shared_ptr<Shared> shared)
        : m_shared(std::move(shared)), m_source(m_shared->mixer, m_shared->asked)
    {
    }

    void start(const std::string& id, std::uint64_t number)
    {
        stop();
        m_number = number;
        const QAudioDevice device = deviceNamed(id);
        if (device.isNull() || device.id() == kDummy) {
            m_shared->become(number, {.state = OutState::Failed, .fault = OutFault::NoDevice});
            return;
        }
        m_name = device.id().toStdString();
        m_sink = std::make_unique<QAudioSink>(device, format());
        connect(m_sink.get(), &QAudioSink::stateChanged, this, [this] { tell(); });
        m_sink->start(&m_source);
        tell();
    }

    void stop()
    {
        if (!m_sink)
            return;
        m_sink->disconnect(this);
        m_sink->stop();
        m_sink.reset();
    }

private:
    void tell()
    {
        const bool isWell =
            m_sink->error() == QAudio::NoError && m_sink->state() != QAudio::StoppedState;
        if (isWell)
            m_shared->become(m_number, {.state = OutState::Ready, .device = m_name});
        else
            m_shared->become(m_number, {.state = OutState::Failed, .fault = OutFault::Refused});
    }

    std::shared_ptr<Shared> m_shared;
    Source m_source;
    std::string m_name;
    std::uint64_t m_number = 0;
    std::unique_ptr<QAudioSink> m_sink;
};

QtOut::QtOut() : m_shared(std::make_shared<Shared>()) {}

QtOut::~QtOut()
{
    if (!m_thread)
        return;
    close();
    m_worker->deleteLater();
    m_thread->quit();
    // A thread that hangs in a frozen server is left to it: waiting would hang the program's end,
    // too.
    if (!m_thread->wait(QDeadlineTimer(kGoodbye)))
        static_cast<void>(m_thread.release());
}

void QtOut::startThread()
{
    m_thread = std::make_unique<QThread>();
    m_thread->setObjectName(QStringLiteral("sound-qt"));
    m_worker = new Worker(m_shared);
    m_worker->moveToThread(m_thread.get());
    m_thread->start(QThread::TimeCriticalPriority);
}

void QtOut::open(const std::string& device)
{
    if (!m_thread)
        startThread();
    const std::uint64_t number = m_shared->order(OutState::Opening);
    QMetaObject::invokeMethod(
        m_worker, [worker = m_worker, device, number] { worker->start(device, number); });
}

void QtOut::close()
{
    if (!m_thread)
        return;
    m_shared->order(OutState::Closed);
    QMetaObject::invokeMethod(m_worker, [worker = m_worker] { worker->stop(); });
}

void QtOut::play(Voice voice, std::shared_ptr<const Burst> burst)
{
    m_shared->mixer.play(voice, std::move(burst));
}

void QtOut::silence() { m_shared->mixer.silence(); }

OutStatus QtOut::status() const
{
    const std::scoped_lock lock(m_shared->mutex);
    OutStatus status = m_shared->status;
    status.asked = m_shared->asked;
    return status;
}

bool QtOut::canFollow(OutFault fault) const
{
    return fault != OutFault::NoDevice && fault != OutFault::Muted;
}

void QtOut::listen(std::function<void()> changed)
{
    const std::scoped_lock lock(m_shared->mutex);
    m_shared->changed = std::move(changed);
}

}  // namespace bathside::ui
