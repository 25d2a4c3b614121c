#include "core/facts/facts.h"

namespace bathside {

Fact::Fact() = default;
Fact::Fact(void* value, std::size_t place)
    : AnyFact(takenFrom(value, place, std::type_identity<AnyFact>()))
{
}
Fact::Fact(const Fact&) = default;
Fact::Fact(Fact&&) noexcept = default;
Fact& Fact::operator=(const Fact&) = default;
Fact& Fact::operator=(Fact&&) noexcept = default;
Fact::~Fact() = default;

}  // namespace bathside
