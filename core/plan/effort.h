#pragma once

// How much work a plan may cost before it says that it cannot be proven: states looked at, so that
// the answer is the same on every machine.

#include <cstdint>

namespace bathside::plan {

class Effort {
public:
    explicit Effort(std::int64_t states) : m_left(states) {}

    /// One more state; false: none is left to spend.
    [[nodiscard]] bool spend() { return m_left > 0 && m_left-- > 0; }

private:
    std::int64_t m_left;
};

}  // namespace bathside::plan
