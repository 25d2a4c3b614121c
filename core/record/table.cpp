#include "core/record/table.h"

#include <cstdlib>

namespace bathside {

std::string headOf(const TableColumn& column)
{
    std::string text(column.name);
    if (column.unit.empty())
        return text;
    const std::string_view unit = column.unit == kInstant ? "utc"
                                  : column.unit == "°C"   ? "C"
                                                          : column.unit;
    return text.append("_").append(unit);
}

std::string offsetText(std::chrono::seconds offset)
{
    const auto minutes = std::abs(std::chrono::duration_cast<std::chrono::minutes>(offset).count());
    const auto twoDigits = [](std::int64_t value) {
        return (value < 10 ? "0" : "") + std::to_string(value);
    };
    return (offset.count() < 0 ? "-" : "+") + twoDigits(minutes / 60) + ":" +
           twoDigits(minutes % 60);
}

}  // namespace bathside
