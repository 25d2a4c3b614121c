#pragma once

// A verb that reads one JSON document and answers it: for people, or with --json as one JSON
// object.

#include <functional>
#include <string>
#include <string_view>

#include "app/cli/verb.h"

namespace bathside::cli {

enum class Answer { ForPeople, Json };

struct Told {
    std::string json;   // one object in one line, without its end
    std::string words;  // English, whole lines
    Exit exit = Exit::Done;
};

struct DocumentVerb {
    std::string name;
    std::string about;    // one line
    std::string file;     // what FILE holds
    std::string exits;    // "0 …, 1 …, 2 …"
    std::string example;  // a document, shown by --help; may be empty
    std::function<Result<Told, DocumentFault>(std::string_view document)> tell;
};

/// Reads `file`, tells and prints.
[[nodiscard]] Exit runDocumentVerb(const DocumentVerb& verb, const std::string& file, Answer answer,
                                   Terminal& terminal);

void addDocumentVerb(CLI::App& app, Call& call, DocumentVerb verb);

/// A number with so many decimals.
[[nodiscard]] std::string fixed(double value, int decimals);

}  // namespace bathside::cli
