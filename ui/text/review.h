#pragma once

// Words of the review: causes, remedies, what becomes of a bag, why a PIN is none.
//
// The trail holds the lists' own names; what is none of them stands as somebody wrote it.

#include <QString>
#include <string>

#include "core/people/pin.h"
#include "core/record/cases.h"
#include "core/record/course.h"
#include "core/review/causes.h"

namespace bathside::ui {

[[nodiscard]] QString wordOf(Cause cause);
[[nodiscard]] QString wordOf(Remedy remedy);
[[nodiscard]] QString wordOf(Disposition disposition);
[[nodiscard]] QString wordOf(Course::What what);
/// As the trail has them, in the language of the screen.
[[nodiscard]] QString causeText(const std::string& cause);
/// In that card's own words, where it lists the cause.
[[nodiscard]] QString causeText(const std::string& cause, const Card* card,
                                const std::string& language);
[[nodiscard]] QString actionText(const std::string& action);
/// "use with note: line A only"; what is no disposition stands as it is.
[[nodiscard]] QString dispositionText(const std::string& disposition);

/// What a signature says, as a whole sentence.
[[nodiscard]] QString meaningText(Meaning meaning);
[[nodiscard]] QString pinFaultText(PinFault fault);
/// "LS, Lena Sanz"; the initials alone where nobody is listed so.
[[nodiscard]] QString personText(const People& people, const PersonId& person);

/// "thaw", "bag B2 on hold".
[[nodiscard]] QString titleOf(const ReviewCase& one);
/// Of one from a shift before, whose names are used again: "2026-03-04", "entry 37"; both.
[[nodiscard]] QString caseDay(const ReviewCase& one, const std::string& zone);
[[nodiscard]] QString entryText(const ReviewCase& one);
[[nodiscard]] QString earlierText(const ReviewCase& one, const std::string& zone);
/// The title, the bag where it says more, and when, where it is from a shift before.
[[nodiscard]] QString fullTitleOf(const ReviewCase& one, const std::string& zone);
/// What was done with a bag that is down.
[[nodiscard]] QString wasWordOf(Disposition disposition);
/// A value on the axis of a course, in its unit: "10 s", "29.5 °C", "1,000 birds".
[[nodiscard]] QString courseText(CourseUnit unit, std::int64_t value);

}  // namespace bathside::ui
