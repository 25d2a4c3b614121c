// Taps as fast as the disk takes them and says which are recorded, until it is killed.

#include <QCoreApplication>
#include <cstdio>
#include <cstdlib>

#include "tests/faults/store_workload.h"

int main(int argc, char** argv)
{
    const QCoreApplication app(argc, argv);
    if (argc < 3)
        return 2;
    bathside::store::DiskFiles files(bathside::test::StoreWorkload::placesIn(argv[1]));
    bathside::store::DirectRecorder recorder(files, {"bench 1"});
    if (!recorder.start())
        return 3;
    bathside::test::TrailDays days(recorder.trail()->head());
    for (int tap = 0; tap < 1'000'000; ++tap) {
        std::vector<bathside::Event> batch;
        for (int i = 0; i < 1 + tap % 3; ++i) {
            batch.push_back(
                days.event(bathside::NoteMade{"fact " + std::to_string(days.head().seq + 1)}));
            batch.back().tap = {std::string(argv[2]) + "-" + std::to_string(tap)};
            days.entry(batch.back().fact);
        }
        recorder.record(std::move(batch));
        std::printf("%lld\n", static_cast<long long>(recorder.state().recorded));
        std::fflush(stdout);
    }
    return 0;
}
