#include "ui/sound/pulse_out.h"

#include <algorithm>
#include <utility>

namespace bathside::ui {

namespace {

constexpr auto kRefusedFor = std::chrono::seconds{1};  // before a device that failed is tried again
constexpr auto kTellAgain = std::chrono::seconds{5};   // a dragged slider is one raise, not thirty
constexpr double kSameLevel = 0.005;

}  // namespace

PulseOut::PulseOut(std::string server, std::chrono::milliseconds buffer)
    : m_server(std::move(server)), m_buffer(buffer)
{
}

PulseOut::~PulseOut() { close(); }

void PulseOut::listen(std::function<void()> changed) { m_changed = std::move(changed); }

void PulseOut::open(const std::string& device)
{
    const bool isLinked = m_link && status().fault != OutFault::NoServer;
    if (!isLinked) {
        close();
        m_preferred = device;
        become(OutState::Opening, std::nullopt);
        m_link = std::make_unique<PulseLink>(
            PulseLink::Listener{.ready = [this] { survey(); },
                                .lost = [this] { become(OutState::Failed, OutFault::NoServer); },
                                .changed = [this] { survey(); },
                                .answered = [this](const PulseAnswer& a) { answered(a); }});
        m_link->start(m_server);
        return;
    }
    const PulseLink::Lock lock(*m_link);
    m_preferred = device;
    survey();
}

void PulseOut::close()
{
    if (!m_link)
        return;
    {
        const PulseLink::Lock lock(*m_link);
        m_stream.reset();
        m_link->end();
    }
    m_link.reset();
    m_isStreamBad = false;
    m_refused.clear();
    become(OutState::Closed, std::nullopt);
}

void PulseOut::play(Voice voice, std::shared_ptr<const Burst> burst)
{
    m_mixer.play(voice, std::move(burst));
}

void PulseOut::silence() { m_mixer.silence(); }

void PulseOut::holdVolume(std::optional<double> atLeast)
{
    if (!m_link) {
        m_hold = atLeast;
        return;
    }
    const PulseLink::Lock lock(*m_link);
    m_hold = atLeast;
    survey();
}

std::vector<VolumeRaise> PulseOut::takeRaises()
{
    const std::scoped_lock lock(m_mutex);
    return std::exchange(m_raises, {});
}

OutStatus PulseOut::status() const
{
    const std::scoped_lock lock(m_mutex);
    OutStatus status = m_status;
    status.asked = m_counts.asked;
    status.underflows = m_counts.underflows;
    return status;
}

void PulseOut::survey()
{
    const bool hasStream = m_stream && !m_isStreamBad && status().state == OutState::Ready;
    m_link->ask(hasStream ? std::optional(m_stream->index()) : std::nullopt);
}

void PulseOut::answered(const PulseAnswer& answer)
{
    {
        const std::scoped_lock lock(m_mutex);
        m_status.devices = deviceNames(answer.survey);
    }
    const auto chosen = chooseSink(answer.survey, wish());
    if (!chosen) {
        m_stream.reset();
        become(OutState::Failed, chosen.error());
        return;
    }
    if (!m_stream || m_isStreamBad || m_stream->sink() != *chosen)
        use(*chosen);
    const auto sink = std::ranges::find(answer.survey.sinks, *chosen, &SinkFacts::name);
    seeVolume(*sink, answer.stream);
}

SinkWish PulseOut::wish()
{
    std::erase_if(m_refused,
                  [now = Steady::now()](const auto& entry) { return entry.second <= now; });
    SinkWish wish{.preferred = m_preferred, .mayUnmute = m_hold.has_value()};
    if (m_stream && !m_isStreamBad)
        wish.current = m_stream->sink();
    for (const auto& [name, until] : m_refused)
        wish.refused.insert(name);
    return wish;
}

void PulseOut::use(const std::string& sink)
{
    m_stream.reset();
    m_isStreamBad = false;
    become(OutState::Opening, std::nullopt);
    const auto ready = [this] {
        become(OutState::Ready, std::nullopt);
        survey();
    };
    const PulseStream::Feed feed{m_mixer, m_counts, m_buffer};
    m_stream = std::make_unique<PulseStream>(
        *m_link, sink, feed,
        PulseStream::Listener{.ready = ready,
                              .failed = [this, sink](OutFault) { streamFailed(sink); },
                              .moved = ready});
}

// Another device may do: only when there is none is the path itself lost.
void PulseOut::streamFailed(const std::string& sink)
{
    m_isStreamBad = true;
    m_refused[sink] = Steady::now() + kRefusedFor;
    become(OutState::Opening, std::nullopt);
    survey();
}

void PulseOut::seeVolume(const SinkFacts& sink, const std::optional<StreamVolume>& stream)
{
    const StreamVolume own = stream.value_or(StreamVolume{});
    const double streamed = sink.isFlat && stream ? own.level : sink.level * own.level;
    const Volume found{streamed, sink.isMuted || own.isMuted};
    {
        const std::scoped_lock lock(m_mutex);
        m_status.volume = found;
    }
    const bool isLow = found.muted || found.level < m_hold.value_or(0.0) - kSameLevel;
    if (m_hold && isLow)
        raise(sink, found);
    // Our own stream stays at full, so that the device's volume is the only one there is.
    const bool isOwnLow = stream && (own.isMuted || own.level < 1.0 - kSameLevel);
    if (isOwnLow && !sink.isFlat)
        m_link->setStream(m_stream->index(), sink, 1.0);
}

void PulseOut::raise(const SinkFacts& sink, const Volume& found)
{
    const double level = std::max(*m_hold, sink.isFlat ? found.level : sink.level);
    if (sink.isFlat && status().state == OutState::Ready)
        m_link->setStream(m_stream->index(), sink, level);
    else
        m_link->setSink(sink, level);
    const auto now = Steady::now();
    if (m_raised && now - *m_raised < kTellAgain)
        return;
    m_raised = now;
    {
        const std::scoped_lock lock(m_mutex);
        m_raises.push_back({sink.name, found, level});
    }
    if (m_changed)
        m_changed();
}

void PulseOut::become(OutState state, std::optional<OutFault> fault)
{
    {
        const std::scoped_lock lock(m_mutex);
        m_status.state = state;
        m_status.fault = fault;
        m_status.device = state == OutState::Ready ? m_stream->sink() : std::string();
        if (state != OutState::Ready)
            m_status.volume.reset();
    }
    if (m_changed)
        m_changed();
}

}  // namespace bathside::ui
