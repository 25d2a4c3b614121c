#pragma once

// How much work a plan may cost before it says that it cannot be proven: states looked at, so that
// the answer is the same on every machine.

#include <algorithm>
#include <cstdint>

namespace bathside::plan {

class Effort {
public:
    /// Of a day: spent within 2 s, whatever the day (tests/speed/plan_speed).
    static constexpr std::int64_t kOfADay = 450'000;

    /// While somebody works at the bench, whose tap outside the critical window waits for it: some
    /// 0.1 s at most (tests/speed/plan_speed). (Decision D17.)
    static constexpr std::int64_t kAtTheBench = 50'000;

    explicit Effort(std::int64_t states) : m_left(states) {}

    /// False: none is left to spend.
    [[nodiscard]] bool spendOne() { return m_left > 0 && m_left-- > 0; }
    void spend(std::int64_t states) { m_left -= std::min(states, m_left); }

    /// One of `shares` equal parts, taken out; what is left of it can be given back.
    [[nodiscard]] Effort share(std::int64_t shares)
    {
        const std::int64_t part = m_left / shares;
        m_left -= part;
        return Effort(part);
    }
    void giveBack(const Effort& part) { m_left += part.m_left; }

private:
    std::int64_t m_left;
};

}  // namespace bathside::plan
