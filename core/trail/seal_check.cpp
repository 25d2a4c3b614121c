#include "core/trail/seal_check.h"

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
        else if (!agrees(seal->count, seal->head))
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
    if (m_heads.empty() || seq < m_heads.front().seq)
        return true;  // not known here
    const auto at = static_cast<std::size_t>(seq - m_heads.front().seq);
    return at < m_heads.size() && m_heads[at].seq == seq && toHex(m_heads[at].hash) == head;
}

}  // namespace bathside
