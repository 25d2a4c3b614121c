#pragma once

// `bathside-cli verify FILE`: is a trail, or an exported events.jsonl, what was once written?

#include <string>

#include "app/cli/verb.h"

namespace bathside::cli {

struct VerifyOrder {
    std::string file;
    std::string head;       // "seq:hash" of a head that was kept elsewhere; empty: none
    std::string seal;       // the code of a day sheet; empty: none
    std::string key;        // the public key of the seals, hex; empty: that of the first seal
    std::string continues;  // the damaged trail that `file` goes on from; empty: not compared
    bool json = false;
};

/// Exit `No` names the first bad seq and what is wrong with it.
[[nodiscard]] Exit verifyVerb(const VerifyOrder& order, Terminal& terminal);

void addVerify(CLI::App& app, Call& call);

}  // namespace bathside::cli
