#pragma once

// Deliveries as CSV files: in this computer's documents and on the sticks that are mounted, there
// in the top folder or in ours. Reads nothing but the file asked for.

#include "ui/models/delivery_source.h"

namespace bathside::app {

class DeliveryFiles final : public ui::DeliverySource {
public:
    [[nodiscard]] std::vector<ui::DeliveryFile> files() const override;
    [[nodiscard]] std::optional<std::string> read(const QString& path) const override;
};

}  // namespace bathside::app
