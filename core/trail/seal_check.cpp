#include "core/trail/seal_check.h"

#include <algorithm>

#include "core/facts/codec.h"
#include "core/trail/seal.h"

namespace bathside {

std::optional<SealFlaw> SealCheck::take(const Entry& entry)
{
    std::optional<SealFlaw> flaw;
    if (entry.kind == DaySealed::kKind) {
        const auto fact = factFrom(entry.kind, entry.payload);
        const auto* seal = fact ? std::get_if<DaySealed>(&*fact) : nullptr;
        ++m_seals;
        if (!seal || !isGenuine(*seal))
            flaw = SealFlaw::NotGenuine;
        else if (seal->count >= entry.seq || !agrees(seal->count, seal->head))
            flaw = SealFlaw::OtherHead;
        else if (m_key && *m_key != seal->key)
            flaw = SealFlaw::OtherKey;
        else
            m_key = seal->key;
    }
    m_heads.push_back({entry.seq, entry.hash});
    if (m_heads.size() > kRemembered)
        m_heads.pop_front();
    return flaw;
}

bool SealCheck::agrees(Seq seq, const std::string& head) const
{
    const auto known = std::ranges::lower_bound(m_heads, seq, {}, &Head::seq);
    if (known == m_heads.end() || known->seq != seq)
        return true;  // before what is remembered, or in a gap between the runs of an export
    return toHex(known->hash) == head;
}

}  // namespace bathside
