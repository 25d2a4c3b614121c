#include "app/cli/reading.h"

#include <array>
#include <cstdio>
#include <memory>

#include <CLI/CLI.hpp>

#include "core/bath/reading_case.h"

namespace bathside::cli {
namespace {

std::string fixed(double value, int decimals)
{
    std::array<char, 400> text{};
    const int length = std::snprintf(text.data(), text.size(), "%.*f", decimals, value);
    return {text.data(), static_cast<std::size_t>(length)};
}

std::string sentenceOf(Verdict verdict)
{
    switch (verdict) {
        case Verdict::Inside:
            return "The bath is inside its tolerance.";
        case Verdict::Undecided:
            return "Undecided: with this uncertainty the bath may be inside or outside.";
        case Verdict::Outside:
            return "The bath is outside its tolerance.";
    }
    return {};
}

std::string sentenceOf(ReadingWarning warning)
{
    switch (warning) {
        case ReadingWarning::BeyondRange:
            return "The reading is beyond the calibrated range.";
        case ReadingWarning::Overdue:
            return "The calibration is overdue.";
        case ReadingWarning::NotCalibrated:
            return "The probe is not calibrated.";
        case ReadingWarning::CannotDecide:
            return "This thermometer cannot decide: its uncertainty leaves no room inside the "
                   "tolerance.";
    }
    return {};
}

/// Never rounded up to certainty.
std::string percent(double probability)
{
    return probability > 0.9999 ? "more than 99.99 %" : fixed(100 * probability, 2) + " %";
}

std::string forPeople(const Judged& judged)
{
    std::string text = fixed(judged.corrected, 3) + " °C ± " + fixed(judged.expanded, 3) +
                       " °C (k = 2). " + sentenceOf(judged.verdict) +
                       "\nProbability that it is inside: " + percent(judged.conformity) + ".\n";
    for (const ReadingWarning warning : judged.warnings)
        text += sentenceOf(warning) + "\n";
    return text;
}

}  // namespace

Exit readingVerb(const std::string& file, Answer answer, Terminal& terminal)
{
    const auto text = wholeOf(file, terminal);
    if (!text)
        return refuse(terminal, text.error());
    const auto reading = readingCaseFrom(*text);
    if (!reading)
        return refuse(terminal, unusable(file, reading.error()));
    const Judged result = judged(*reading);
    const Exit exit = result.verdict == Verdict::Outside ? Exit::No : Exit::Done;
    return print(terminal, answer == Answer::Json ? toJson(result) + "\n" : forPeople(result),
                 exit);
}

void addReading(CLI::App& app, Call& call)
{
    struct Options {
        std::string file;
        bool json = false;
    };
    const auto options = std::make_shared<Options>();
    CLI::App* verb =
        app.add_subcommand("reading", "Corrected value, uncertainty and verdict of one reading");
    verb->add_option("FILE", options->file,
                     "The reading and its probe as JSON; - is standard input")
        ->required();
    verb->add_flag("--json", options->json, "Print one JSON object");
    verb->footer("Exit: 0 inside or undecided, 1 outside, 2 unusable input.");
    verb->callback([options, &call] {
        call.run = [options](Terminal& terminal) {
            return readingVerb(options->file, options->json ? Answer::Json : Answer::ForPeople,
                               terminal);
        };
    });
}

}  // namespace bathside::cli
