#include "app/cli/scan.h"

#include <memory>

#include <CLI/CLI.hpp>

#include "app/cli/scan_text.h"
#include "app/system/kernel_clock.h"

namespace bathside::cli {
namespace {

using std::chrono::year;

year thisYear()
{
    const std::chrono::sys_time<Micros> now(app::readKernelClock(app::KernelClock::Wall));
    return std::chrono::year_month_day(std::chrono::floor<std::chrono::days>(now)).year();
}

/// What was given, or all of standard input less the end of its last line.
Result<std::string, Unusable> textOf(const ScanCall& order, Terminal& terminal)
{
    if (order.text != "-")
        return order.text;
    auto text = wholeOf("-", terminal);
    for (const char end : {'\n', '\r'})
        if (text && text->ends_with(end))
            text->pop_back();
    return text;
}

Exit sayFault(const ScanCall& order, const ScanFault& fault, Terminal& terminal)
{
    if (fault.kind == ScanFaultKind::Empty || fault.kind == ScanFaultKind::TooMuch)
        return refuse(terminal, {"TEXT", "", sentenceOf(fault), "what a scanner sends"});
    if (order.json)
        return print(terminal, jsonOf(fault) + "\n", Exit::No);
    terminal.err << "bathside-cli: " << sentenceOf(fault) << ".\n";
    return Exit::No;
}

}  // namespace

Exit scanVerb(const ScanCall& order, Terminal& terminal)
{
    const auto text = textOf(order, terminal);
    if (!text)
        return refuse(terminal, text.error());
    const auto code = scannedCodeFrom(*text, order.now);
    if (!code)
        return sayFault(order, code.error(), terminal);
    return print(terminal, order.json ? jsonOf(*code) + "\n" : wordsOf(*code), Exit::Done);
}

void addScan(CLI::App& app, Call& call)
{
    struct Options {
        ScanCall order;
        int year = int(thisYear());
    };
    const auto options = std::make_shared<Options>();
    CLI::App* verb = app.add_subcommand("scan", "What a scanned code says");
    verb->add_option("TEXT", options->order.text,
                     "What the scanner sends, FNC1 as ASCII 29, or with (01) in brackets; - is "
                     "standard input")
        ->required();
    verb->add_option("--year", options->year,
                     "The year that decides the century of two-digit years; this one if left out")
        ->check(CLI::Range(1950, 9900));
    verb->add_flag("--json", options->order.json, "Print one JSON object");
    verb->footer("Exit: 0 understood, 1 a code that is wrong in itself, 2 nothing to read.");
    verb->callback([options, &call] {
        options->order.now = year(options->year);
        call.run = [options](Terminal& terminal) { return scanVerb(options->order, terminal); };
    });
}

}  // namespace bathside::cli
