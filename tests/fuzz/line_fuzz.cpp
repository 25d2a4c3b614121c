// Any bytes are a line or a fault; a line gives the same bytes again, and is canonical by the full
// rewriting, too. A file of such lines is verified without harm.

#include <cstdlib>
#include <string_view>
#include <tuple>

#include "core/record/verify_export.h"
#include "core/trail/canonical.h"
#include "core/trail/json_lines.h"
#include "core/trail/whole_json.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace bathside;
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto line = lineFrom(text);
    const auto canonical = canonicalised(text);
    if (line && (toLine(*line) != text || canonical != text))
        std::abort();
    if (!line && line.error().kind == LineFault::Kind::NotJson && canonical)
        std::abort();
    if (isWhole(text) && canonical != text)
        std::abort();
    if (canonical && canonicalised(*canonical) != canonical)
        std::abort();
    ExportVerifier verifier;
    verifier.add(text);
    std::ignore = verifier.finish();
    return 0;
}
