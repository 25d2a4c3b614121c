#include "app/station/sound_desk.h"

#include "app/system/file_log.h"

namespace bathside::app {
namespace {

template <typename... Fs>
struct Overloaded : Fs... {
    using Fs::operator()...;
};
template <typename... Fs>
Overloaded(Fs...) -> Overloaded<Fs...>;

/// What the record says of it; nothing for what only the technical log wants.
std::optional<Intent> intentOf(const ui::SoundReport& report)
{
    namespace told = ui::report;
    return std::visit(
        Overloaded{
            [](const told::AlarmSounded& sounded) -> std::optional<Intent> {
                return NoteSounded{sounded.alarm, sounded.level, sounded.device,
                                   std::chrono::duration_cast<Millis>(sounded.late)};
            },
            [](const told::SoundLost& lost) -> std::optional<Intent> {
                return LoseSound{lost.device};
            },
            [](const told::SoundFound& found) -> std::optional<Intent> {
                return FindSound{found.device};
            },
            [](const told::ClockStepped& stepped) -> std::optional<Intent> {
                return NoteClockStep{stepped.by};
            },
            [](const told::SoundMoved& moved) -> std::optional<Intent> {
                logWarning("sound moved from " + moved.from + " to " + moved.to);
                return std::nullopt;
            },
            [](const told::VolumeRaised& raised) -> std::optional<Intent> {
                logWarning("volume was lowered and raised again: " + raised.raise.device);
                return std::nullopt;
            },
            [](const told::AlarmRaised&) -> std::optional<Intent> { return std::nullopt; },
        },
        report);
}

}  // namespace

SoundDesk::SoundDesk(const Clock& clock)
    : m_alarms(clock, ui::standardSounder({}), ui::Waiting::BootClock, [this] {
          QMetaObject::invokeMethod(this, &SoundDesk::takeReports, Qt::QueuedConnection);
      })
{
}

QString SoundDesk::device() const
{
    const ui::OutStatus out = m_alarms.output();
    for (const ui::DeviceName& each : out.devices) {
        if (each.id == out.device && !each.description.empty())
            return QString::fromStdString(each.description);
    }
    return QString::fromStdString(out.device);
}

std::vector<ui::Loudspeaker> SoundDesk::devices() const
{
    std::vector<ui::Loudspeaker> all;
    for (const ui::DeviceName& each : m_alarms.output().devices)
        all.push_back(
            {QString::fromStdString(each.id),
             QString::fromStdString(each.description.empty() ? each.id : each.description)});
    return all;
}

void SoundDesk::heard()
{
    if (const auto volume = m_alarms.output().volume)
        m_alarms.holdVolume(volume->level);
}

void SoundDesk::attach(Session& session)
{
    m_session = &session;
    connect(&session.model(), &ui::StationModel::stateChanged, this, &SoundDesk::publish);
    connect(&session, &QObject::destroyed, this, [this] { m_alarms.publish({}); });
    publish();
    takeReports();
}

void SoundDesk::publish()
{
    if (m_session)
        m_alarms.publish(soundSource(std::make_shared<const Bench>(m_session->station().bench())));
}

void SoundDesk::takeReports()
{
    if (!m_session)
        return;
    for (const ui::SoundReport& report : m_alarms.takeReports())
        note(report);
}

void SoundDesk::note(const ui::SoundReport& report)
{
    if (const auto intent = intentOf(report))
        (void)m_session->station().note(*intent);
}

}  // namespace bathside::app
