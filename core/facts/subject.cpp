#include "core/facts/subject.h"

#include <charconv>

namespace bathside {

Subject subjectOf(AmpouleRef ampoule)
{
    return {SubjectKind::Ampoule, std::to_string(ampoule.pull) + "/" + std::to_string(ampoule.no)};
}

Subject subjectOfPull(int pull) { return {SubjectKind::Pull, std::to_string(pull)}; }
Subject subjectOf(const BagId& bag) { return {SubjectKind::Bag, bag.text}; }
Subject subjectOf(const LineId& line) { return {SubjectKind::Line, line.text}; }

AmpouleRef ampouleOf(const Subject& subject)
{
    AmpouleRef ref;
    const char* end = subject.id.data() + subject.id.size();
    const auto pull = std::from_chars(subject.id.data(), end, ref.pull);
    if (subject.kind != SubjectKind::Ampoule || pull.ec != std::errc{} || pull.ptr == end ||
        *pull.ptr != '/')
        return {};
    const auto no = std::from_chars(pull.ptr + 1, end, ref.no);
    return no.ec == std::errc{} && no.ptr == end ? ref : AmpouleRef{};
}

std::string toText(const Subject& subject)
{
    const std::string kind(nameOf(subject.kind));
    return subject.id.empty() ? kind : kind + ":" + subject.id;
}

Subject subjectFromText(std::string_view text)
{
    const auto colon = text.find(':');
    const auto kind = named<SubjectKind>(text.substr(0, colon));
    if (!kind)
        return {};
    const bool hasId = colon != std::string_view::npos;
    return {*kind, hasId ? std::string(text.substr(colon + 1)) : std::string()};
}

}  // namespace bathside
