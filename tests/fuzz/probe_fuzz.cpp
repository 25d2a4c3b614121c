// Any bytes are a probe or a fault with words; what the trail would keep of a probe reads back and
// judges alike.

#include <cmath>
#include <cstdlib>
#include <string_view>

#include "core/bath/probe.h"
#include "core/bath/reading_case.h"
#include "core/trail/whole_json.h"

namespace {

using namespace bathside;

void check(const Probe& probe)
{
    const auto kept = documentOf(probe);
    const auto again = probeFrom(kept);
    if (!isPayload(kept) || !again || documentOf(*again) != kept)
        std::abort();
    const Judged result = judged(probe, {28, 1, 1}, 28.3, {}, 0.01);
    if (!std::isfinite(result.corrected) || !(result.expanded >= 0) || !(result.conformity >= 0) ||
        !(result.conformity <= 1))
        std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    if (const auto probe = probeFrom(text))
        check(*probe);
    else if (probe.error().found.empty() || probe.error().expected.empty())
        std::abort();
    if (const auto reading = readingCaseFrom(text))
        check(reading->probe);
    return 0;
}
