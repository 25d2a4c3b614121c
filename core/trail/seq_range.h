#pragma once

// Entries first … last without a gap.

#include "core/base/ids.h"

namespace bathside {

struct SeqRange {
    Seq first = 0;
    Seq last = 0;
    friend bool operator==(const SeqRange&, const SeqRange&) = default;
};

}  // namespace bathside
