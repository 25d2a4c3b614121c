#include "app/cli/restore.h"

#include <filesystem>

#include <CLI/CLI.hpp>

#include "app/cli/trail_file.h"
#include "app/cli/verify_answer.h"
#include "app/system/pin_file.h"
#include "app/system/trail_lock.h"
#include "core/trail/store/check.h"
#include "core/trail/store/continuation.h"

namespace bathside::cli {
namespace {

namespace fs = std::filesystem;

/// What lies where the trail is to be, the first of it; empty: nothing.
fs::path inTheWay(const fs::path& trail)
{
    std::error_code none;
    for (const char* ending : {"", "-wal", "-journal"}) {
        const fs::path name = trail.string() + ending;
        if (fs::exists(name, none))
            return name;
    }
    const fs::path last = store::partsOf(trail).back();
    return last == trail ? fs::path() : last;
}

std::optional<Unusable> whyNotThere(const RestoreOrder& order)
{
    const fs::path trail = order.trail;
    if (const fs::path there = inTheWay(trail); !there.empty())
        return Unusable{there.string(), "", "a file",
                        "a name that is free: nothing is overwritten, so rename the old trail and "
                        "what begins with its name first, and keep it"};
    std::error_code none;
    if (!fs::is_directory(fs::absolute(trail).parent_path(), none))
        return Unusable{order.trail, "", "no such folder", "a folder that is there"};
    return std::nullopt;
}

Result<Verification, Unusable> readBack(const RestoreOrder& order, const Head& head)
{
    const auto trail = store::TrailDb::open(order.trail, store::Mode::ReadOnly);
    if (!trail)
        return failure(unusable(order.trail, trail.error()));
    const store::Soundness found = store::check(**trail, {head});
    if (!found.isSound())
        return failure(Unusable{order.trail, "", "another content than was written",
                                "a disk that keeps what is written to it"});
    return found.chain;
}

std::string besideWords(const fs::path& trail)
{
    std::error_code none;
    std::string text;
    if (!fs::exists(app::PinFile::beside(trail), none))
        text += "No " + app::PinFile::beside(trail).filename().string() +
                " is beside it: nobody can sign until PINs are set anew.\n";
    if (!fs::exists(fs::path(trail).replace_filename("seal.key"), none))
        text +=
            "No seal.key is beside it: the station makes a new one, and seals by it show as "
            "another key.\n";
    return text;
}

std::string answer(const RestoreOrder& order, const Verification& chain)
{
    const std::string hash = toHex(chain.head.hash), seq = std::to_string(chain.head.seq),
                      count = std::to_string(chain.count);
    if (order.json)
        return R"({"restored":true,"events":)" + count + R"(,"head":{"seq":)" + seq +
               R"(,"hash":")" + hash + "\"}}\n";
    return order.trail + ": restored, " + count + " events. What was recorded after event " + seq +
           " is not in it.\n" + besideWords(order.trail) + "Head " + seq + ":" + hash + "\n";
}

}  // namespace

Exit restoreVerb(const RestoreOrder& order, Terminal& terminal)
{
    const auto copy = openTrail(order.copy);
    if (!copy)
        return refuse(terminal, copy.error());
    if ((*copy)->origin().role == store::Role::Spool)
        return refuse(terminal, {order.copy, "", "a file of events that wait for their trail",
                                 "a copy of a trail"});
    const store::Soundness found = store::check(**copy);
    if (!found.isSound() || found.chain.badSeal) {
        const std::string also = found.pages.empty() ? "" : "damaged pages: " + found.pages;
        terminal.err << "bathside-cli: nothing was restored. "
                     << shown(wordsOf(order.copy, {found.chain, also}));
        return Exit::No;
    }
    if (const auto why = whyNotThere(order))
        return refuse(terminal, *why);
    const auto lock = app::TrailLock::take(order.trail);
    if (!lock)
        return refuse(terminal, {order.trail, "", "a station that is running with it",
                                 "that it is ended first"});
    if (const auto written = (*copy)->copyTo(order.trail); !written)
        return refuse(terminal, unusable(order.trail, written.error()));
    const auto chain = readBack(order, found.chain.head);
    if (!chain) {
        std::error_code none;
        fs::remove(order.trail, none);  // made a moment ago
        return refuse(terminal, chain.error());
    }
    return print(terminal, answer(order, *chain), Exit::Done);
}

void addRestore(CLI::App& app, Call& call)
{
    const auto order = std::make_shared<RestoreOrder>();
    CLI::App* verb = app.add_subcommand("restore", "Put a copy in the place of a lost trail");
    verb->add_option("COPY", order->copy, "A copy that the station made")->required();
    verb->add_option("--to", order->trail, "The trail to make; must not be there yet")->required();
    verb->add_flag("--json", order->json, "Print one JSON object");
    verb->footer("Exit: 0 restored, 1 the copy is not sound, 2 unusable input.");
    verb->callback([order, &call] {
        call.run = [order](Terminal& terminal) { return restoreVerb(*order, terminal); };
    });
}

}  // namespace bathside::cli
