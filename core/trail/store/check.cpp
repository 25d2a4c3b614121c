#include "core/trail/store/check.h"

#include <limits>

namespace bathside::store {
namespace {

FlawKind kindOf(std::string_view column)
{
    return column == "at" ? FlawKind::BadTime : FlawKind::Unreadable;
}

Result<void, StoreTrouble> follow(const TrailDb& trail, Verifier& verifier)
{
    constexpr Seq kFirst = std::numeric_limits<Seq>::min();
    constexpr Seq kLast = std::numeric_limits<Seq>::max();
    return readRows(trail.connection(), kFirst, kLast, [&](const Row& row) {
        if (row.entry)
            verifier.take(*row.entry);
        else
            verifier.takeUnreadable(row.seq, kindOf(row.column), std::string(row.column));
        return true;
    });
}

Expectation expectation(const TrailDb& trail, std::vector<Head> witnesses)
{
    return {.before = trail.origin().after,
            .runs = {},
            .witnesses = std::move(witnesses),
            .station = {}};
}

}  // namespace

Result<Verification, StoreTrouble> verifyChain(const TrailDb& trail, std::vector<Head> witnesses)
{
    Verifier verifier(expectation(trail, std::move(witnesses)));
    if (const auto done = follow(trail, verifier); !done)
        return failure(done.error());
    return verifier.finish();
}

Head soundHead(const TrailDb& trail)
{
    Verifier verifier(expectation(trail, {}));
    std::ignore = follow(trail, verifier);  // where pages cannot be read, what came before counts
    return verifier.finish().head;
}

Soundness check(const TrailDb& trail, std::vector<Head> witnesses, std::optional<std::string> key)
{
    Soundness found;
    const auto pages = trail.connection().value("PRAGMA quick_check(1)");
    if (!pages)
        found.trouble = pages.error();
    else if (pages->toString() != QStringLiteral("ok"))
        found.pages = pages->toString().toStdString();
    Expectation expected = expectation(trail, std::move(witnesses));
    expected.key = std::move(key);
    Verifier verifier(std::move(expected));
    if (const auto done = follow(trail, verifier); !done)
        found.trouble = done.error();
    found.chain = verifier.finish();
    const auto agree = projectionsAgree(trail.connection());
    if (agree)
        found.projectionsAgree = *agree;
    return found;
}

}  // namespace bathside::store
