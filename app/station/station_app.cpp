#include "app/station/station_app.h"

#include <QApplication>
#include <QFile>
#include <QScreen>

#include "app/station/bench_day.h"
#include "app/station/damage.h"
#include "app/station/settings.h"
#include "app/system/clock_sync.h"
#include "app/system/file_log.h"
#include "app/system/paths.h"
#include "core/card/read.h"
#include "ui/controls/accessible.h"
#include "ui/frame/start_page.h"
#include "ui/text/faults.h"
#include "ui/theme/theme.h"

namespace bathside::app {
namespace {

constexpr auto kRealTrail = "trail.db", kRehearsalTrail = "rehearsal.db",
               kSettings = "station.conf";
constexpr auto kDefaultCard = ":/cards/default.json";

ui::Preference preferenceOf(const Options& options)
{
    ui::Preference found = readPreference(folderFor(Keeps::Settings) / kSettings);
    if (!options.station.isEmpty())
        found.station = options.station;
    if (!options.language.isEmpty())
        found.language = options.language;
    if (!ui::Language::offered().contains(found.language))
        found.language = ui::Language::ofSystem();
    found.dark = options.dark.value_or(found.dark);
    return found;
}

StationId stationOf(const ui::Preference& preference) { return {preference.station.toStdString()}; }

std::string wholeOf(QFile& file)
{
    const QByteArray bytes = file.readAll();
    return bytes.toStdString();
}

std::string defaultCard()
{
    QFile file(QString::fromLatin1(kDefaultCard));
    return file.open(QIODevice::ReadOnly) ? wholeOf(file) : std::string();
}

/// Nobody could review or sign, and no bag waits.
bool isFirstStart(const Bench& bench) { return !bench.people.areListed() && !bench.shiftIsOpen(); }

}  // namespace

StationApp::StationApp(Options options)
    : m_options(std::move(options)),
      m_preferences(preferenceOf(m_options)),
      m_printing(m_preferences),
      m_eventTime(m_clock),
      m_sound(m_clock)
{
    ui::installAccessibility();
    m_language.use(m_preferences.now().language);
    m_sound.use(m_preferences.now().soundDevice);
    connect(&m_preferences, &ui::Preferences::changed, this, [this] {
        writePreference(folderFor(Keeps::Settings) / kSettings, m_preferences.now());
        if (m_preferences.now().language != m_language.code())  // else nothing of it is asked anew
            m_language.use(m_preferences.now().language);
        if (m_session)
            m_session->call(stationOf(m_preferences.now()));
        dressScreen();
    });
    m_window.mayClose([this] { return !m_session || !m_session->model().isInCriticalWindow(); });
}

StationApp::~StationApp()
{
    // The screen goes before the session it is bound to.
    if (m_window.content())
        delete m_window.content();
}

std::optional<QString> StationApp::start()
{
    auto card = cardDocument();
    if (!card)
        return card.error();
    m_card = std::move(*card);
    dressScreen();
    if (m_options.day == Day::Asked)
        showStart();
    else if (const auto wrong = begin(m_options.day)) {
        if (!m_startsAgain)
            return wrong;
        showStart();
        showFault(*wrong);
    }
    showWindow();
    return std::nullopt;
}

Result<std::string, QString> StationApp::cardDocument() const
{
    if (m_options.card.isEmpty())
        return std::string();
    QFile file(m_options.card);
    if (!file.open(QIODevice::ReadOnly))
        return failure(
            tr("The card cannot be read (%1): %2").arg(file.errorString(), m_options.card));
    std::string document = wholeOf(file);
    if (const auto known = cardFrom(document); !known)
        return failure(ui::cardFaultText(known.error()) + u'\n' + m_options.card);
    return document;
}

SessionSetting StationApp::settingFor(Day day) const
{
    const ClockSync sync = readClockSync();
    const bool rehearsal = day == Day::Rehearsal;
    const std::filesystem::path usual =
        folderFor(Keeps::Data) / (rehearsal ? kRehearsalTrail : kRealTrail);
    const std::filesystem::path trail =
        m_options.trail.isEmpty() ? usual : std::filesystem::path(m_options.trail.toStdString());
    return {.trail = trail,
            .station = stationOf(m_preferences.now()),
            .spoolFolder = folderFor(Keeps::State),
            .card = m_card,
            .defaultCard = defaultCard(),
            .rehearsal = rehearsal,
            .sealKey = std::filesystem::path(trail).replace_filename("seal.key"),
            .clockSynchronised = sync.synchronised,
            .clockOffset = std::chrono::duration_cast<Millis>(sync.offset)};
}

std::optional<QString> StationApp::begin(Day day)
{
    const auto inputTime = [this](std::uint64_t eventMs) {
        const InputInstant instant = m_eventTime.instantOf(eventMs);
        return ui::InputTime{.at = instant.at, .byReceipt = instant.byReceipt};
    };
    auto session = Session::open(settingFor(day), {.clock = m_clock,
                                                   .feedback = m_sound,
                                                   .inputTime = inputTime,
                                                   .ticking = ui::StationModel::Ticking::ByTimer,
                                                   .probes = ProbePlaces{}});
    if (!session) {
        const auto damage =
            goOnAfterDamage(settingFor(day).trail, m_clock, stationOf(m_preferences.now()));
        m_startsAgain = damage && damage->goesOn;
        const QString wrong = damage ? damage->sentence : session.error();
        logError(wrong.toStdString());
        return wrong;
    }
    m_session = std::move(*session);
    if (!m_session->sealTrouble().isEmpty())
        logError(m_session->sealTrouble().toStdString());
    m_sound.attach(*m_session);
    keepAwake();
    auto* frame = frameFor(*m_session, {.language = m_language,
                                        .preferences = m_preferences,
                                        .sound = m_sound,
                                        .deliveries = m_deliveries,
                                        .printing = m_printing});
    m_window.put(frame);
    if (day == Day::Real && isFirstStart(m_session->model().bench()))
        frame->showPage(QString::fromLatin1(ui::Frame::kPeople));
    return std::nullopt;
}

void StationApp::showStart()
{
    auto* page = new ui::StartPage(m_preferences);
    connect(page, &ui::StartPage::rehearsalChosen, this, [this] { choose(Day::Rehearsal); });
    connect(page, &ui::StartPage::realChosen, this, [this] { choose(Day::Real); });
    m_window.put(page);
}

void StationApp::choose(Day day)
{
    if (const auto wrong = begin(day))
        showFault(*wrong);
}

void StationApp::showFault(const QString& sentence)
{
    if (auto* page = qobject_cast<ui::StartPage*>(m_window.content()))
        page->showFault(sentence);
}

void StationApp::dressScreen()
{
    const QScreen& screen = *QGuiApplication::primaryScreen();
    const ui::Preference& now = m_preferences.now();
    ui::theme().setScheme(now.dark ? ui::Scheme::Dark : ui::Scheme::Light);
    if (m_options.pxPerMm)
        ui::theme().setMetrics({*m_options.pxPerMm, QSizeF(screen.size()) / *m_options.pxPerMm});
    else
        ui::theme().setMetrics(ui::Metrics::of(screen, now.pitchCorrection));
    ui::theme().dress(*qApp);
}

void StationApp::showWindow()
{
    constexpr QSize kTenInch{1280, 800};
    if (!m_options.windowed) {
        // where no window manager makes it so
        m_window.setGeometry(QGuiApplication::primaryScreen()->geometry());
        return m_window.showFullScreen();
    }
    m_window.resize(kTenInch.boundedTo(QGuiApplication::primaryScreen()->availableSize()));
    m_window.show();
}

// A machine that falls asleep has no loudspeaker: while a pull is open it is asked not to.
void StationApp::keepAwake()
{
    const auto follow = [this] {
        if (!m_session->model().bench().openPull())
            m_inhibitor.release();
        else if (!m_inhibitor.isHeld())
            m_inhibitor.hold(tr("Vaccine is being thawed"));
    };
    connect(&m_session->model(), &ui::StationModel::stateChanged, this, follow);
    follow();
}

}  // namespace bathside::app
