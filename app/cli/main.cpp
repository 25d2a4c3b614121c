// bathside-cli: the station without a screen. Same core, same trail.

#include <exception>
#include <iostream>
#include <string>

#include <CLI/CLI.hpp>

#include "app/cli/archive.h"
#include "app/cli/bath_verbs.h"
#include "app/cli/check_verbs.h"
#include "app/cli/export.h"
#include "app/cli/plan.h"
#include "app/cli/program.h"
#include "app/cli/reading.h"
#include "app/cli/replay.h"
#include "app/cli/restore.h"
#include "app/cli/scan.h"
#include "app/cli/stores.h"
#include "app/cli/verb.h"
#include "app/cli/verify.h"

namespace {

using namespace bathside::cli;

Exit sayWrongCall(const std::string& why)
{
    std::cerr << "bathside-cli: " << why << ". See bathside-cli --help.\n";
    return Exit::Unusable;
}

bool isVerb(const CLI::App& app, const std::string& name)
{
    const auto verbs =
        app.get_subcommands([&](const CLI::App* verb) { return verb->check_name(name); });
    return !verbs.empty();
}

Exit runVerb(int argc, char** argv)
{
    Call call;
    CLI::App app{"Bathside without a screen. One verb per call; FILE may be -, standard input."};
    app.name("bathside-cli");
    app.set_version_flag("--version", BATHSIDE_VERSION);
    app.require_subcommand(1);
    app.footer("Exit: 0 done or yes, 1 the answer is no, 2 unusable input.");
    addPlan(app, call);
    addReading(app, call);
    addReplay(app, call);
    addScan(app, call);
    addStores(app, call);
    addVerify(app, call);
    addExport(app, call, sheetDrawing());
    addRestore(app, call);
    addArchive(app, call);
    for (const auto& verbs : {bathVerbs(), checkVerbs()})
        for (const DocumentVerb& verb : verbs)
            addDocumentVerb(app, call, verb);
    if (argc < 2)
        return sayWrongCall("a verb is missing");
    const std::string first = argv[1];
    if (!isVerb(app, first) && app.get_option_no_throw(first) == nullptr)
        return sayWrongCall("there is no verb " + first);
    try {
        app.parse(argc, argv);
    } catch (const CLI::Success& answer) {  // --help, --version
        app.exit(answer);
        return Exit::Done;
    } catch (const CLI::ParseError& error) {
        return sayWrongCall(error.what());
    }
    Terminal terminal{std::cin, std::cout, std::cerr};
    return call.run(terminal);
}

}  // namespace

int main(int argc, char** argv)
{
    const auto application = applicationOf(argc, argv);  // for the store
    try {
        return static_cast<int>(runVerb(argc, argv));
    } catch (const std::exception& error) {
        std::cerr << "bathside-cli: " << error.what() << "\n";
        return static_cast<int>(Exit::Unusable);
    }
}
