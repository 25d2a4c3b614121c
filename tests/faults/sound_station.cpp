// A program that sounds one alarm at an instant of the boot clock (microseconds, its argument), for
// tests that stop it. Prints "y" once it has a device, then how many microseconds late it says the
// alarm was sounded; then stays.

#include <cstdlib>
#include <string>

#include <unistd.h>

#include "tests/ui/sound/stand_ins.h"
#include "ui/sound/sounder.h"

int main(int argc, char** argv)
{
    using namespace bathside;
    const BootTime due{argc > 1 ? std::atoll(argv[1]) : 0};
    const test::RealClock clock;
    test::Reports reports;
    ui::AlarmThread alarms(clock, ui::standardSounder(nullptr), ui::Waiting::BootClock,
                           reports.notifier());
    alarms.publish(test::dueAt(due, Level::Limit));
    const auto found = reports.next<ui::report::SoundFound>(alarms, std::chrono::seconds{30});
    (void)!::write(STDOUT_FILENO, found ? "y" : "n", 1);
    if (const auto sounded =
            reports.next<ui::report::AlarmSounded>(alarms, std::chrono::seconds{60})) {
        const std::string late = std::to_string(sounded->late.count());
        (void)!::write(STDOUT_FILENO, late.data(), late.size());
    }
    ::pause();
}
