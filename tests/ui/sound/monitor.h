#pragma once

// Records what a device plays, from its monitor, with the instant at which each piece arrived.
//
// An arrival is never before the sample was rendered, so a sample that arrived before a deadline
// was early for certain, and lateness counted to the arrival is an upper bound (a piece is 5 ms).

#include <condition_variable>
#include <cstddef>
#include <mutex>
#include <optional>
#include <string>
#include <vector>

#include "core/base/time.h"

struct pa_context;
struct pa_stream;
struct pa_threaded_mainloop;

namespace bathside::test {

struct Onset {
    std::size_t index = 0;  // of the first loud sample
    BootTime arrived{};
};

class Monitor {
public:
    static constexpr int kRate = 48'000;
    static constexpr float kLoud = 0.01F;  // a null device's silence is exactly zero

    /// Returns once samples arrive.
    Monitor(const std::string& server, const std::string& device);
    Monitor(const Monitor&) = delete;
    Monitor& operator=(const Monitor&) = delete;
    ~Monitor();

    /// How many samples there are so far.
    [[nodiscard]] std::size_t position() const;
    [[nodiscard]] std::vector<float> samples(std::size_t from, std::size_t to) const;

    /// The first loud sample at `from` or later, waited for; none within `atMost`.
    [[nodiscard]] std::optional<Onset> sound(std::size_t from,
                                             std::chrono::milliseconds atMost) const;
    /// Waits until the last `quiet` of the recording are silent; where that silence began to be
    /// counted.
    [[nodiscard]] std::optional<std::size_t> silence(std::chrono::milliseconds quiet,
                                                     std::chrono::milliseconds atMost) const;
    /// Waits until there are so many samples.
    [[nodiscard]] bool reach(std::size_t position, std::chrono::milliseconds atMost) const;

private:
    struct Piece {
        std::size_t begin = 0;
        BootTime arrived{};
    };
    struct Callbacks;

    void take();
    [[nodiscard]] BootTime arrivalOf(std::size_t index) const;

    pa_threaded_mainloop* m_loop = nullptr;
    pa_context* m_context = nullptr;
    pa_stream* m_stream = nullptr;
    std::string m_source;

    mutable std::mutex m_mutex;  // the rest
    mutable std::condition_variable m_came;
    std::vector<float> m_samples;
    std::vector<Piece> m_pieces;
};

}  // namespace bathside::test
