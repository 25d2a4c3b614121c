#pragma once

// Entries read out of the trail, as a trail of their own: what an export is written from on another
// thread, so that a slow stick never holds the store back. Read-only.

#include <algorithm>
#include <vector>

#include "core/trail/ports.h"

namespace bathside {

class CopiedDay final : public TrailStore {
public:
    CopiedDay(Head head, std::vector<Entry> entries) : m_head(head), m_entries(std::move(entries))
    {
    }

    [[nodiscard]] Head head() const override { return m_head; }
    [[nodiscard]] Result<void, StoreTrouble> append(std::span<const Entry>) override
    {
        return failure(StoreTrouble{StoreFault::ReadOnly, 0});
    }
    [[nodiscard]] Result<void, StoreTrouble> read(
        Seq from, Seq to, const std::function<bool(const Entry&)>& take) const override
    {
        auto at = std::ranges::lower_bound(m_entries, from, {}, &Entry::seq);
        for (; at != m_entries.end() && at->seq <= to && take(*at); ++at) {
        }
        return {};
    }

private:
    Head m_head;  // of the whole trail
    std::vector<Entry> m_entries;
};

}  // namespace bathside
