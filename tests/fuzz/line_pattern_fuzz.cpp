// Any pattern and any line, one after the other with a line break between, are a temperature that a
// thermometer can show, or a fault; the number found stands in the line.

#include <cmath>
#include <cstdlib>
#include <string_view>

#include "core/bath/line_pattern.h"

namespace {

using namespace bathside;

void check(std::string_view pattern, DecimalSign decimal, std::string_view line)
{
    const auto read = LinePattern::from(pattern, decimal);
    if (!read)
        return;
    const auto number = read->numberIn(line);
    if (number && (!std::isfinite(*number) || line.find_first_of("0123456789") == line.npos))
        std::abort();
    for (const LineMeaning& meaning : {LineMeaning(), LineMeaning(Platinum{100})}) {
        const auto value = readLine(*read, meaning, line);
        const auto* celsius = std::get_if<MilliCelsius>(&value);
        if (celsius != nullptr && (celsius->count < -273'150 || celsius->count > 1'000'000))
            std::abort();
    }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto pattern = text.substr(0, text.find('\n'));
    const auto line = text.substr(std::min(pattern.size() + 1, text.size()));
    check(pattern, DecimalSign::Point, line);
    check(pattern, DecimalSign::Comma, line);
    return 0;
}
