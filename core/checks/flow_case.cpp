#include "core/checks/flow_case.h"

#include <nlohmann/json.hpp>

#include "core/checks/confidence.h"

namespace bathside {
namespace {

constexpr WholeRange kBirds{0, 1'000'000, "birds"};

std::vector<FlowPiece> piecesIn(JsonObject& root)
{
    std::vector<FlowPiece> pieces;
    for (JsonObject& piece : root.objects("pieces", 1, kMostValues)) {
        const double seconds = piece.number("seconds", {1, 86'400, "s"});
        pieces.push_back({seconds, static_cast<int>(piece.whole("birds", kBirds))});
        piece.noOthers();
    }
    return pieces;
}

}  // namespace

Result<FlowCase, DocumentFault> flowCaseFrom(std::string_view document)
{
    StrictJson json(document);
    JsonObject root = json.root();
    FlowCase line;
    line.pieces = piecesIn(root);
    if (const auto left = root.wholeIfAny("left", kBirds))
        line.left = static_cast<int>(*left);
    line.confidence = confidenceIn(root);
    root.noOthers();
    if (json.fault())
        return failure(*json.fault());
    return line;
}

FlowAnswer answered(const FlowCase& line)
{
    FlowAnswer answer{measuredFlow(line.pieces, line.confidence), std::nullopt};
    if (line.left)
        answer.empty = emptyIn(answer.flow, *line.left);
    return answer;
}

std::string toJson(const FlowAnswer& answer)
{
    using Json = nlohmann::ordered_json;
    Json json{{"birds_per_hour", answer.flow.perHour},
              {"low", answer.flow.interval.low},
              {"high", answer.flow.interval.high}};
    if (answer.empty)
        json["empty"] = {{"in_s", answer.empty->seconds},
                         {"earliest_s", answer.empty->earliest},
                         {"latest_s", answer.empty->latest ? Json(*answer.empty->latest) : Json()}};
    return json.dump();
}

}  // namespace bathside
