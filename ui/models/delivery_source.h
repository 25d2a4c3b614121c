#pragma once

// Where deliveries as CSV files are found: the port to sticks and the documents folder.
//
// Asked when a person wants to import one, never in a critical window; both answers are short (a
// listing, one file of at most 1 MiB). UI thread.

#include <QString>
#include <optional>
#include <string>
#include <vector>

namespace bathside::ui {

struct DeliveryFile {
    QString path;
    QString name;   // "delivery-17.csv"
    QString stick;  // its name; empty: this computer's documents
};

class DeliverySource {
public:
    DeliverySource() = default;
    DeliverySource(const DeliverySource&) = delete;
    DeliverySource& operator=(const DeliverySource&) = delete;
    virtual ~DeliverySource() = default;

    /// Those there are at the moment, the newest first.
    [[nodiscard]] virtual std::vector<DeliveryFile> files() const = 0;
    /// None: it cannot be read, or is larger than 1 MiB.
    [[nodiscard]] virtual std::optional<std::string> read(const QString& path) const = 0;
};

}  // namespace bathside::ui
