// Any bytes are a code or a fault within them; what was read says the same in its other forms.

#include <cstdlib>
#include <string_view>

#include "core/scan/said.h"

namespace {

using namespace bathside;

constexpr std::chrono::year kNow{2026};

void require(bool holds)
{
    if (!holds)
        std::abort();
}

void sameInOtherForms(const gs1::ElementString& string)
{
    require(!string.elements.empty());
    require(gs1::elementsFrom(gs1::scannedForm(string), kNow) == string);
}

void sameWrittenAnew(const OwnCode& code) { require(ownCodeFrom(textOf(code)) == code); }

void check(const ScannedCode& code)
{
    if (const auto* string = std::get_if<gs1::ElementString>(&code.content))
        sameInOtherForms(*string);
    if (const auto* bag = std::get_if<BagCode>(&code.content))
        sameWrittenAnew(*bag);
    if (const auto* person = std::get_if<PersonCode>(&code.content))
        sameWrittenAnew(*person);
    if (const auto* seal = std::get_if<SealCode>(&code.content))
        sameWrittenAnew(*seal);
    if (const auto expiry = expirySaid(code))
        require(expiry->ok());
    require(compared(code, LotId{"\n"}) != LotMatch::Same ||
            code.content == ScannedContent(PlainText{"\n"}));
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto code = scannedCodeFrom(text, kNow);
    if (code)
        check(*code);
    else
        require(code.error().at <= size);
    return 0;
}
