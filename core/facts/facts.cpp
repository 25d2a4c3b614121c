#include "core/facts/facts.h"

namespace bathside {

Fact::Fact() = default;
Fact::Fact(const Fact&) = default;
Fact::Fact(Fact&&) noexcept = default;
Fact& Fact::operator=(const Fact&) = default;
Fact& Fact::operator=(Fact&&) noexcept = default;
Fact::~Fact() = default;

}  // namespace bathside
