#include "app/cli/document_verb.h"

#include <array>
#include <cstdio>
#include <memory>
#include <utility>

#include <CLI/CLI.hpp>

namespace bathside::cli {

Exit runDocumentVerb(const DocumentVerb& verb, const std::string& file, Answer answer,
                     Terminal& terminal)
{
    const auto text = wholeOf(file, terminal);
    if (!text)
        return refuse(terminal, text.error());
    const auto told = verb.tell(*text);
    if (!told)
        return refuse(terminal, unusable(file, told.error()));
    return print(terminal, answer == Answer::Json ? told->json + "\n" : told->words, told->exit);
}

void addDocumentVerb(CLI::App& app, Call& call, DocumentVerb verb)
{
    struct Options {
        DocumentVerb verb;
        std::string file;
        bool json = false;
    };
    const auto options = std::make_shared<Options>(Options{std::move(verb), {}, false});
    const DocumentVerb& what = options->verb;
    CLI::App* added = app.add_subcommand(what.name, what.about);
    added->add_option("FILE", options->file, what.file + " as JSON; - is standard input")
        ->required();
    added->add_flag("--json", options->json, "Print one JSON object");
    added->footer((what.example.empty() ? "" : "Example: " + what.example + "\n") +
                  "Exit: " + what.exits + ".");
    added->callback([options, &call] {
        call.run = [options](Terminal& terminal) {
            return runDocumentVerb(options->verb, options->file,
                                   options->json ? Answer::Json : Answer::ForPeople, terminal);
        };
    });
}

std::string fixed(double value, int decimals)
{
    std::array<char, 400> text{};
    const int length = std::snprintf(text.data(), text.size(), "%.*f", decimals, value);
    return {text.data(), static_cast<std::size_t>(length)};
}

}  // namespace bathside::cli
