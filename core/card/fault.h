#pragma once

// The one thing that is wrong with a document: where, what stands there, and what should.

#include <string>

namespace bathside {

struct DocumentFault {
    std::string key;  // path, e.g. "limits.thaw.at_ms" or "checks[2].words.es"; empty: the document
    std::string found;     // what stands there, shortened; "nothing" where the key is missing
    std::string expected;  // what should, e.g. "a whole number of ms from 1 to 86400000"
};

}  // namespace bathside
