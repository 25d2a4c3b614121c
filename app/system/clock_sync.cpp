#include "app/system/clock_sync.h"

#include <sys/timex.h>

namespace bathside::app {

ClockSync judgeClockSync(int result, const timex& kernel)
{
    const auto status = static_cast<unsigned>(kernel.status);
    if (result < 0 || result == TIME_ERROR || (status & STA_UNSYNC) != 0)
        return {};
    const auto offset = (status & STA_NANO) != 0
                            ? std::chrono::floor<Micros>(std::chrono::nanoseconds(kernel.offset))
                            : Micros(kernel.offset);
    return {.synchronised = true, .offset = offset};
}

ClockSync readClockSync()
{
    timex kernel{};
    const int result = adjtimex(&kernel);
    return judgeClockSync(result, kernel);
}

}  // namespace bathside::app
