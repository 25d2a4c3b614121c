#include "app/station/played_day.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <set>

#include "app/station/bench_day.h"
#include "app/station/paper_desk.h"
#include "app/station/window.h"
#include "app/station/window_player.h"
#include "core/trail/store/day_order.h"
#include "core/trail/store/folder_sink.h"
#include "core/trail/store/zone_days.h"
#include "ui/theme/theme.h"

namespace bathside::app {
namespace {

constexpr QSize kTenInch{1280, 800};
constexpr double kTenInchPitch = 5.9;  // px/mm of that panel
constexpr auto kRunOn = std::chrono::minutes(10);

class Deaf final : public ui::Feedback {
public:
    void taken() override {}
    void refused() override {}
};

class SilentLoudspeaker final : public ui::SoundTest {
public:
    void play() override {}
    [[nodiscard]] QString device() const override { return QStringLiteral("silent"); }
    [[nodiscard]] std::vector<ui::Loudspeaker> devices() const override { return {}; }
    void use(const QString&) override {}
    void heard() override {}
};

Result<std::string, QString> textOf(const QString& name)
{
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly))
        return failure(
            QStringLiteral("bathside: %1 cannot be read: %2").arg(name, file.errorString()));
    const QByteArray text = file.readAll();
    return text.toStdString();
}

QString faultText(const QString& name, const ScriptFault& fault)
{
    return QStringLiteral("bathside: %1, line %2, key %3: found %4, expected %5.")
        .arg(name)
        .arg(fault.line)
        .arg(QString::fromStdString(fault.fault.key), QString::fromStdString(fault.fault.found),
             QString::fromStdString(fault.fault.expected));
}

std::chrono::year_month_day dayOf(const store::ZoneDays& days, const std::string& zone, WallTime at)
{
    const auto offset = days.offset(zone, at).value_or(std::chrono::seconds(0));
    return std::chrono::floor<std::chrono::days>(at + offset);
}

/// The script's zone becomes this process's: the window takes the site's zone from the machine.
void moveTo(const std::vector<ScriptEntry>& script)
{
    for (const ScriptEntry& entry : script) {
        if (const auto* open = std::get_if<OpenShiftEntry>(&entry.statement)) {
            qputenv("TZ", QByteArray::fromStdString(open->shift.zone));
            return;
        }
    }
}

class PlayedDay {
public:
    explicit PlayedDay(const Options& options) : m_options(options)
    {
        m_language.use(options.language.isEmpty() ? QStringLiteral("en") : options.language);
        const double pitch = options.pxPerMm.value_or(kTenInchPitch);
        ui::theme().setScheme(options.dark.value_or(false) ? ui::Scheme::Dark : ui::Scheme::Light);
        ui::theme().setMetrics({pitch, QSizeF(kTenInch) / pitch});
        ui::theme().dress(*qApp);
    }
    ~PlayedDay()
    {
        if (m_window.content())
            delete m_window.content();
    }
    PlayedDay(const PlayedDay&) = delete;
    PlayedDay& operator=(const PlayedDay&) = delete;

