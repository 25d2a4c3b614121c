#include "app/station/damage.h"

#include <QCoreApplication>
#include <QLocale>

#include "app/station/session.h"
#include "core/trail/store/check.h"
#include "core/trail/store/direct_recorder.h"
#include "core/trail/store/disk_files.h"
#include "core/trail/store/restore.h"
#include "ui/text/faults.h"
#include "ui/text/numbers.h"

namespace bathside::app {
namespace {

struct DamageText {
    Q_DECLARE_TR_FUNCTIONS(Damage)
};

QString nameOf(const std::filesystem::path& file)
{
    return QString::fromStdString(file.filename().string());
}

Damage nothingDone(const std::filesystem::path& file, const StoreTrouble& trouble)
{
    return {DamageText::tr("The record in %1 is damaged, and no second file could be begun. %2 "
                           "Nothing was changed: call whoever looks after this computer, or "
                           "restore a copy.",
                           "a file; a sentence")
                .arg(nameOf(file), ui::faultText(trouble)),
            false};
}

Damage begunAnew(const std::filesystem::path& file, const std::filesystem::path& next)
{
    return {DamageText::tr("Nothing of the record in %1 can be read. It is kept as it is, and a "
                           "record begins anew in %2. Tell the shift lead, who may have a copy "
                           "restored; then start again.",
                           "a file; a file")
                .arg(nameOf(file), nameOf(next)),
            true};
}

Damage done(const std::filesystem::path& file, const std::filesystem::path& next, const Head& head)
{
    return {DamageText::tr("The record in %1 is damaged after entry %2. It is kept as it is, and "
                           "the record goes on in %3. Tell the shift lead, then start again.",
                           "a file; a number; a file")
                .arg(nameOf(file), ui::countText(head.seq, QLocale()), nameOf(next)),
            true};
}

/// Without a file whose making was broken off.
std::vector<std::filesystem::path> partsBegun(const std::filesystem::path& trail)
{
    auto parts = store::partsOf(trail);
    if (parts.size() > 1 && store::lacksFirstEntry(parts.back()))
        parts.pop_back();
    return parts;
}

Result<void, StoreTrouble> begin(const std::filesystem::path& next, State state, const Head& after,
                                 const std::filesystem::path& damaged, const Clock& clock,
                                 const StationId& station)
{
    const std::string name = damaged.filename().string();
    store::DiskFiles files(
        {.trail = next,
         .spoolFolders = {},
         .spoolsOf = {},
         .origin = {.role = store::Role::Trail, .after = after, .continues = name}});
    store::DirectRecorder recorder(files, station);
    if (const auto started = recorder.start(); !started)
        return started;
    Station service(std::move(state), clock, recorder, newTapId);
    (void)service.note(
        NoteContinued{TrailContinued{.count = after.seq, .head = toHex(after.hash), .file = name}});
    if (recorder.state().health != RecordState::Health::Recorded)
        return failure(recorder.state().trouble);
    return {};
}

}  // namespace

std::optional<Damage> goOnAfterDamage(const std::filesystem::path& trail, const Clock& clock,
                                      const StationId& station)
{
    const auto lock = TrailLock::take(trail);
    if (!lock)
        return std::nullopt;
    const auto parts = partsBegun(trail);
    const auto& damaged = parts.back();
    const bool isBrokenOff = parts.size() < store::partsOf(trail).size();
    const auto next = isBrokenOff ? store::partsOf(trail).back() : store::nextPart(trail);
    const bool nothingIsLeft = parts.size() == 1 && store::isDestroyed(damaged);
    if (!isBrokenOff && !nothingIsLeft && !store::damageOf(damaged))
        return std::nullopt;
    if (nothingIsLeft) {
        const auto begun = begin(next, {}, {}, damaged, clock, station);
        return begun ? begunAnew(damaged, next) : nothingDone(damaged, begun.error());
    }
    const auto file = store::TrailDb::open(damaged, store::Mode::Salvage);
    if (!file)
        return nothingDone(damaged, file.error().trouble);
    const Head head = store::soundHead(**file);
    auto sound = store::soundParts(parts, (*file)->origin());
    sound.push_back({damaged, head.seq});
    auto state = store::stateOf(sound);
    if (!state)
        return nothingDone(damaged, state.error());
    if (const auto begun = begin(next, std::move(*state), head, damaged, clock, station); !begun)
        return nothingDone(damaged, begun.error());
    return done(damaged, next, head);
}

}  // namespace bathside::app
