#include "tests/ui/print/papers.h"

#include <array>

#include "core/base/rfc3339.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;
using ui::Paper;

constexpr auto kZone = "Europe/Madrid";

ui::PlanSheet::Bag planned(Millis start, int no, int lots)
{
    constexpr std::array<const char*, 3> kComponents{"serotype 3", "serotype 1", "serotype 2"};
    ui::PlanSheet::Bag bag;
    bag.volume = {no % 3 == 0 ? 800'000 : 400'000};
    bag.pullStart = start + no * 38min;
    bag.mixedBy = bag.pullStart + 8min + 30s;
    bag.firstBird = bag.mixedBy + 4min;
    bag.lastBird = bag.firstBird + 38min;
    bag.birds = 1900 + no;
    for (int lot = 0; lot < lots; ++lot)
        bag.lots.push_back({kComponents.at(static_cast<std::size_t>(lot)),
                            "K0" + std::to_string(lot + 7), 1 + lot});
    return bag;
}

ui::PlanSheet sheetOf(int lines, int bags, Millis start)
{
    ui::PlanSheet sheet;
    sheet.day = 2026y / 3 / 5;
    sheet.site = "Hatchery by the mill";
    sheet.made = *fromRfc3339("2026-03-05T04:40:12Z");
    sheet.zone = kZone;
    for (int line = 0; line < lines; ++line) {
        sheet.lines.push_back({std::string(1, static_cast<char>('A' + line)), {}});
        for (int no = 0; no < bags; ++no)
            sheet.lines.back().bags.push_back(planned(start + line * 7min, no, 1 + line % 3));
    }
    return sheet;
}

}  // namespace

ui::BagLabel usualLabel()
{
    ui::BagLabel label;
    label.bag = {"B4"};
    label.volume = {400'000};
    label.components = {{{"serotype 3"}, {{"K07"}}, 2, 4000},
                        {{"serotype 1"}, {{"R112"}}, 2, 4000}};
    label.doses = 4000;
    label.mixed = *fromRfc3339("2026-03-05T06:12:40Z");
    label.useBy = *fromRfc3339("2026-03-05T07:11:05Z");
    label.preparer = {"MK"};
    label.zone = kZone;
    return label;
}

ui::BagLabel fullLabel()
{
    ui::BagLabel label = usualLabel();
    label.bag = {"NORTH-12"};
    label.volume = {1'200'500};
    label.components = {{{"serotype 3"}, {{"2026-K07/1234567890"}}, 12, 48'000},
                        {{"serotype 1, strain under trial"}, {{"R112"}, {"R113"}}, 12, {}},
                        {{"serotype 2"}, {{"S-00012"}}, 8, 32'000}};
    label.doses.reset();
    label.preparer = {"MK-2"};
    label.rehearsal = true;
    return label;
}

ui::PlanSheet usualSheet() { return sheetOf(2, 6, 5h + 50min); }

ui::PlanSheet longSheet()
{
    ui::PlanSheet sheet = sheetOf(5, 14, 16h);
    sheet.rehearsal = true;
    return sheet;
}

std::vector<PaperCase> paperCases()
{
    std::vector<PaperCase> cases;
    const std::array<std::pair<const char*, Paper>, 4> papers{{{"label", Paper::Label},
                                                               {"roll", Paper::Roll},
                                                               {"a4", Paper::A4},
                                                               {"letter", Paper::Letter}}};
    for (const auto& [name, paper] : papers) {
        cases.push_back({std::string("bag-") + name, pagesOf(usualLabel(), paper)});
        cases.push_back({std::string("bag-full-") + name, pagesOf(fullLabel(), paper)});
        if (!ui::isSheet(paper))
            continue;
        cases.push_back({std::string("plan-") + name, pagesOf(usualSheet(), paper)});
        cases.push_back({std::string("plan-long-") + name, pagesOf(longSheet(), paper)});
    }
    return cases;
}

}  // namespace bathside::test
