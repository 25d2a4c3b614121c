#pragma once

// What the forecast shows that takes some hundred runs of the thaw model: reckoned on a thread of
// its own, so that taps get through meanwhile.
//
// What is asked for last counts; an answer to anything before it is dropped. Ending waits for the
// run that is in hand. UI thread.

#include <QObject>
#include <QThreadPool>
#include <functional>
#include <optional>

#include "ui/thermometers/bath_pictures.h"

namespace bathside::ui {

struct BathReckoned {
    CardHash of;  // the card that it was reckoned for
    BathFits fits;
    std::vector<SlushPoint> curve;
};

class BathReckoner final : public QObject {
    Q_OBJECT

public:
    using Run = std::function<void(std::function<void()> job)>;

    /// `run` runs a job somewhere, sooner or later; none: on a thread of this.
    explicit BathReckoner(Run run = {}, QObject* parent = nullptr);
    ~BathReckoner() override;

    /// Returns at once. The state has a card.
    void reckon(const State& state);
    [[nodiscard]] bool isBusy() const noexcept { return m_asked != m_answered; }
    /// None before the first answer.
    [[nodiscard]] const std::optional<BathReckoned>& last() const noexcept { return m_last; }

signals:
    void reckoned();

private:
    void take(int asked, const BathReckoned& answer);

    int m_asked = 0, m_answered = 0;
    std::optional<BathReckoned> m_last;
    Run m_run;
    QThreadPool m_worker;
};

}  // namespace bathside::ui
