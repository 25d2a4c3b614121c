// Element strings against a second reader of the General Specifications: libzint checks what it is
// given to encode by GS1's own Syntax Dictionary (its sources: backend/gs1.c and gs1_lint.h, made
// from that dictionary).

#include <array>
#include <memory>
#include <random>
#include <string>
#include <vector>

#include <gtest/gtest.h>
#include <zint.h>

#include "core/scan/element_string.h"

namespace bathside::gs1 {
namespace {

constexpr std::chrono::year kNow{2026};

struct Deleter {
    void operator()(zint_symbol* symbol) const { ZBarcode_Delete(symbol); }
};

/// Whether libzint takes "[01]…" without an error and without a warning.
bool zintTakes(const std::string& brackets)
{
    const std::unique_ptr<zint_symbol, Deleter> symbol(ZBarcode_Create());
    symbol->symbology = BARCODE_DATAMATRIX;
    symbol->input_mode = GS1_MODE;
    const std::vector<unsigned char> text(brackets.begin(), brackets.end());
    return ZBarcode_Encode(symbol.get(), text.data(), static_cast<int>(text.size())) == 0;
}

bool weTake(const std::string& text) { return bracketedFrom(text, kNow).has_value(); }

struct Sample {
    std::string ai;
    bool isText = false;
};

// Every identifier that we read; those with decimals at the ends of what is allowed and beyond.
std::vector<Sample> samples()
{
    std::vector<Sample> all;
    for (const char* ai :
         {"00", "01",  "02",  "11",  "12",  "13",  "15",  "16",  "17",  "20",  "242", "30",
          "37", "402", "410", "411", "412", "413", "414", "415", "416", "417", "7003"})
        all.push_back({ai, false});
    for (const char* ai : {"10",  "21",  "22",  "240", "241", "243", "250", "251", "254",
                           "400", "403", "420", "710", "711", "712", "713", "714", "90",
                           "91",  "92",  "93",  "94",  "95",  "96",  "97",  "98",  "99"})
        all.push_back({ai, true});
    for (int three = 310; three <= 399; ++three)
        if (three < 370 || three == 390 || three == 392)
            for (int decimals = 0; decimals <= 9; ++decimals)
                all.push_back({std::to_string(three * 10 + decimals), false});
    return all;
}

class Generator {
public:
    std::string dataFor(const Sample& sample, std::size_t length)
    {
        const std::string_view signs = sample.isText && below(3) == 0
                                           ? "0123456789ABCxyz!\"%&'*+,-./_:;<=>? #@~"
                                           : (below(8) == 0 ? "0123456789A" : "0123456789");
        std::string data;
        while (data.size() < length)
            data += signs[below(signs.size())];
        if (data.ends_with(' '))  // in brackets we take it for a blank between elements
            data.back() = '#';
        return data;
    }
    /// Two digits a field, mostly those that dates and times have.
    std::string dateLike(std::size_t length)
    {
        std::string data;
        constexpr std::array<std::size_t, 5> kUpTo{100, 14, 33, 26, 62};
        for (std::size_t field = 0; field * 2 < length; ++field) {
            const auto value = std::to_string(below(kUpTo.at(field)));
            data += (value.size() < 2 ? "0" : "") + value;
        }
        return data;
    }
    std::size_t below(std::size_t bound) { return m_random() % bound; }

private:
    std::mt19937_64 m_random{1};
};

/// How many of both answers there were, so that neither side says one thing only.
struct Tally {
    int taken = 0;
    int refused = 0;
};

void compareOn(const std::string& ai, const std::string& data, Tally& tally)
{
    const bool ours = weTake("(" + ai + ")" + data);
    EXPECT_EQ(ours, zintTakes("[" + ai + "]" + data)) << "(" << ai << ")" << data;
    ++(ours ? tally.taken : tally.refused);
}

TEST(Gs1ReferenceTest, agreesOnEveryIdentifier)
{
    Generator generator;
    for (const Sample& sample : samples()) {
        Tally tally;
        for (std::size_t length = 1; length <= 95; ++length)
            for (int run = 0; run < (length < 20 ? 6 : 1); ++run)
                compareOn(sample.ai, generator.dataFor(sample, length), tally);
        EXPECT_GT(tally.refused, 0) << sample.ai;
    }
}

TEST(Gs1ReferenceTest, agreesOnCheckDigits)
{
    Generator generator;
    Tally tally;
    for (const auto& [ai, length] : std::vector<std::pair<std::string, std::size_t>>{
             {"00", 18}, {"01", 14}, {"02", 14}, {"402", 17}, {"410", 13}, {"417", 13}})
        for (int run = 0; run < 300; ++run)
            compareOn(ai,
                      std::to_string(1 + generator.below(9)) + generator.dataFor({ai}, length - 1),
                      tally);
    EXPECT_GT(tally.taken, 60);
    EXPECT_GT(tally.refused, 600);
}

TEST(Gs1ReferenceTest, agreesOnDatesAndTimes)
{
    Generator generator;
    Tally tally;
    for (const char* ai : {"11", "12", "13", "15", "16", "17"})
        for (int run = 0; run < 1000; ++run)
            compareOn(ai, generator.dateLike(6), tally);
    for (int run = 0; run < 3000; ++run)
        compareOn("7003", generator.dateLike(10), tally);
    EXPECT_GT(tally.taken, 4000);
    EXPECT_GT(tally.refused, 1000);
}

}  // namespace
}  // namespace bathside::gs1
