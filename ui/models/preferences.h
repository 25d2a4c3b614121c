#pragma once

// What a site sets up once about its machine: its name, language, light or dark, the panel's true
// size, the sound device, the printers, the balance, copies of the record. Kept by app; pages set
// it, whoever is concerned follows `changed()`. UI thread only.

#include <QObject>
#include <QString>
#include <algorithm>

#include "ui/models/copy_choice.h"
#include "ui/models/print_choice.h"
#include "ui/models/weight_source.h"

namespace bathside::ui {

/// The name in the record of a station that was given none.
inline constexpr auto kUnnamedStation = "bench";

/// Whether a station may be called so: 1 to 24 signs, no blank at an end, nothing that is not seen.
inline constexpr int kLongestStation = 24;
[[nodiscard]] inline bool isStationName(const QString& name)
{
    return !name.isEmpty() && name.size() <= kLongestStation && name == name.simplified() &&
           std::ranges::all_of(name, [](QChar sign) { return sign.isPrint(); });
}

struct Preference {
    QString station = QString::fromLatin1(kUnnamedStation);  // isStationName
    QString language;                                        // ISO 639-1; empty: the system's
    bool dark = false;
    double pitchCorrection = 1;  // Metrics::correctionFor
    QString soundDevice;         // an id of the sound output; empty: the default
    PrintChoice print{};
    CopyChoice copies{};
    BalanceChoice balance{};
    friend bool operator==(const Preference&, const Preference&) = default;
};

class Preferences final : public QObject {
    Q_OBJECT

public:
    explicit Preferences(Preference first) : m_now(std::move(first)) {}

    [[nodiscard]] const Preference& now() const noexcept { return m_now; }
    void set(const Preference& next)
    {
        if (next == m_now)
            return;
        m_now = next;
        emit changed();
    }

signals:
    void changed();

private:
    Preference m_now;
};

}  // namespace bathside::ui
