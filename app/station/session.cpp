#include "app/station/session.h"

#include <QUuid>
#include <system_error>

#include "app/system/key_file.h"
#include "core/card/read.h"
#include "core/trail/store/disk_files.h"
#include "core/trail/store/restore.h"
#include "ui/text/faults.h"
#include "ui/text/refusals.h"

namespace bathside::app {
namespace {

constexpr Millis kLastWords{3000};  // for the store at the end

QString pathText(const std::filesystem::path& path)
{
    return QString::fromStdString(path.string());
}

QString lockText(const std::filesystem::path& trail, const LockFault& fault)
{
    if (fault.why == LockFault::Why::Taken)
        return Session::tr(
                   "Bathside is running already with this trail (process %1). Use that one, or end "
                   "it first: %2")
            .arg(QString::number(fault.holder), pathText(trail));
    const std::error_code error(fault.errorNumber, std::system_category());
    return Session::tr("The trail's folder cannot be written to (%1): %2")
        .arg(QString::fromStdString(error.message()), pathText(trail.parent_path()));
}

QString storeText(const std::filesystem::path& trail, const StoreTrouble& trouble)
{
    return ui::faultText(trouble) + u'\n' + pathText(trail);
}

Result<TrailLock, QString> lockOf(const std::filesystem::path& trail)
{
    std::error_code error;
    if (!trail.parent_path().empty())
        std::filesystem::create_directories(trail.parent_path(), error);
    if (error)
        return failure(
            Session::tr("The trail's folder cannot be made (%1): %2")
                .arg(QString::fromStdString(error.message()), pathText(trail.parent_path())));
    auto lock = TrailLock::take(trail);
    if (!lock)
        return failure(lockText(trail, lock.error()));
    return std::move(*lock);
}

QString keyText(const std::filesystem::path& file, KeyFault fault)
{
    const QString name = pathText(file);
    switch (fault) {
        case KeyFault::Unreadable:
            return Session::tr("The key that seals the record cannot be read: %1").arg(name);
        case KeyFault::NoKey:
            return Session::tr(
                       "This file should hold the key that seals the record, and holds something "
                       "else: %1")
                .arg(name);
        case KeyFault::Unwritable:
            return Session::tr("The key that seals the record cannot be made: %1").arg(name);
        case KeyFault::Open:
            return Session::tr(
                       "Others may read the key that seals the record. Take their rights away "
                       "(mode 0600) and ask whether it was copied: %1")
                .arg(name);
    }
    Q_UNREACHABLE();
}

}  // namespace

TapId newTapId() { return {QUuid::createUuid().toString(QUuid::WithoutBraces).toStdString()}; }

Result<std::unique_ptr<Session>, QString> Session::open(const SessionSetting& setting, World world)
{
    auto lock = lockOf(setting.trail);
    if (!lock)
        return failure(lock.error());
    if (store::lacksFirstEntry(store::partsOf(setting.trail).back()))
        return failure(storeText(setting.trail, {StoreFault::Damaged, 0}));
    std::unique_ptr<Session> session(new Session(setting, std::move(*lock)));
    const auto head = session->m_store->start();
    if (!head)
        return failure(storeText(setting.trail, head.error()));
    auto state = session->restore();
    if (!state)
        return failure(state.error());
    session->startService(std::move(*state), world);
    session->readKey(setting.sealKey);
    session->noteStart(setting, *head);
    return session;
}

Session::Session(const SessionSetting& setting, TrailLock lock)
    : m_trail(setting.trail),
      m_name(setting.station),
      m_lock(std::move(lock)),
      m_pins(m_trail),
      m_drafts(DraftFile::beside(m_trail))
{
    const auto told = [this](const RecordState& record) {
        QMetaObject::invokeMethod(
            this,
            [this, record] {
                if (!m_station)
                    return;
                m_station->recorded(record);
                sealWhenClosed();
            },
            Qt::QueuedConnection);
    };
    m_store = std::make_unique<store::StoreThread>(
        std::make_unique<store::DiskFiles>(
            store::DiskFiles::Places{.trail = store::partsOf(m_trail).back(),
                                     .spoolFolders = {m_trail.parent_path()},
                                     .spoolsOf = m_trail}),
        store::StoreThread::Settings{.station = m_name}, told);
}

void Session::call(StationId name)
{
    m_name = std::move(name);
    m_store->call(m_name);
}

Session::~Session()
{
    if (!m_station)
        return;
    m_probes.reset();  // no reading after the last word
    m_station->whenChanged({});
    if (m_station->note(StopStation{}))
        (void)m_store->flush(kLastWords);
}

Result<State, QString> Session::restore()
{
    auto state = m_store
                     ->ask([this](store::TrailDb& trail) {
                         m_earlier = store::soundParts(store::partsOf(m_trail), trail.origin());
                         return store::stateOf(trail, m_earlier);
                     })
                     .get();
    if (!state)
        return failure(storeText(m_trail, state.error()));
    return std::move(*state);
}

void Session::startService(State state, const World& world)
{
    m_station = std::make_unique<Station>(std::move(state), world.clock, *m_store, newTapId);
    m_model = std::make_unique<ui::StationModel>(*m_station, world.feedback, world.inputTime,
                                                 world.ticking);
    m_probes = std::make_unique<Thermometers>(*m_station, world.clock, world.probes);
}

/// The card that was asked for, unless it is the one in force (or to come) already; else the
/// default one, once.
void Session::adoptCard(const SessionSetting& setting)
{
    const Bench& bench = m_station->bench();
    const auto& latest = bench.next ? bench.next : bench.card;
    if (setting.card.empty()) {
        if (!latest)
            (void)m_station->note(AdoptCard{setting.defaultCard});
        return;
    }
    const auto card = cardFrom(setting.card);
    if (!latest || !card || card->hash() != latest->hash())
        (void)m_station->note(AdoptCard{setting.card});
}

/// Without its key the bench works all the same: what is thawing cannot wait for it.
void Session::readKey(const std::filesystem::path& file)
{
    if (file.empty())
        return;
    auto key = keyAt(file);
    if (key)
        m_key = std::make_shared<const SealKey>(std::move(*key));
    else
        m_sealTrouble = keyText(file, key.error());
}

bool Session::isToBeSealed() const
{
    const Bench& bench = m_station->bench();
    if (!m_key || !bench.shift || !bench.shift->closed)
        return false;
    return !bench.sealed || *bench.sealed < bench.shift->closed->seq;
}

/// Once the closing is durable: the store tells its head, and the seal is said like anything else.
void Session::sealWhenClosed()
{
    const RecordState& record = m_station->record();
    const bool isDurable = record.health == RecordState::Health::Recorded &&
                           record.recorded >= m_station->bench().lastSeq;
    if (m_isSealing || !isDurable || !isToBeSealed())
        return;
    m_isSealing = true;
    const auto seal = [this](const std::optional<Head>& head) {
        m_isSealing = false;
        if (head && isToBeSealed())
            (void)m_station->note(NoteSealed{sealOf(*head, *m_key)});
    };
    const auto tell = [this, seal](const std::optional<Head>& head) {
        QMetaObject::invokeMethod(
            this, [seal, head] { seal(head); }, Qt::QueuedConnection);
    };
    m_store->run([tell](store::TrailDb& trail) { tell(trail.head()); },
                 [tell](const StoreTrouble&) { tell(std::nullopt); });
}

void Session::noteCopy(const ui::CopyAnswer& answer)
{
    const Verification& chain = answer.check.chain;
    if (answer.trouble || !answer.check.isSound() || chain.badSeal)
        return;
    (void)m_station->note(NoteBackup{BackupMade{.place = answer.file.toStdString(),
                                                .count = chain.head.seq,
                                                .head = toHex(chain.head.hash)}});
}

void Session::noteStart(const SessionSetting& setting, const Head& head)
{
    (void)m_station->note(
        StartStation{BATHSIDE_VERSION, head.seq == 0 ? std::string() : toHex(head.hash),
                     setting.rehearsal, setting.clockSynchronised, setting.clockOffset});
    adoptCard(setting);
    m_station->planBy(m_days);
}

}  // namespace bathside::app
