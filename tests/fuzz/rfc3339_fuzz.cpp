// Any bytes are an instant or nothing; an instant of the years that four digits name reads back.

#include <cstdlib>
#include <string_view>

#include "core/base/rfc3339.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace bathside;
    using namespace std::chrono;
    const auto at = fromRfc3339({reinterpret_cast<const char*>(data), size});
    if (!at)
        return 0;
    const year_month_day date(floor<days>(*at));
    const bool writable =
        date.year() >= year(0) && date.year() <= year(9999);  // an offset may lead out
    if (writable && fromRfc3339(toRfc3339(*at)) != at)
        std::abort();
    return 0;
}
