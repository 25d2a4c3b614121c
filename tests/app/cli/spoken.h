#pragma once

// What a verb says to a terminal and how it ends.

#include <sstream>
#include <string>

#include "app/cli/verb.h"

namespace bathside::cli {

struct Spoken {
    Exit exit{};
    std::string out;
    std::string err;
};

/// `run` takes the terminal, whose standard input is `input`, and says the exit.
template <typename Run>
[[nodiscard]] Spoken spoken(const std::string& input, Run run)
{
    std::istringstream in(input);
    std::ostringstream out;
    std::ostringstream err;
    Terminal terminal{in, out, err};
    const Exit exit = run(terminal);
    return {exit, out.str(), err.str()};
}

}  // namespace bathside::cli
