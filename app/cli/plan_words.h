#pragma once

// The plan in English sentences, for people at the command line.

#include <string>

#include "core/plan/plan.h"
#include "core/plan/plan_json.h"

namespace bathside::cli {

[[nodiscard]] std::string sentenceOf(const plan::DayInput& input, const plan::Reason& reason);
[[nodiscard]] std::string sentenceOf(const plan::DayInput& input, const plan::Warning& warning);

/// `input` must outlive them.
[[nodiscard]] plan::PlanWords englishWords(const plan::DayInput& input);

/// Lines, bags, bench and totals, one a line.
[[nodiscard]] std::string forPeople(const plan::DayInput& input, const plan::Plan& plan);

}  // namespace bathside::cli
