// Any bytes are a day or a fault with words; any day has a plan that keeps to it, or reasons.

#include <algorithm>
#include <cstdlib>
#include <string_view>

#include "core/plan/plan.h"
#include "core/plan/read_input.h"

namespace {

using namespace bathside::plan;

bool isSmall(const DayInput& input)
{
    return std::ranges::all_of(input.lines, [](const Line& line) { return line.birds <= 20'000; });
}

bool isSound(const Line& line, const bathside::Result<LinePlan, std::vector<Reason>>& planned)
{
    if (!planned)
        return !planned.error().empty();
    Count birds = line.birdsDone;
    for (const PlannedBag& bag : planned->bags)
        birds += bag.turn.birds;
    return birds >= line.birds;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const auto input = dayInputFrom({reinterpret_cast<const char*>(data), size});
    if (!input) {
        if (input.error().found.empty() || input.error().expected.empty())
            std::abort();
        return 0;
    }
    if (!isSmall(*input))
        return 0;
    const Plan plan = planDay(*input, Effort(300));
    for (std::size_t line = 0; line < plan.lines.size(); ++line)
        if (!isSound(input->lines[line], plan.lines[line]))
            std::abort();
    return 0;
}
