#include "app/cli/reading.h"

#include "core/bath/reading_case.h"

namespace bathside::cli {
namespace {

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

Result<Told, DocumentFault> tell(std::string_view document)
{
    const auto reading = readingCaseFrom(document);
    if (!reading)
        return failure(reading.error());
    const Judged result = judged(*reading);
    return Told{toJson(result), forPeople(result),
                result.verdict == Verdict::Outside ? Exit::No : Exit::Done};
}

DocumentVerb verbOfReading()
{
    return {"reading",
            "Corrected value, uncertainty and verdict of one reading",
            "The reading and its probe",
            "0 inside or undecided, 1 outside, 2 unusable input",
            "",
            tell};
}

}  // namespace

Exit readingVerb(const std::string& file, Answer answer, Terminal& terminal)
{
    return runDocumentVerb(verbOfReading(), file, answer, terminal);
}

void addReading(CLI::App& app, Call& call) { addDocumentVerb(app, call, verbOfReading()); }

}  // namespace bathside::cli
