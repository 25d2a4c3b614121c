#pragma once

// The session's trail as whoever writes an export reads it, on a thread of its own: through the
// store's thread in short slices, so that taps are stored between them and no more than a slice is
// held, however many years are read. Read-only.

#include <atomic>
#include <memory>
#include <vector>

#include "core/trail/store/store_thread.h"

namespace bathside::app {

class SlicedTrail final : public TrailStore {
public:
    using Stop = std::shared_ptr<const std::atomic<bool>>;

    /// `earlier`: entries that stand in earlier files, in order, all before the store's. Once
    /// `stop` is set, nothing more is read (`InUse`).
    SlicedTrail(store::StoreThread& store, Head head, std::vector<Entry> earlier, Stop stop);

    [[nodiscard]] Head head() const override { return m_head; }
    [[nodiscard]] Result<void, StoreTrouble> append(std::span<const Entry> entries) override;
    [[nodiscard]] Result<void, StoreTrouble> read(
        Seq from, Seq to, const std::function<bool(const Entry&)>& take) const override;

private:
    [[nodiscard]] Result<std::vector<Entry>, StoreTrouble> slice(SeqRange range) const;

    store::StoreThread& m_store;
    Head m_head;
    std::vector<Entry> m_earlier;
    Stop m_stop;
};

}  // namespace bathside::app
