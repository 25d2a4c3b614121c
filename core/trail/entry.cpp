#include "core/trail/entry.h"

#include "core/base/rfc3339.h"
#include "core/trail/boot_id.h"
#include "core/trail/json_text.h"

namespace bathside {
namespace {

void appendMember(std::string& out, std::string_view key, std::string_view text)
{
    out.append(key);
    appendJsonString(out, text);
}

void appendHash(std::string& out, std::string_view key, const Hash& hash)
{
    out.append(key).append(1, '"');
    appendHex(out, hash);
    out += '"';
}

void appendPerson(std::string& out, const Person& person)
{
    appendMember(out, R"(,"person":{"id":)", person.id.text);
    appendMember(out, R"(,"proof":)", nameOf(person.proof));
    out += '}';
}

void appendSpool(std::string& out, const SpoolOrigin& spool)
{
    appendHash(out, R"(,"spool":{"hash":)", spool.hash);
    out += R"(,"seq":)";
    appendNumber(out, spool.seq);
    out += '}';
}

}  // namespace

void appendCanonicalText(std::string& out, const Entry& entry) { appendText(out, entry, {}); }

void appendText(std::string& out, const Entry& entry, LineExtras extras)
{
    out += R"({"at":")";
    appendRfc3339(out, entry.at);
    out += R"(","boot_id":")";
    appendText(out, entry.bootId);
    out += R"(","boot_us":)";
    appendNumber(out, entry.boot.count());
    if (entry.byReceipt)
        out += R"(,"by_receipt":true)";
    if (!entry.card.empty())
        appendMember(out, R"(,"card":)", entry.card.text);
    if (extras.hash)
        appendHash(out, R"(,"hash":)", *extras.hash);
    appendMember(out, R"(,"kind":)", entry.kind);
    out.append(R"(,"payload":)").append(entry.payload);
    if (entry.person)
        appendPerson(out, *entry.person);
    if (!entry.place.empty())
        appendMember(out, R"(,"place":)", entry.place.text);
    if (extras.previous)
        appendHash(out, R"(,"previous":)", *extras.previous);
    out += R"(,"seq":)";
    appendNumber(out, entry.seq);
    if (entry.spool)
        appendSpool(out, *entry.spool);
    appendMember(out, R"(,"station":)", entry.station.text);
    appendMember(out, R"(,"tap":)", entry.tap.text);
    out += '}';
}

std::string canonicalText(const Entry& entry)
{
    std::string text;
    text.reserve(512);
    appendCanonicalText(text, entry);
    return text;
}

Hash chained(const Hash& previous, std::string_view text)
{
    const std::string_view before(reinterpret_cast<const char*>(previous.data()), previous.size());
    return sha256({before, text});
}

}  // namespace bathside
