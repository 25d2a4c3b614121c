#pragma once

// What the ear does in a test: where the pulses of a recording are and what pitches are in them.
//
// Level of one frequency: Goertzel, "An algorithm for the evaluation of finite trigonometric
// series", American Mathematical Monthly 65 (1958) 34 to 35; here with a Hann window.

#include <cstddef>
#include <span>
#include <vector>

namespace bathside::test {

struct Heard {
    double start = 0.0;  // seconds, at half of the loudest
    double end = 0.0;
    double loudest = 0.0;  // amplitude
};

/// Runs in which the envelope is above half of the loudest in the recording. Gaps shorter than
/// 30 ms are bridged: no published gap is that short, and a server under load may drop a piece.
[[nodiscard]] std::vector<Heard> pulsesIn(std::span<const float> samples, double rate);

/// Amplitude of `hz` in the samples, in dB below full scale.
[[nodiscard]] double levelAt(std::span<const float> samples, double rate, double hz);

/// The frequency between `from` and `to` at which the level is highest, to 1 Hz.
[[nodiscard]] double pitchIn(std::span<const float> samples, double rate, double from, double to);

/// The steady middle of a pulse.
[[nodiscard]] std::span<const float> middleOf(std::span<const float> samples, double rate,
                                              const Heard& pulse);

}  // namespace bathside::test
