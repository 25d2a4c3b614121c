#include "core/card/repeated_key.h"

#include <functional>
#include <set>
#include <vector>

#include <nlohmann/json.hpp>

namespace bathside {
namespace {

using nlohmann::json;

// Follows the parser through a document and remembers where a key stands a second time.
class RepeatFinder {
public:
    bool operator()(int /*depth*/, json::parse_event_t event, const json& parsed)
    {
        using enum json::parse_event_t;
        if (event == key)
            meet(parsed.get_ref<const std::string&>());
        else if (event == object_start || event == array_start)
            m_open.push_back({event == array_start, 0, {}, {}});
        else if (event == object_end || event == array_end)
            m_open.pop_back();
        if ((event == value || event == object_end || event == array_end) && !m_open.empty())
            ++m_open.back().count;
        return true;
    }

    [[nodiscard]] const std::string& path() const { return m_repeated; }

private:
    struct Frame {
        bool isList = false;
        std::size_t count = 0;
        std::string key;
        std::set<std::string> keys;
    };

    void meet(const std::string& key)
    {
        m_open.back().key = key;
        if (!m_open.back().keys.insert(key).second && m_repeated.empty())
            m_repeated = here();
    }

    [[nodiscard]] std::string here() const
    {
        std::string path;
        for (const Frame& frame : m_open)
            path += frame.isList   ? "[" + std::to_string(frame.count) + "]"
                    : path.empty() ? frame.key
                                   : "." + frame.key;
        return path;
    }

    std::vector<Frame> m_open;
    std::string m_repeated;
};

}  // namespace

std::string pathOfRepeatedKey(std::string_view document)
{
    RepeatFinder finder;
    const json whole = json::parse(document, std::ref(finder), false);
    return finder.path();
}

}  // namespace bathside
