#pragma once

// The injector: shots weighed one after the other, or together in a cylinder; the result; one tap
// to record.
//
// A weight that is set asks for the next at once, so that ten take ten entries and one tap; where a
// balance is set, each of its shots does the same. What was weighed stays until it is recorded or
// started over, also when the program ends.

#include "core/checks/dose_measured.h"
#include "ui/checks/ask_balance.h"
#include "ui/checks/check_view.h"

namespace bathside::ui {

class InjectorView final : public CheckView {
public:
    InjectorView(CheckContext& context, const BalanceDesk& balance);

    [[nodiscard]] CheckSheet sheet() const override;
    [[nodiscard]] QList<CheckAction> actions() override;
    [[nodiscard]] bool isHeldToCard() const override;
    /// What the balance sends while something is asked here.
    void hear(const WeightSource::Said& said);
    /// Something else is asked from now on: shots do not count.
    void stopWeighing() { m_weigher.reset(); }

private:
    void weigh();
    void askWeight();
    void take(std::int64_t tenths);
    void askShots();
    void askCollected(std::int64_t shots);
    void askGraduation(std::int64_t shots, MicroLitres collected);
    void askSettings();
    void setting(const QString& id);
    void askWater();
    void askDensity();
    void askDose();
    void record(const AnswerTap& tap);
    void keepDraft();
    void addLeft(CheckSheet& sheet) const;
    [[nodiscard]] CheckAction recordAction();
    [[nodiscard]] QString weighLine() const;

    [[nodiscard]] MicroLitres dose() const;
    [[nodiscard]] ShotLiquid liquid() const;
    /// None with too little measured.
    [[nodiscard]] std::optional<DoseMeasured> measured() const;

    BalanceDesk m_balance;
    std::optional<ShotWeigher> m_weigher;       // while weights are asked for
    bool m_hasTold = false;                     // what is wrong with the balance
    std::optional<MicroLitres> m_dose;          // none: the card's
    std::optional<ShotLiquid> m_liquid;         // none: the card's diluent, else water
    std::vector<std::int64_t> m_weights;        // tenths of a mg
    std::optional<WallTime> m_leftAt;           // of weights that the program was ended over
    std::optional<CollectedShots> m_collected;  // instead of those weighed
};

}  // namespace bathside::ui
