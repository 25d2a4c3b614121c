#pragma once

// One trail open at the bench: lock, store, state, service, and the model that the screen is bound
// to.
//
// `open` either gives a session that is ready to use or one sentence why not; nothing is left half
// open. What the store does is told on this thread; nothing here waits for it but opening and
// ending. Orderly ending notes the stop and waits a little for the store. UI thread.

#include <QObject>
#include <filesystem>
#include <memory>

#include "app/station/draft_file.h"
#include "app/station/pins.h"
#include "app/station/thermometers.h"
#include "app/system/trail_lock.h"
#include "core/station/station.h"
#include "core/trail/seal.h"
#include "core/trail/store/continuation.h"
#include "core/trail/store/store_thread.h"
#include "core/trail/store/zone_days.h"
#include "ui/models/preferences.h"
#include "ui/models/record_source.h"
#include "ui/models/station_model.h"

namespace bathside::app {

[[nodiscard]] TapId newTapId();

struct SessionSetting {
    std::filesystem::path trail;
    StationId station{ui::kUnnamedStation};  // its name in the record
    std::filesystem::path spoolFolder;       // besides the trail's own
    std::string card;                        // document; empty: only where the trail has none
    std::string defaultCard;
    bool rehearsal = false;
    std::filesystem::path sealKey{};  // the key's file; empty: a closed shift is not sealed
    bool clockSynchronised = false;
    std::optional<Millis> clockOffset;
};

class Session final : public QObject {
    Q_OBJECT

public:
    struct World {
        const Clock& clock;
        ui::Feedback& feedback;
        ui::MapInputTime inputTime;
        ui::StationModel::Ticking ticking;
        std::optional<ProbePlaces> probes{};  // none: thermometers are read by hand only
    };

    [[nodiscard]] static Result<std::unique_ptr<Session>, QString> open(
        const SessionSetting& setting, World world);
    ~Session() override;

    [[nodiscard]] ui::StationModel& model() { return *m_model; }
    [[nodiscard]] Station& station() { return *m_station; }
    [[nodiscard]] ui::LiveProbes& probes() { return *m_probes; }
    [[nodiscard]] ui::PinDesk& pins() { return m_pins; }
    [[nodiscard]] ui::DraftShelf& drafts() { return m_drafts; }
    [[nodiscard]] store::StoreThread& store() { return *m_store; }
    /// The first file of the trail, by which it is named.
    [[nodiscard]] const std::filesystem::path& trail() const { return m_trail; }
    /// The files before the one in use, where that goes on after damage.
    [[nodiscard]] const std::vector<store::SoundPart>& earlier() const { return m_earlier; }
    /// The station's name in the record; that of every entry from the calling on.
    [[nodiscard]] const StationId& name() const { return m_name; }
    void call(StationId name);
    [[nodiscard]] bool isRehearsal() const { return m_station->bench().rehearsal; }
    /// Puts a copy that was read back and found sound on record.
    void noteCopy(const ui::CopyAnswer& answer);
    /// What closed shifts and exports are signed with; null: nothing.
    [[nodiscard]] const std::shared_ptr<const SealKey>& sealKey() const { return m_key; }
    /// Why closed shifts are not sealed; empty: they are, or nobody asked for it.
    [[nodiscard]] const QString& sealTrouble() const { return m_sealTrouble; }

private:
    Session(const SessionSetting& setting, TrailLock lock);

    [[nodiscard]] Result<State, QString> restore();
    void startService(State state, const World& world);
    void adoptCard(const SessionSetting& setting);
    void noteStart(const SessionSetting& setting, const Head& head);
    void readKey(const std::filesystem::path& file);
    void sealWhenClosed();
    [[nodiscard]] bool isToBeSealed() const;

    std::filesystem::path m_trail;
    StationId m_name;
    std::vector<store::SoundPart> m_earlier;
    TrailLock m_lock;
    Pins m_pins;
    DraftFile m_drafts;
    std::unique_ptr<store::StoreThread> m_store;
    store::ZoneDays m_days;
    std::unique_ptr<Station> m_station;
    std::unique_ptr<ui::StationModel> m_model;
    std::unique_ptr<Thermometers> m_probes;
    std::shared_ptr<const SealKey> m_key;
    QString m_sealTrouble;
    bool m_isSealing = false;  // the store has been asked for its head
};

}  // namespace bathside::app
