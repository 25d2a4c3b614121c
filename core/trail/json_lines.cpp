#include "core/trail/json_lines.h"

#include <charconv>

#include <nlohmann/json.hpp>

#include "core/base/rfc3339.h"
#include "core/trail/boot_id.h"
#include "core/trail/canonical.h"
#include "core/trail/whole_json.h"

namespace bathside {
namespace {

// Reads an entry's members in the order of its canonical text; stops at the first that is not
// there.
class Reader {
public:
    explicit Reader(std::string_view text) : m_rest(text) {}

    bool line(JsonLine& line)
    {
        Entry& entry = line.entry;
        return at(entry) && boot(entry) && receipt(entry) &&
               hash("hash", R"(,"hash":)", entry.hash) &&
               nonEmpty("kind", R"(,"kind":)", entry.kind) && payload(entry) && person(entry) &&
               optionalText("place", R"(,"place":)", entry.place.text) && previous(line) &&
               whole("seq", R"(,"seq":)", entry.seq) && spool(entry) &&
               text("station", R"(,"station":)", entry.station.text) &&
               text("tap", R"(,"tap":)", entry.tap.text) && end();
    }

    [[nodiscard]] std::string_view key() const { return m_key; }

private:
    bool take(std::string_view literal)
    {
        if (!m_rest.starts_with(literal))
            return false;
        m_rest.remove_prefix(literal.size());
        return true;
    }

    bool quoted(std::string_view& found)
    {
        found = m_rest.substr(0, jsonStringLength(m_rest));
        m_rest.remove_prefix(found.size());
        return !found.empty();
    }

    bool text(std::string_view key, std::string_view literal, std::string& value)
    {
        m_key = key;
        std::string_view found;
        if (!take(literal) || !quoted(found))
            return false;
        value = unquoted(found);
        return true;
    }

    bool nonEmpty(std::string_view key, std::string_view literal, std::string& value)
    {
        return text(key, literal, value) && !value.empty();
    }

    bool optionalText(std::string_view key, std::string_view literal, std::string& value)
    {
        return !m_rest.starts_with(literal) || nonEmpty(key, literal, value);
    }

    bool whole(std::string_view key, std::string_view literal, std::int64_t& value)
    {
        m_key = key;
        if (!take(literal))
            return false;
        const std::string_view found = m_rest.substr(0, wholeLength(m_rest));
        const auto read = std::from_chars(found.data(), found.data() + found.size(), value);
        m_rest.remove_prefix(found.size());
        return !found.empty() && read.ec == std::errc{} && read.ptr == found.data() + found.size();
    }

    bool hash(std::string_view key, std::string_view literal, Hash& value)
    {
        m_key = key;
        std::string_view found;
        if (!take(literal) || !quoted(found))
            return false;
        const auto read = hashFromHex(found.substr(1, found.size() - 2));
        value = read.value_or(Hash{});
        return read.has_value();
    }

    bool at(Entry& entry)
    {
        m_key = "at";
        std::string_view found;
        if (!take(R"({"at":)") || !quoted(found))
            return false;
        found = found.substr(1, found.size() - 2);
        const auto read = fromRfc3339(found);
        entry.at = read.value_or(WallTime{});
        return read && toRfc3339(*read) == found;
    }

    bool boot(Entry& entry)
    {
        m_key = "boot_id";
        std::string_view found;
        if (!take(R"(,"boot_id":)") || !quoted(found))
            return false;
        const auto id = bootIdFromText(found.substr(1, found.size() - 2));
        entry.bootId = id.value_or(BootId{});
        std::int64_t us = 0;
        const bool read = id && whole("boot_us", R"(,"boot_us":)", us);
        entry.boot = Micros(us);
        return read;
    }

    bool receipt(Entry& entry)
    {
        entry.byReceipt = take(R"(,"by_receipt":true)");
        return optionalText("card", R"(,"card":)", entry.card.text);
    }

    bool payload(Entry& entry)
    {
        m_key = "payload";
        if (!take(R"(,"payload":)") || !m_rest.starts_with('{'))
            return false;
        entry.payload = m_rest.substr(0, wholeLength(m_rest));
        m_rest.remove_prefix(entry.payload.size());
        return !entry.payload.empty();
    }

    bool person(Entry& entry)
    {
        constexpr std::string_view kLiteral = R"(,"person":{"id":)";
        if (!m_rest.starts_with(kLiteral))
            return true;
        Person& person = entry.person.emplace();
        std::string proof;
        if (!text("person.id", kLiteral, person.id.text) ||
            !text("person.proof", R"(,"proof":)", proof))
            return false;
        const auto found = named<Proof>(proof);
        person.proof = found.value_or(Proof::Claimed);
        return found && take("}");
    }

    bool previous(JsonLine& line)
    {
        constexpr std::string_view kLiteral = R"(,"previous":)";
        return !m_rest.starts_with(kLiteral) || hash("previous", kLiteral, line.previous.emplace());
    }

    bool spool(Entry& entry)
    {
        constexpr std::string_view kLiteral = R"(,"spool":{"hash":)";
        if (!m_rest.starts_with(kLiteral))
            return true;
        SpoolOrigin& origin = entry.spool.emplace();
        return hash("spool.hash", kLiteral, origin.hash) &&
               whole("spool.seq", R"(,"seq":)", origin.seq) && take("}");
    }

    bool end()
    {
        m_key = "";
        return take("}") && m_rest.empty();
    }

    std::string_view m_rest;
    std::string_view m_key;
};

Seq claimedSeq(std::string_view json)
{
    const auto object = nlohmann::json::parse(json);
    const bool hasSeq =
        object.is_object() && object.contains("seq") && object["seq"].is_number_integer();
    return hasSeq ? object["seq"].get<Seq>() : 0;
}

// What a line that was not read is: only here, off the usual path, is it worth a second look.
LineFault faultOf(std::string_view text, std::string_view key)
{
    const auto canonical = canonicalised(text);
    if (!canonical)
        return {LineFault::Kind::NotJson, 0, ""};
    if (*canonical != text) {
        JsonLine again;
        Reader reader(*canonical);
        if (reader.line(again))
            return {LineFault::Kind::NotCanonical, again.entry.seq, ""};
        return faultOf(*canonical, reader.key());
    }
    const bool badTime = key == "at" && text.starts_with(R"({"at":")");
    return {badTime ? LineFault::Kind::BadTime : LineFault::Kind::NotAnEntry, claimedSeq(text),
            std::string(key)};
}

}  // namespace

std::string toLine(const JsonLine& line)
{
    std::string text;
    text.reserve(640);
    appendText(text, line.entry, {&line.entry.hash, line.previous ? &*line.previous : nullptr});
    return text;
}

Result<JsonLine, LineFault> lineFrom(std::string_view text)
{
    JsonLine line;
    Reader reader(text);
    if (reader.line(line))
        return line;
    return failure(faultOf(text, reader.key()));
}

}  // namespace bathside
