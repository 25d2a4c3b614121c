#pragma once

// Figures of the sound benchmarks: a list of milliseconds and how it is printed.

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

namespace bathside::test {

/// BATHSIDE_LONG asks for the long form.
inline std::size_t howMany(std::size_t shortForm, std::size_t longForm)
{
    return std::getenv("BATHSIDE_LONG") ? longForm : shortForm;
}

class Figures {
public:
    void add(std::chrono::microseconds late)
    {
        m_ms.push_back(std::chrono::duration<double, std::milli>(late).count());
    }

    [[nodiscard]] std::size_t count() const { return m_ms.size(); }
    [[nodiscard]] double at(double share)
    {
        if (m_ms.empty())
            return 0.0;
        std::ranges::sort(m_ms);
        return m_ms[static_cast<std::size_t>(share * static_cast<double>(m_ms.size() - 1))];
    }

    void print(const std::string& what, std::size_t tried, const std::string& bound)
    {
        std::printf("%-46s %6zu / %-6zu p50 %7.2f  p95 %7.2f  p99 %7.2f  max %7.2f ms   %s\n",
                    what.c_str(), count(), tried, at(0.5), at(0.95), at(0.99), at(1.0),
                    bound.c_str());
        std::fflush(stdout);
    }

private:
    std::vector<double> m_ms;
};

}  // namespace bathside::test
