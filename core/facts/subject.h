#pragma once

// Whom or what a limit, an alarm or a question is about: "ampoule 3/2", "bag B4", "line A", "bath".

#include <string>
#include <string_view>

#include "core/base/ids.h"
#include "core/facts/words.h"

namespace bathside {

struct Subject {
    SubjectKind kind = SubjectKind::Bench;
    std::string id;  // empty where there is only one: the bath, the bench, the station

    friend auto operator<=>(const Subject&, const Subject&) = default;
};

[[nodiscard]] Subject subjectOf(AmpouleRef ampoule);  // id "pull/no"
[[nodiscard]] Subject subjectOfPull(int pull);
[[nodiscard]] Subject subjectOf(const BagId& bag);
[[nodiscard]] Subject subjectOf(const LineId& line);

/// The ampoule a subject of that kind names; {0, 0} for any other subject.
[[nodiscard]] AmpouleRef ampouleOf(const Subject& subject);

/// "kind:id", or "kind" alone; `fromText` of anything else is the bench.
[[nodiscard]] std::string toText(const Subject& subject);
[[nodiscard]] Subject subjectFromText(std::string_view text);

}  // namespace bathside
