#include "ui/sound/sounder.h"

#include <algorithm>
#include <iterator>
#include <utility>

#include "ui/sound/pulse_out.h"
#include "ui/sound/qt_out.h"

namespace bathside::ui {

Sounder::Sounder(std::vector<std::unique_ptr<AudioOut>> paths)
{
    for (auto& out : paths)
        m_paths.push_back({.out = std::move(out)});
}

void Sounder::listen(const std::function<void()>& changed)
{
    for (Path& path : m_paths)
        path.out->listen(changed);
}

void Sounder::preferDevice(std::string device)
{
    m_preferred = std::move(device);
    for (Path& path : m_paths) {
        if (path.opened)
            path.out->open(m_preferred);
    }
}

void Sounder::holdVolume(std::optional<double> atLeast)
{
    for (Path& path : m_paths)
        path.out->holdVolume(atLeast);
}

std::vector<SounderChange> Sounder::look(BootTime now)
{
    const bool wasStopped = m_lookedAt && now - *m_lookedAt > kStalled;
    m_lookedAt = now;
    for (std::size_t i = 0; i < m_paths.size(); ++i) {
        Path& path = m_paths[i];
        if (wasStopped)
            path.askedAt = now;  // we slept, not the device
        if (i > 0 && !path.out->canFollow(m_paths[i - 1].fault)) {
            shut(path);
            path.isGivenUp = true;
            path.fault = m_paths[i - 1].fault;
            continue;
        }
        see(path, now);
        if (path.out->status().state == OutState::Ready && !path.isGivenUp)
            return use(i);
        if (!path.isGivenUp)
            return nothing();
    }
    return use(std::nullopt);
}

// Opens it when it is closed, again when it failed a while ago, and gives it up when it does not
// come.
void Sounder::see(Path& path, BootTime now)
{
    const OutStatus status = path.out->status();
    const bool isDue = !path.opened || now - *path.opened >= kRetry;
    const bool hasStopped = hasStalled(path, status, now);
    if (status.state == OutState::Ready && !hasStopped) {
        path.isGivenUp = false;
        return;
    }
    if (status.state == OutState::Failed || hasStopped) {
        path.isGivenUp = true;
        path.fault = hasStopped ? OutFault::Stalled : status.fault.value_or(OutFault::Refused);
    }
    if (status.state == OutState::Opening && now - path.opened.value_or(now) >= kPatience) {
        path.isGivenUp = true;
        path.fault = OutFault::Stalled;
    }
    if (status.state != OutState::Closed && !(path.isGivenUp && isDue))
        return;
    if (hasStopped || status.state == OutState::Opening)
        path.out->close();
    path.opened = now;
    path.askedAt = now;
    path.out->open(m_preferred);
}

bool Sounder::hasStalled(Path& path, const OutStatus& status, BootTime now) const
{
    if (status.state != OutState::Ready || status.asked != path.asked) {
        path.asked = status.asked;
        path.askedAt = now;
        return false;
    }
    return now - path.askedAt >= kStalled;
}

void Sounder::shut(Path& path)
{
    if (path.opened)
        path.out->close();
    path.opened.reset();
    path.isGivenUp = false;
}

// None, and whether there was one before: a first device is found, a last one is lost.
std::vector<SounderChange> Sounder::use(std::optional<std::size_t> path)
{
    if (!path) {
        m_used.reset();
        if (m_isLost)
            return {};
        m_isLost = true;
        const OutFault fault = m_paths.empty() ? OutFault::NoDevice : m_paths.front().fault;
        return {{SounderChange::Kind::Lost, m_device, {}, fault}};
    }
    for (std::size_t later = *path + 1; later < m_paths.size(); ++later)
        shut(m_paths[later]);
    const std::string device = m_paths[*path].out->status().device;
    const bool isSame = m_used == path && m_device == device;
    const bool wasThere = !m_isLost && !m_device.empty();
    const std::string from = std::exchange(m_device, device);
    m_used = path;
    m_isLost = false;
    if (isSame)
        return {};
    ++m_generation;
    if (!wasThere)
        return {{SounderChange::Kind::Found, from, device, {}}};
    if (from == device)
        return {};
    return {{SounderChange::Kind::Moved, from, device, {}}};
}

// A path is on its way: not lost yet, but nothing to play on.
std::vector<SounderChange> Sounder::nothing()
{
    m_used.reset();
    return {};
}

std::vector<VolumeRaise> Sounder::takeRaises()
{
    std::vector<VolumeRaise> all;
    for (Path& path : m_paths)
        std::ranges::move(path.out->takeRaises(), std::back_inserter(all));
    return all;
}

void Sounder::close()
{
    for (Path& path : m_paths)
        path.out->close();
    m_used.reset();
}

OutStatus Sounder::status() const
{
    return m_paths.empty() ? OutStatus{} : m_paths[m_used.value_or(0)].out->status();
}

void Sounder::play(Voice voice, std::shared_ptr<const Burst> burst)
{
    if (m_used)
        m_paths[*m_used].out->play(voice, std::move(burst));
}

void Sounder::silence()
{
    if (m_used)
        m_paths[*m_used].out->silence();
}

std::unique_ptr<Sounder> standardSounder(BellOut::Tone bell)
{
    std::vector<std::unique_ptr<AudioOut>> paths;
    paths.push_back(std::make_unique<PulseOut>());
    paths.push_back(std::make_unique<QtOut>());
    if (bell)
        paths.push_back(std::make_unique<BellOut>(std::move(bell)));
    return std::make_unique<Sounder>(std::move(paths));
}

}  // namespace bathside::ui
