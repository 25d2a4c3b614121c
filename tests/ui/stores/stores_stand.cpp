#include "tests/ui/stores/stores_stand.h"

#include "core/base/day.h"
#include "ui/stores/stores_page.h"

namespace bathside::test {
namespace {

StoreReceived ampoules(const char* component, const char* lot, std::int64_t count,
                       const char* expires, const char* place)
{
    return {.of = ampoulesOf({component}, {lot}),
            .place = place,
            .count = count,
            .doses = 2000,
            .expires = dayFrom(expires),
            .titre = 3200,
            .delivery = {}};
}

StoreReceived diluent(std::int64_t millilitres, std::int64_t count)
{
    return {.of = diluentOf({millilitres * 1000}, {"D-0417"}),
            .place = "shelf 2",
            .count = count,
            .doses = {},
            .expires = dayFrom("2026-12-31"),
            .titre = {},
            .delivery = {}};
}

}  // namespace

std::vector<ui::DeliveryFile> Deliveries::files() const
{
    std::vector<ui::DeliveryFile> files;
    for (const auto& [name, text] : texts)
        files.push_back({name, name, QStringLiteral("STICK")});
    return files;
}

std::optional<std::string> Deliveries::read(const QString& path) const
{
    const auto found = texts.find(path);
    return found == texts.end() ? std::nullopt : std::optional(found->second);
}

StoresStand::StoresStand(const Panel& panel, const QString& language) : m_pages(panel, language)
{
    Stand& stand = m_pages.stand();
    stand.frame().addPage(QString::fromLatin1(ui::Frame::kStores),
                          new ui::StoresPage({.model = stand.model(),
                                              .language = stand.language(),
                                              .deliveries = m_deliveries,
                                              .pins = m_pages.pins(),
                                              .zone = "Europe/Madrid"}));
}

void fill(Stand& stand)
{
    const char* cane5 = "vessel 1 / canister 2 / cane 5";
    StoreReceived needles{
        .of = {.kind = StockKind::Consumable, .item = "needle", .lot = {}, .volume = {}},
        .place = {},
        .count = 940,
        .doses = {},
        .expires = {},
        .titre = {},
        .delivery = {}};
    stand.say(Receive{
        {ampoules("serotype 3", "K07-112", 12, "2027-01-31", cane5),
         ampoules("serotype 3", "K07-112", 6, "2027-01-31", "vessel 1 / canister 2 / cane 6"),
         ampoules("serotype 3", "K05-031", 2, "2026-03-20", "vessel 1 / canister 3 / cane 1"),
         ampoules("serotype 3", "K02-008", 1, "2026-02-28", "vessel 1 / canister 3 / cane 2"),
         ampoules("serotype 1", "R22-019", 4, "2027-02-28", "vessel 2 / canister 1 / cane 1"),
         ampoules("serotype 1", "R21-044", 3, "2026-11-30", "vessel 2 / canister 1 / cane 2"),
         diluent(400, 20), diluent(800, 4), needles}});
    stand.say(OpenShift{"Europe/Madrid", {"MK"}, dayFrom("2026-03-05")});
    const Stock apart = ampoulesOf({"serotype 1"}, {"R22-019"});
    stand.say(QuarantineLot{apart, {}, "certificate missing"});
    const Stock allowed = ampoulesOf({"serotype 1"}, {"R21-044"});
    stand.say(QuarantineLot{allowed, {}, "arrived damaged"});
    stand.say(AllowLot{allowed, {"EF"}, "no other lot is there"});
    stand.say(ChooseLot{{"serotype 3"}, {"K07-112"}, {}});
    stand.say(PlanLine{{.line = {"A"},
                        .birds = 9300,
                        .birdsPerHour = 3000,
                        .start = std::chrono::hours(7),
                        .breaks = {},
                        .removed = false}});
    stand.say(
        CountStock{ampoulesOf({"serotype 3"}, {"K05-031"}), "vessel 1 / canister 3 / cane 1", 1});
}

std::string deliveryFile()
{
    return "kind,item,lot,doses,volume_ml,count,expires,vessel,canister,cane\r\n"
           "ampoule,serotype 3,K09-200,2000,,30,2027-06-30,vessel 1,canister 4,cane 1\r\n"
           "ampoule,serotype 3,K09-201,2000,,30,30.6.2027,vessel 1,canister 4,cane 2\r\n"
           "diluent,,D-0500,,400,40,2027-01-31,shelf 3,,\r\n";
}

}  // namespace bathside::test
