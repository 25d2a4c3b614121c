#pragma once

// Every limit that was passed, judged afresh from the bench as it stands.
//
// A limit is kept when the elapsed time is less than it. Each ampoule, bag, pull or line is judged
// on its own, once the fact that ends the overrun is there. An untimed step is judged as late as
// the record allows; across a start with an untrusted clock the limit counts as passed with 0 over.
// (Spec: the job, section 3.)

#include <optional>
#include <vector>

#include "core/bench/bench.h"

namespace bathside {

struct Finding {
    JudgementKey key;
    std::optional<BagId> bag;
    std::int64_t over = 0;  // in the limit's unit: ms, m°C or birds
    std::vector<Seq> from;
};

[[nodiscard]] std::vector<Finding> findings(const Bench& bench);

}  // namespace bathside
