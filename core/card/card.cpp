#include "core/card/card.h"

#include <utility>

namespace bathside {

const std::string& Words::in(const std::string& language) const
{
    static const std::string kNone;
    auto found = byLanguage.find(language);
    if (found == byLanguage.end())
        found = byLanguage.find("en");
    return found == byLanguage.end() ? kNone : found->second;
}

Card::Card(Content content, std::string document, CardHash hash)
    : m_content(std::move(content)), m_document(std::move(document)), m_hash(std::move(hash))
{
}

const Limit& Card::limit(LimitName name) const
{
    return m_content.limits.at(static_cast<std::size_t>(name));
}

const Thresholds<Millis>& Card::timesFor(LimitName name, const ComponentId& component) const
{
    for (const Component& part : m_content.recipe) {
        const auto& own = name == LimitName::Exposure ? part.exposure : part.thaw;
        const bool hasOwn = name == LimitName::Exposure || name == LimitName::Thaw;
        if (hasOwn && part.id == component && own)
            return *own;
    }
    return limit(name).time;
}

}  // namespace bathside
