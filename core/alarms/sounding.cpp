#include "core/alarms/sounding.h"

#include <algorithm>
#include <utility>

#include "core/alarms/alarms.h"

namespace bathside {
namespace {

class BenchSound final : public SoundSource {
public:
    explicit BenchSound(std::shared_ptr<const Bench> bench) : m_bench(std::move(bench)) {}

    [[nodiscard]] Sounding at(const Stamp& now) const override
    {
        const Alarms state = alarms(*m_bench, now);
        const auto worst = std::ranges::find(state.due, false, &Alarm::hushed);
        if (worst == state.due.end())
            return {.level = {}, .alarm = {}, .nextChange = state.nextChange};
        return {.level = worst->level, .alarm = worst->id, .nextChange = state.nextChange};
    }

private:
    std::shared_ptr<const Bench> m_bench;
};

}  // namespace

std::shared_ptr<const SoundSource> soundSource(std::shared_ptr<const Bench> bench)
{
    return std::make_shared<const BenchSound>(std::move(bench));
}

}  // namespace bathside
