#include "app/station/played_window.h"

#include <QApplication>
#include <algorithm>

#include "app/station/bench_day.h"
#include "ui/models/delivery_source.h"
#include "ui/text/subjects.h"
#include "ui/theme/theme.h"

namespace bathside::app {
namespace {

constexpr QSize kTenInch{1280, 800};
constexpr double kTenInchPitch = 5.9;  // px/mm of that panel

}  // namespace

class PlayedWindow::Deaf final : public ui::Feedback {
public:
    void taken() override {}
    void refused() override {}
};

class PlayedWindow::SilentLoudspeaker final : public ui::SoundTest {
public:
    void play() override {}
    [[nodiscard]] QString device() const override { return QStringLiteral("silent"); }
    [[nodiscard]] std::vector<ui::Loudspeaker> devices() const override { return {}; }
    void use(const QString&) override {}
    void heard() override {}
};

/// The files that the script says came in, as if on a stick.
class PlayedWindow::ScriptDeliveries final : public ui::DeliverySource {
public:
    explicit ScriptDeliveries(const std::vector<ScriptEntry>& script)
    {
        for (const ScriptEntry& entry : script) {
            if (const auto* delivery = std::get_if<DeliveryEntry>(&entry.statement))
                m_deliveries.push_back(*delivery);
        }
    }
    [[nodiscard]] std::vector<ui::DeliveryFile> files() const override
    {
        std::vector<ui::DeliveryFile> files;
        for (const DeliveryEntry& delivery : m_deliveries) {
            const QString name = ui::fromCore(delivery.file);
            files.push_back({name, name, {}});
        }
        return files;
    }
    [[nodiscard]] std::optional<std::string> read(const QString& path) const override
    {
        const auto found =
            std::ranges::find(m_deliveries, path.toStdString(), &DeliveryEntry::file);
        return found == m_deliveries.end() ? std::nullopt : std::optional(found->csv);
    }

private:
    std::vector<DeliveryEntry> m_deliveries;
};

PlayedWindow::PlayedWindow(const Options& options)
    : m_deaf(std::make_unique<Deaf>()), m_silent(std::make_unique<SilentLoudspeaker>())
{
    m_language.use(options.language.isEmpty() ? QStringLiteral("en") : options.language);
    const double pitch = options.pxPerMm.value_or(kTenInchPitch);
    ui::theme().setScheme(options.dark.value_or(false) ? ui::Scheme::Dark : ui::Scheme::Light);
    ui::theme().setMetrics({pitch, QSizeF(kTenInch) / pitch});
    ui::theme().dress(*qApp);
}

PlayedWindow::~PlayedWindow()
{
    if (m_window.content())
        delete m_window.content();
}

std::optional<QString> PlayedWindow::open(const std::vector<ScriptEntry>& script,
                                          const std::string& card)
{
    const SimulatedClock& clock = m_clock.emplace(script.front().at);
    m_deliveries = std::make_unique<ScriptDeliveries>(script);
    auto session =
        Session::open({.trail = m_folder.filePath(QStringLiteral("played.db")).toStdString(),
                       .spoolFolder = {},
                       .card = {},
                       .defaultCard = card,
                       .rehearsal = true,
                       .clockSynchronised = true,
                       .clockOffset = {}},
                      {.clock = clock,
                       .feedback = *m_deaf,
                       .inputTime =
                           [&clock](std::uint64_t) {
                               return ui::InputTime{clock.now(), false};
                           },
                       .ticking = ui::StationModel::Ticking::ByHand});
    if (!session)
        return session.error();
    m_session = std::move(*session);
    m_window.put(frameFor(*m_session, {.language = m_language,
                                       .preferences = m_preferences,
                                       .sound = *m_silent,
                                       .deliveries = *m_deliveries,
                                       .printing = m_printing}));
    m_window.resize(kTenInch);
    m_window.show();
    QCoreApplication::processEvents();
    m_player.emplace(WindowPlayer::Stage{*m_clock, m_session->station(), m_session->model(),
                                         m_window, *m_window.findChild<ui::BenchPage*>()});
    return std::nullopt;
}

}  // namespace bathside::app
