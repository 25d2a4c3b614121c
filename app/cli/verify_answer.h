#pragma once

// What `verify` found, in words for people and as one JSON object.

#include <string>

#include "core/trail/verify.h"

namespace bathside::cli {

struct VerifyAnswer {
    Verification chain;
    std::string also;        // what else is wrong; empty: nothing
    std::string signedBy{};  // the key of an export's manifest; empty: none
    std::string sealedBy{};  // the key by which the file as a whole is sealed; empty: it is not
    [[nodiscard]] bool isSound() const { return !chain.flaw && !chain.badSeal && also.empty(); }
};

[[nodiscard]] std::string wordsOf(const std::string& file, const VerifyAnswer& answer);
[[nodiscard]] std::string jsonOf(const VerifyAnswer& answer);

}  // namespace bathside::cli
