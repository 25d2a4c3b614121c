#pragma once

// Where a JSON document has a key twice in one object: the path of the second one.

#include <string>
#include <string_view>

namespace bathside {

/// E.g. "limits.thaw.at_ms" or "checks[2].words"; empty where no key is repeated or it is not JSON.
[[nodiscard]] std::string pathOfRepeatedKey(std::string_view document);

}  // namespace bathside
