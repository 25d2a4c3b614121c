// The verbs of people, signatures and the review.

#include "core/replay/verbs.h"

namespace bathside {
namespace {

std::string textOr(JsonObject& entry, std::string_view key)
{
    return entry.has(key) ? entry.text(key, kLongText) : std::string();
}

PersonId personAt(JsonObject& entry, std::string_view key) { return {entry.text(key, kShortText)}; }

Statement person(JsonObject& entry)
{
    ListPerson list{.as = {.person = personAt(entry, "person"),
                           .name = entry.text("name", kLongText),
                           .role = entry.word<Role>("role"),
                           .departed = entry.has("left") && entry.flag("left")},
                    .by = {}};
    if (entry.has("by"))
        list.by = personAt(entry, "by");
    return Intent(list);
}

Statement pin(JsonObject& entry)
{
    SetPin set{.person = personAt(entry, "person")};
    if (entry.has("by"))
        set.by = personAt(entry, "by");
    return Intent(set);
}

std::vector<std::string> idsOf(JsonObject& entry)
{
    constexpr std::size_t kMost = 99;
    return entry.has("of") ? entry.texts("of", kMost, kShortText) : std::vector<std::string>();
}

Statement sign(JsonObject& entry)
{
    return SignEntry{.sign = {.person = personAt(entry, "person"),
                              .meaning = entry.word<Meaning>("meaning"),
                              .of = {},
                              .words = textOr(entry, "words")},
                     .of = idsOf(entry)};
}

/// A deviation by its limit and subject, of this shift or carried; the last where there are
/// several.
Statement review(JsonObject& entry)
{
    const std::string subject = entry.text("subject", kShortText);
    if (toText(subjectFromText(subject)) != subject)
        entry.refuse("subject", "whom it is about, as ampoule:1/2, bag:B1, line:A or bath");
    return ReviewEntry{.limit = entry.word<LimitName>("limit"),
                       .subject = subjectFromText(subject),
                       .review = {.by = personAt(entry, "by"),
                                  .as = {.of = 0,
                                         .cause = textOr(entry, "cause"),
                                         .words = textOr(entry, "words"),
                                         .action = textOr(entry, "action")}}};
}

Statement comment(JsonObject& entry)
{
    return CommentEntry{
        .of = entry.text("of", kShortText),
        .comment = {.by = personAt(entry, "by"), .as = {.of = 0, .text = textOr(entry, "text")}}};
}

}  // namespace

void addPeopleVerbs(Verbs& verbs)
{
    using J = JsonObject&;
    verbs["person"] = person;
    verbs["pin"] = pin;
    verbs["pin-refused"] = [](J e) { return Intent(RefusePin{personAt(e, "person")}); };
    verbs["sign"] = sign;
    verbs["review"] = review;
    verbs["comment"] = comment;
    verbs["adopt-card"] = [](J e) { return Intent(AdoptCard{e.document("card")}); };
    verbs["approve-card"] = [](J e) {
        return ApproveEntry{.by = personAt(e, "by"), .hash = textOr(e, "hash")};
    };
}

}  // namespace bathside
