#include "core/bench/intent.h"

#include <array>

namespace bathside {
namespace {

// In the order of `Intent`.
constexpr std::array<std::string_view, std::variant_size_v<AnyIntent>> kNames{"open-shift",
                                                                              "close-shift",
                                                                              "duty",
                                                                              "check",
                                                                              "override",
                                                                              "reading",
                                                                              "water-changed",
                                                                              "start-bag",
                                                                              "inspected",
                                                                              "diluent-drawn",
                                                                              "mixed",
                                                                              "hang",
                                                                              "swirl",
                                                                              "hold",
                                                                              "release",
                                                                              "bag-down",
                                                                              "out-of-cryogen",
                                                                              "move-on",
                                                                              "lost",
                                                                              "cane-exposed",
                                                                              "plan-pull",
                                                                              "birds",
                                                                              "needle",
                                                                              "line-stop",
                                                                              "line-go",
                                                                              "dose-check",
                                                                              "heard",
                                                                              "take-back",
                                                                              "correct",
                                                                              "answer",
                                                                              "note",
                                                                              "scan",
                                                                              "adopt-card",
                                                                              "describe-probe",
                                                                              "start-station",
                                                                              "stop-station",
                                                                              "clock-step",
                                                                              "raise-alarm",
                                                                              "sounded",
                                                                              "end-alarm",
                                                                              "prove-sound",
                                                                              "lose-sound",
                                                                              "find-sound",
                                                                              "store-failure",
                                                                              "store-recovery",
                                                                              "plan-line",
                                                                              "receive",
                                                                              "move-stock",
                                                                              "count-stock",
                                                                              "discard-stock",
                                                                              "quarantine",
                                                                              "release-lot",
                                                                              "allow-lot",
                                                                              "choose-lot",
                                                                              "birds-check",
                                                                              "describe-vessel",
                                                                              "dip",
                                                                              "person",
                                                                              "set-pin",
                                                                              "pin-refused",
                                                                              "sign",
                                                                              "review",
                                                                              "comment",
                                                                              "approve-card",
                                                                              "seal",
                                                                              "witness",
                                                                              "backup",
                                                                              "baseline",
                                                                              "continued"};
constexpr std::array<std::string_view, kSteps> kSteppedTo{"out-of-cryogen", "in-bath", "opened",
                                                          "in-diluent",     "rinsed",  "in-bag"};

}  // namespace

Intent::Intent() = default;
Intent::Intent(void* value, std::size_t place)
    : AnyIntent(takenFrom(value, place, std::type_identity<AnyIntent>()))
{
}
Intent::Intent(const Intent&) = default;
Intent::Intent(Intent&&) noexcept = default;
Intent& Intent::operator=(const Intent&) = default;
Intent& Intent::operator=(Intent&&) noexcept = default;
Intent::~Intent() = default;

std::string_view nameOf(const Intent& intent)
{
    if (const auto* move = std::get_if<MoveOn>(&intent))
        return kSteppedTo.at(static_cast<std::size_t>(move->step));
    return kNames.at(intent.index());
}

}  // namespace bathside
