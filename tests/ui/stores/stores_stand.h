#pragma once

// The stores page beside the others: the stand of set-up with it in the frame, and deliveries that
// are given, not found.

#include <map>

#include "tests/ui/setup/page_stand.h"
#include "ui/models/delivery_source.h"

namespace bathside::test {

class Deliveries final : public ui::DeliverySource {
public:
    [[nodiscard]] std::vector<ui::DeliveryFile> files() const override;
    [[nodiscard]] std::optional<std::string> read(const QString& path) const override;

    std::map<QString, std::string> texts;  // by name
};

class StoresStand {
public:
    StoresStand(const Panel& panel, const QString& language);

    [[nodiscard]] Stand& stand() { return m_pages.stand(); }
    [[nodiscard]] Deliveries& deliveries() { return m_deliveries; }
    [[nodiscard]] Pins& pins() { return m_pages.pins(); }
    [[nodiscard]] const Stores& stores() { return m_pages.stand().bench().stores; }
    void show() { m_pages.show(ui::Frame::kStores); }

private:
    Deliveries m_deliveries;
    PageStand m_pages;
};

/// A store room worth reading: fit, near expiry, expired, in quarantine, allowed, used up; a plan
/// that asks for more than there is.
void fill(Stand& stand);

/// A delivery with a line that is wrong.
[[nodiscard]] std::string deliveryFile();

}  // namespace bathside::test
