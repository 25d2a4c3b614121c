#pragma once

// The thaw model's one free number, fitted to slush times that were logged, and the cue it drives.
//
// Least squares in the logarithm of the film coefficient, from 50 to 20,000 W/(m² K) to 0.1 %; the
// interval is Student's t on the residuals, with the slope of the predictions there (Gauss–Newton).
// One log fits exactly and proves nothing: `rms` says something from three on. Each evaluation runs
// the model once a log (some ms). (Spec: temperatures, thaw time.)

#include <cstdint>
#include <optional>
#include <vector>

#include "core/base/quantiles.h"
#include "core/base/result.h"
#include "core/base/time.h"
#include "core/bath/thaw_model.h"

namespace bathside {

inline constexpr Interval kFilmRange{50, 20'000};  // W/(m² K)

struct LoggedThaw {
    double bath = 0;   // °C
    double slush = 0;  // s from *in bath* until it was slush
    AmpouleShape shape;
};

struct FilmFit {
    double film = 0;                   // W/(m² K)
    std::optional<Interval> interval;  // W/(m² K), 95 %, of the range; none with one log
    std::optional<double> sureTo;      // of the time to slush: half its interval, as a share
    double rms = 0;                    // s, of predicted less logged
    std::vector<double> predicted;     // s, one a log, in order
};

enum class FilmFault : std::uint8_t {
    NoData,
    TooFast,  // slush sooner than any film coefficient of the range would have it
    TooSlow,  // later
};

/// `setting` gives all but bath, shape and film.
[[nodiscard]] Result<FilmFit, FilmFault> fittedFilm(const ThawSetting& setting,
                                                    const std::vector<LoggedThaw>& logs);

/// When to look for slush, from *in bath*: at the predicted time, but never later than the limit
/// less what handling the ampoule takes, and never before 0.
[[nodiscard]] Millis slushCue(double slush, Millis limit, Millis handling);

}  // namespace bathside
