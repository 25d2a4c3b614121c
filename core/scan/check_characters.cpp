#include "core/scan/check_characters.h"

#include <algorithm>
#include <cassert>

namespace bathside {
namespace {

constexpr std::string_view kSigns = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
constexpr std::size_t kModulus = kSigns.size();

}  // namespace

char gs1CheckDigit(std::string_view digits)
{
    assert(!firstNoDigit(digits));
    int sum = 0;
    int weight = 3;
    for (auto digit = digits.rbegin(); digit != digits.rend(); ++digit, weight = 4 - weight)
        sum += weight * (*digit - '0');
    return static_cast<char>('0' + (10 - sum % 10) % 10);
}

bool hasGs1CheckDigit(std::string_view digits)
{
    return !digits.empty() && !firstNoDigit(digits) &&
           gs1CheckDigit(digits.substr(0, digits.size() - 1)) == digits.back();
}

char iso7064CheckCharacter(std::string_view text)
{
    std::size_t product = kModulus;
    for (const char sign : text) {
        const auto value = kSigns.find(sign);
        if (value == std::string_view::npos)
            continue;
        const auto sum = (product + value) % kModulus;
        product = (sum == 0 ? kModulus : sum) * 2 % (kModulus + 1);
    }
    return kSigns[(kModulus + 1 - product) % kModulus];
}

std::optional<std::size_t> firstNoDigit(std::string_view text)
{
    const auto found = std::ranges::find_if_not(text, isDigit);
    if (found == text.end())
        return std::nullopt;
    return static_cast<std::size_t>(found - text.begin());
}

}  // namespace bathside
