#pragma once

// The injector: shots weighed one after the other, or together in a cylinder; the result; one tap
// to record.
//
// A weight that is set asks for the next at once, so that ten take ten entries and one tap. What
// was weighed stays until it is recorded or started over.

#include "core/checks/dose_measured.h"
#include "ui/checks/check_view.h"

namespace bathside::ui {

class InjectorView final : public CheckView {
public:
    using CheckView::CheckView;

    [[nodiscard]] CheckSheet sheet() const override;
    [[nodiscard]] QList<CheckAction> actions() override;

private:
    void askWeight();
    void askShots();
    void askCollected(std::int64_t shots);
    void askGraduation(std::int64_t shots, MicroLitres collected);
    void askSettings();
    void setting(const QString& id);
    void askWater();
    void askDensity();
    void askDose();
    void record(const AnswerTap& tap);
    [[nodiscard]] CheckAction recordAction();

    [[nodiscard]] MicroLitres dose() const;
    /// None with too little measured.
    [[nodiscard]] std::optional<DoseMeasured> measured() const;

    std::optional<MicroLitres> m_dose;  // none: the card's
    WeighedShots m_weighed;
    std::optional<CollectedShots> m_collected;  // instead of those weighed
};

}  // namespace bathside::ui
