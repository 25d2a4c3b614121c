// Any bytes are one of the checks' documents or a fault with words; whatever is read can be
// answered and written. A thaw is read but not run: the model takes milliseconds.

#include <cstdlib>
#include <string>
#include <string_view>

#include "core/bath/heat_case.h"
#include "core/bath/learned.h"
#include "core/bath/resistance_case.h"
#include "core/bath/thaw_case.h"
#include "core/checks/chart_case.h"
#include "core/checks/coverage_case.h"
#include "core/checks/flow_case.h"
#include "core/checks/injector_case.h"
#include "core/checks/live_cells_case.h"
#include "core/checks/room_air_case.h"
#include "core/checks/vessel_case.h"

namespace {

using namespace bathside;

void check(const auto& read, const auto& answer)
{
    if (!read && (read.error().found.empty() || read.error().expected.empty()))
        std::abort();
    if (read && !std::string(answer(*read)).ends_with('}'))
        std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto answer = [](const auto& one) { return toJson(answered(one)); };
    const auto write = [](const auto& one) { return toJson(one); };
    check(heatCaseFrom(text), answer);
    check(thawCaseFrom(text), [](const ThawCase&) { return "{}"; });
    check(bathLearnedFrom(text), [](const BathLearned& one) { return documentOf(one); });
    check(resistanceCaseFrom(text),
          [](const ResistanceCase& one) { return toJson(celsiusOf(one.element, one.ohm)); });
    check(chartCaseFrom(text), answer);
    check(coverageCaseFrom(text), answer);
    check(flowCaseFrom(text), answer);
    check(injectorCaseFrom(text), write);
    check(liveCellsCaseFrom(text), write);
    check(roomAirCaseFrom(text), answer);
    check(vesselCaseFrom(text), answer);
    return 0;
}
