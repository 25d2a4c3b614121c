#include "core/record/manifest.h"

#include <set>

#include <nlohmann/json.hpp>

#include "core/base/rfc3339.h"
#include "core/trail/canonical.h"

namespace bathside {
namespace {

using Json = nlohmann::json;

constexpr std::string_view kFormat = "bathside-export";
constexpr int kFormatVersion = 1;

Json jsonOf(const Head& head) { return {{"hash", toHex(head.hash)}, {"seq", head.seq}}; }

// Takes members out of an object; remembers the first that is not there or not of its kind. Members
// that nobody took are one too many.
class Members {
public:
    explicit Members(const Json& object) : m_object(object)
    {
        if (!object.is_object())
            blame("");
    }

    std::string text(const std::string& key)
    {
        const Json* value = member(key);
        return value && value->is_string() ? value->get<std::string>() : blamed<std::string>(key);
    }
    std::int64_t whole(const std::string& key)
    {
        const Json* value = member(key);
        return value && value->is_number_integer() ? value->get<std::int64_t>()
                                                   : blamed<std::int64_t>(key);
    }
    /// Empty where it is not there.
    std::string keyIfThere(const std::string& key)
    {
        return m_object.is_object() && m_object.contains(key) ? toHex(hash(key)) : std::string();
    }
    bool yesNo(const std::string& key)
    {
        const Json* value = member(key);
        return value && value->is_boolean() ? value->get<bool>() : blamed<bool>(key);
    }
    Hash hash(const std::string& key)
    {
        const auto hash = hashFromHex(text(key));
        return hash ? *hash : blamed<Hash>(key);
    }
    WallTime instant(const std::string& key)
    {
        const auto at = fromRfc3339(text(key));
        return at ? *at : blamed<WallTime>(key);
    }
    const Json& list(const std::string& key)
    {
        static const Json kNone = Json::array();
        const Json* value = member(key);
        if (value && value->is_array())
            return *value;
        blame(key);
        return kNone;
    }

    /// The object or list item `key`, read by `read`; its faults are this one's.
    template <typename Read>
    auto inside(const std::string& key, const Json& object, Read read)
    {
        Members members(object);
        auto value = read(members);
        if (const auto fault = members.fault())
            blame(fault->key.empty() ? key : key + "." + fault->key);
        return value;
    }
    const Json& object(const std::string& key)
    {
        static const Json kNone = Json::object();
        const Json* value = member(key);
        return value ? *value : kNone;
    }

    void blame(const std::string& key)
    {
        if (!m_fault)
            m_fault = ManifestFault{key};
    }

    [[nodiscard]] std::optional<ManifestFault> fault() const
    {
        if (m_fault || !m_object.is_object())
            return m_fault;
        for (const auto& [key, value] : m_object.items()) {
            if (!m_taken.contains(key))
                return ManifestFault{key};
        }
        return std::nullopt;
    }

private:
    const Json* member(const std::string& key)
    {
        m_taken.insert(key);
        return m_object.is_object() && m_object.contains(key) ? &m_object[key] : nullptr;
    }

    template <typename T>
    T blamed(const std::string& key)
    {
        blame(key);
        return T{};
    }

    const Json& m_object;
    std::set<std::string> m_taken;
    std::optional<ManifestFault> m_fault;
};

Head headFrom(Members& members)
{
    return {.seq = members.whole("seq"), .hash = members.hash("hash")};
}

SeqRange runFrom(Members& members)
{
    const SeqRange run{.first = members.whole("first"), .last = members.whole("last")};
    if (run.first < 1 || run.last < run.first)
        members.blame("last");
    return run;
}

Manifest::File fileFrom(Members& members)
{
    Manifest::File file{.name = members.text("name"),
                        .bytes = members.whole("bytes"),
                        .sha256 = members.hash("sha256")};
    // A name is joined to a folder by whoever checks the files.
    if (file.name.empty() || file.name.front() == '.' || file.name.find('/') != std::string::npos)
        members.blame("name");
    return file;
}

void readLists(Members& members, Manifest& manifest)
{
    for (const Json& run : members.list("runs")) {
        manifest.runs.push_back(members.inside("runs", run, runFrom));
        const std::size_t count = manifest.runs.size();
        if (count > 1 && manifest.runs[count - 1].first <= manifest.runs[count - 2].last)
            members.blame("runs.first");
    }
    for (const Json& file : members.list("files"))
        manifest.files.push_back(members.inside("files", file, fileFrom));
}

Manifest read(Members& members)
{
    if (members.text("format") != kFormat)
        members.blame("format");
    if (members.whole("format_version") != kFormatVersion)
        members.blame("format_version");
    Manifest manifest;
    manifest.version = members.text("version");
    manifest.station = members.text("station");
    manifest.rehearsal = members.yesNo("rehearsal");
    manifest.zone = members.text("zone");
    manifest.firstDay = members.text("first_day");
    manifest.lastDay = members.text("last_day");
    manifest.from = members.instant("from");
    manifest.to = members.instant("to");
    manifest.head = members.inside("head", members.object("head"), headFrom);
    manifest.last = members.inside("last", members.object("last"), headFrom);
    manifest.count = members.whole("count");
    manifest.key = members.keyIfThere("key");
    readLists(members, manifest);
    return manifest;
}

}  // namespace

std::string manifestText(const Manifest& manifest)
{
    Json json{{"format", kFormat},
              {"format_version", kFormatVersion},
              {"version", manifest.version},
              {"station", manifest.station},
              {"rehearsal", manifest.rehearsal},
              {"zone", manifest.zone},
              {"first_day", manifest.firstDay},
              {"last_day", manifest.lastDay},
              {"from", toRfc3339(manifest.from)},
              {"to", toRfc3339(manifest.to)},
              {"head", jsonOf(manifest.head)},
              {"last", jsonOf(manifest.last)},
              {"count", manifest.count},
              {"runs", Json::array()},
              {"files", Json::array()}};
    if (!manifest.key.empty())
        json["key"] = manifest.key;
    for (const SeqRange& run : manifest.runs)
        json["runs"].push_back({{"first", run.first}, {"last", run.last}});
    for (const Manifest::File& file : manifest.files)
        json["files"].push_back(
            {{"name", file.name}, {"bytes", file.bytes}, {"sha256", toHex(file.sha256)}});
    return canonicalised(json.dump(-1, ' ', false, Json::error_handler_t::replace)).value_or("") +
           "\n";
}

Result<Manifest, ManifestFault> manifestFrom(std::string_view text)
{
    const auto canonical = canonicalised(text);
    if (!canonical)
        return failure(ManifestFault{});
    const Json json = Json::parse(*canonical);
    Members members(json);
    Manifest manifest = read(members);
    if (const auto fault = members.fault())
        return failure(*fault);
    return manifest;
}

}  // namespace bathside
