#pragma once

// A text with one part of it, which is there, replaced.

#include <stdexcept>
#include <string>

namespace bathside::test {

[[nodiscard]] inline std::string replaced(std::string text, const std::string& what,
                                          const std::string& by)
{
    const std::size_t place = text.find(what);
    if (place == std::string::npos)
        throw std::logic_error("not in the text: " + what);
    return text.replace(place, what.size(), by);
}

}  // namespace bathside::test
