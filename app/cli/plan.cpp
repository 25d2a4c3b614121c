#include "app/cli/plan.h"

#include <memory>

#include <CLI/CLI.hpp>

#include "app/cli/plan_words.h"
#include "core/plan/plan.h"
#include "core/plan/read_input.h"

namespace bathside::cli {

Exit planVerb(const PlanOrder& order, Terminal& terminal)
{
    const auto text = wholeOf(order.file, terminal);
    if (!text)
        return refuse(terminal, text.error());
    const auto input = plan::dayInputFrom(*text);
    if (!input)
        return refuse(terminal, unusable(order.file, input.error()));
    const plan::Plan result = plan::planDay(*input, plan::Effort(plan::Effort::kOfADay));
    return print(terminal,
                 order.json ? toJson(*input, result, englishWords(*input)) + "\n"
                            : forPeople(*input, result),
                 result.isFeasible() ? Exit::Done : Exit::No);
}

void addPlan(CLI::App& app, Call& call)
{
    const auto order = std::make_shared<PlanOrder>();
    CLI::App* verb =
        app.add_subcommand("plan", "The day's bags, line by line, and the bench's schedule");
    verb->add_option("FILE", order->file, "Lines, bags and ampoules as JSON; - is standard input")
        ->required();
    verb->add_flag("--json", order->json, "Print one JSON object");
    verb->footer("Exit: 0 all lines and the bench can be done, 1 they cannot, 2 unusable input.");
    verb->callback([order, &call] {
        call.run = [order](Terminal& terminal) { return planVerb(*order, terminal); };
    });
}

}  // namespace bathside::cli
