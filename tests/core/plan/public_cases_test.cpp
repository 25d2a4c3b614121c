// Days with the optimum that must come out, handed over with the rules (data/).

#include <filesystem>
#include <fstream>
#include <sstream>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "core/plan/plan.h"
#include "core/plan/read_input.h"

namespace bathside::plan {
namespace {

nlohmann::json outcome(const Line& line, const Result<LinePlan, std::vector<Reason>>& planned)
{
    nlohmann::json json{{"name", line.name}, {"feasible", planned.has_value()}};
    if (!planned)
        return json;
    json["doses_opened"] = planned->worth.cost.doses;
    json["bags"] = planned->bags.size();
    json["diluent_ml"] = static_cast<double>(planned->worth.cost.volume) / 1000;
    json["finish_ms"] = planned->worth.lastBird.count();
    return json;
}

TEST(PublicCasesTest, comeOutAsTheyMust)
{
    int cases = 0;
    for (const auto& file : std::filesystem::directory_iterator(BATHSIDE_PLAN_CASES)) {
        std::ifstream in(file.path());
        const auto given = nlohmann::json::parse(in);
        const auto input = dayInputFrom(given.at("input").dump());
        ASSERT_TRUE(input) << file.path() << " " << input.error().key;
        const Plan plan = planDay(*input, Effort(1'000'000));
        auto found = nlohmann::json::array();
        for (std::size_t line = 0; line < plan.lines.size(); ++line)
            found.push_back(outcome(input->lines[line], plan.lines[line]));
        EXPECT_EQ(found, given.at("expect")) << file.path();
        ++cases;
    }
    EXPECT_EQ(cases, 8);
}

}  // namespace
}  // namespace bathside::plan
