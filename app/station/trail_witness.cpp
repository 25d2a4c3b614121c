// The record's answers about day sheets: what their pages are, and whether one that was printed
// still agrees.

#include <QThreadPool>

#include "app/station/trail_record.h"
#include "app/station/trail_tell.h"
#include "core/trail/store/earlier_days.h"
#include "ui/print/day_sheet_pages.h"
#include "ui/print/press.h"

namespace bathside::app {
namespace {

using Found = ui::WitnessAnswer::Found;

Result<Found, StoreTrouble> found(const store::TrailDb& trail, const SealCode& code)
{
    const Head& before = trail.origin().after;
    if (code.count < before.seq)
        return Found::Before;
    if (code.count > trail.head().seq)
        return Found::NotReached;
    std::string hash = toHex(before.hash);
    const auto read = trail.read(code.count, code.count, [&](const Entry& entry) {
        hash = toHex(entry.hash);
        return true;
    });
    if (!read)
        return failure(read.error());
    return hash == code.head ? Found::Agrees : Found::Differs;
}

/// What the sound part of an earlier file has there.
Found foundIn(const std::vector<store::SoundPart>& parts, const SealCode& code)
{
    const auto entry = store::entryIn(parts, code.count);
    if (!entry)
        return Found::Before;
    return toHex(entry->hash) == code.head ? Found::Agrees : Found::Differs;
}

}  // namespace

Result<ui::SetPages, ui::PrintFault> TrailRecord::drawn(const DaySheet& sheet) const
{
    const ui::Preference set = m_preferences ? m_preferences->now() : ui::Preference{};
    return ui::setPages(ui::pagesOf(sheet, set.print.sheetPaper, set.language.toStdString()));
}

void TrailRecord::witness(const SealCode& code)
{
    const QPointer<TrailRecord> guard(this);
    const auto answer = [guard, code](Found what, const std::optional<StoreTrouble>& trouble) {
        tell(guard, [=](TrailRecord& record) { emit record.witnessed({code, what, trouble}); });
    };
    const auto& parts = m_session.earlier();
    if (!parts.empty() && code.count <= parts.back().last)
        return QThreadPool::globalInstance()->start(
            [answer, code, parts] { answer(foundIn(parts, code), std::nullopt); });
    m_session.store().run(
        [answer, code](store::TrailDb& trail) {
            const auto what = found(trail, code);
            answer(what.value_or(Found::Differs),
                   what ? std::nullopt : std::optional(what.error()));
        },
        [answer](const StoreTrouble& trouble) { answer(Found::Differs, trouble); });
}

}  // namespace bathside::app
