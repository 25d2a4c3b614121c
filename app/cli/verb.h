#pragma once

// What every verb of the command line shares: where it reads and writes, how it ends, how it says
// what is wrong.
//
// Exit codes as scripts see them: 0 done or yes, 1 the answer is no, 2 unusable input. What a verb
// prints on standard output appears whole or not at all; messages for people go to standard error.

#include <functional>
#include <iosfwd>
#include <optional>
#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/card/fault.h"

namespace CLI {
class App;
}

namespace bathside::cli {

enum class Exit : int { Done = 0, No = 1, Unusable = 2 };

struct Terminal {
    std::istream& in;
    std::ostream& out;
    std::ostream& err;
};

/// The verb that the command line named, ready to run. A verb's `add…` sets `run` when it was
/// chosen.
struct Call {
    std::function<Exit(Terminal&)> run;
};

/// What cannot be used, and why: becomes one sentence.
struct Unusable {
    std::string file;      // as it was given; "-" is standard input
    std::string where;     // "line 12", or "key probe.due"; may be empty
    std::string found;     // may be empty
    std::string expected;  // may be empty
};

[[nodiscard]] Unusable unusable(const std::string& file, const DocumentFault& fault);

/// "FILE, line 12: found …, expected …." Control characters in it come out as "?".
[[nodiscard]] std::string sentence(const Unusable& what);

/// Text from outside, safe for a terminal: control characters come out as "?".
[[nodiscard]] std::string shown(std::string text);

/// Prints the sentence; the exit code that belongs to it.
Exit refuse(Terminal& terminal, const Unusable& what);

/// Everything in `file`, or on standard input where it is "-"; at most 64 MiB.
[[nodiscard]] Result<std::string, Unusable> wholeOf(const std::string& file, Terminal& terminal);

/// Prints `text` whole; a standard output that does not take it is unusable.
[[nodiscard]] Exit print(Terminal& terminal, std::string_view text, Exit ifPrinted);

}  // namespace bathside::cli
