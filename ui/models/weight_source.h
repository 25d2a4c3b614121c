#pragma once

// A balance on a serial line, as the checks see it: which one, and what it sends. Returns at once.
// UI thread.

#include <QObject>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/checks/weight_line.h"

namespace bathside::ui {

struct BalanceChoice {
    std::string port{};  // a path; empty: no balance
    int baud = 9'600;    // one of `kBauds`
    WeightFormat format{};
    friend bool operator==(const BalanceChoice&, const BalanceChoice&) = default;
};

class WeightSource : public QObject {
    Q_OBJECT

public:
    struct Gone {};  // the port is not there
    using Said = std::variant<Weighed, WeightFault, Gone>;

    using QObject::QObject;

    /// Serial ports that are there now.
    [[nodiscard]] virtual std::vector<std::string> ports() const = 0;
    /// The line of text that came last; none: nothing has come.
    [[nodiscard]] virtual std::optional<std::string> lastLine() const = 0;

signals:
    void said(const bathside::ui::WeightSource::Said& what);
};

}  // namespace bathside::ui