    Result<QString, QString> play(const std::vector<ScriptEntry>& script, const std::string& card)
    {
        SimulatedClock& clock = m_clock.emplace(script.front().at);
        if (const auto wrong = open(clock, card))
            return failure(*wrong);
        WindowPlayer player({clock, m_session->station(), m_session->model(), m_window,
                             *m_window.findChild<ui::BenchPage*>()});
        for (const ScriptEntry& entry : script) {
            if (const auto wrong = player.play(entry))
                return failure(QStringLiteral("bathside: ") + *wrong);
            keepPicture(entry);
        }
        player.runTo(clock.now().wall + kRunOn);
        (void)m_session->station().note(StopStation{});
        const Seq events = m_session->station().bench().lastSeq;
        if (const auto wrong = exportDays(script.front().at, clock.now().wall))
            return failure(*wrong);
        return QStringLiteral("Played %1 statements through the window: %2 events, %3 pictures.")
            .arg(script.size())
            .arg(events)
            .arg(m_pictured.size());
    }

private:
    std::optional<QString> open(const SimulatedClock& clock, const std::string& card)
    {
        const auto inputTime = [&clock](std::uint64_t) {
            return ui::InputTime{clock.now(), false};
        };
        auto session =
            Session::open({.trail = m_folder.filePath(QStringLiteral("played.db")).toStdString(),
                           .spoolFolder = {},
                           .card = {},
                           .defaultCard = card,
                           .rehearsal = true,
                           .clockSynchronised = true,
                           .clockOffset = {}},
                          {.clock = clock,
                           .feedback = m_deaf,
                           .inputTime = inputTime,
                           .ticking = ui::StationModel::Ticking::ByHand});
        if (!session)
            return session.error();
        m_session = std::move(*session);
        m_window.put(frameFor(*m_session, m_language, m_preferences, m_silent, m_printing));
        m_window.resize(kTenInch);
        m_window.show();
        QCoreApplication::processEvents();
        return std::nullopt;
    }

    void keepPicture(const ScriptEntry& entry)
    {
        if (m_options.pictures.isEmpty() || !m_pictured.insert(entry.verb).second)
            return;
        QDir().mkpath(m_options.pictures);
        const QString name = QStringLiteral("%1-%2.png")
                                 .arg(m_pictured.size(), 2, 10, QLatin1Char('0'))
                                 .arg(QString::fromStdString(entry.verb));
        (void)m_window.grab().save(QDir(m_options.pictures).filePath(name));
    }

    std::optional<QString> exportDays(WallTime from, WallTime to)
    {
        if (m_options.exports.isEmpty())
            return std::nullopt;
        const std::filesystem::path folder = m_options.exports.toStdString();
        const auto exported = m_session->store()
                                  .ask([&](store::TrailDb& trail) -> Result<bool, StoreTrouble> {
                                      return exportTo(folder, trail, from, to);
                                  })
                                  .get();
        if (exported && *exported)
            return std::nullopt;
        return QStringLiteral("bathside: the record could not be exported to %1.")
            .arg(m_options.exports);
    }

    static bool exportTo(const std::filesystem::path& folder, const store::TrailDb& trail,
                         WallTime from, WallTime to)
    {
        const store::ZoneDays days;
        const auto zone = store::zoneOf(trail);
        if (!zone)
            return false;
        const auto order = store::orderFor(
            trail, days,
            {.first = dayOf(days, *zone, from),
             .last = dayOf(days, *zone, to),
             .version = BATHSIDE_VERSION,
             .lines = true,
             .sheets = {CsvDialect::forPrograms(), CsvDialect::forSpreadsheets(',')}});
        store::FolderSink sink(folder);
        return order && exportRecord(trail, *order, days, sink);
    }

    const Options& m_options;
    QTemporaryDir m_folder;
    std::optional<SimulatedClock> m_clock;  // the session's, to its end
    Deaf m_deaf;
    SilentLoudspeaker m_silent;
    ui::Language m_language;
    ui::Preferences m_preferences{ui::Preference{}};
    PaperDesk m_printing{m_preferences};
    std::unique_ptr<Session> m_session;
    Window m_window;
    std::set<std::string> m_pictured;
};

}  // namespace

Result<QString, QString> playDay(const Options& options)
{
    const auto text = textOf(options.play);
    if (!text)
        return failure(text.error());
    const auto script = scriptFrom(*text);
    if (!script)
        return failure(faultText(options.play, script.error()));
    const auto card =
        textOf(options.card.isEmpty() ? QStringLiteral(":/cards/default.json") : options.card);
    if (!card)
        return failure(card.error());
    moveTo(*script);
    return PlayedDay(options).play(*script, *card);
}

}  // namespace bathside::app
