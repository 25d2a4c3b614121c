#pragma once

// A trail file as the command line's verbs open it, and what is said when it will not do.

#include <memory>
#include <string>

#include "app/cli/verb.h"
#include "core/trail/store/trail_db.h"

namespace bathside::cli {

/// For reading only. What the station holds open is refused: it makes the copies.
[[nodiscard]] Result<std::unique_ptr<store::TrailDb>, Unusable> openTrail(const std::string& file);

[[nodiscard]] Unusable unusable(const std::string& file, const StoreTrouble& trouble);
[[nodiscard]] Unusable unusable(const std::string& file, const store::OpenFault& fault);

}  // namespace bathside::cli
