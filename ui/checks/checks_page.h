#pragma once

// Checks: the injector's dose, the birds, the cryogen vessel. One view at a time: what is known or
// measured, and below it what can be tapped.
//
// Places: checks.bench, .injector, .birds, .vessel, .more; of the views .line, .count, .set,
// .weigh, .cylinder, .looked, .target, .which, .dip, .describe, .record, .save; what is asked as on
// the bench (ask.X, pad.X, letters.X). What is typed outlives a call to the bench.

#include <memory>

#include "ui/bench/ask_pane.h"
#include "ui/charts/save_picture.h"
#include "ui/checks/ask_balance.h"
#include "ui/checks/check_view.h"
#include "ui/frame/page.h"

namespace bathside::ui {

class Banner;
class BirdsView;
class Chart;
class InjectorView;
class VesselView;

class ChecksPage final : public Page {
    Q_OBJECT

public:
    struct Parts {
        StationModel& model;
        const Language& language;
        BalanceDesk balance;
        DraftShelf& drafts;
        SavePicture save;
        std::string zone;  // IANA name of the site's zone
    };

    explicit ChecksPage(Parts parts, QWidget* parent = nullptr);
    ~ChecksPage() override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    enum class View : std::uint8_t { Injector, Birds, Vessel };
    static constexpr std::size_t kActions = 6;

    [[nodiscard]] TapButton* button(const QString& place);
    void connectAll();
    void pressAction(std::size_t index, const TapStamp& stamp);
    void put(View view);
    void showRefusal(const Refusal& refusal);
    void savePicture();
    void tell(Role role, const QString& words);
    void hear(const WeightSource::Said& said);
    [[nodiscard]] CheckView& view() const;

    void place();
    void placeRow(const QList<TapButton*>& targets, const QRect& row);
    void render();
    void renderActions();
    void renderBar();
    void renderSheet();

    Parts m_parts;
    StationModel& m_model;
    PullDraft m_draft;  // what is asked at the bench wants one; nothing is planned here
    TapButton *m_bench, *m_injector, *m_birds, *m_vessel, *m_more;
    std::array<TapButton*, kActions> m_actions{};
    QList<CheckAction> m_offered;
    FieldSheet* m_sheet;
    CheckSheet m_shown;
    Chart* m_chart;
    Banner* m_notice;
    AskPane* m_ask;
    BenchContext m_asking;
    CheckContext m_context;
    std::unique_ptr<InjectorView> m_injectorView;
    std::unique_ptr<BirdsView> m_birdsView;
    std::unique_ptr<VesselView> m_vesselView;
    View m_view = View::Injector;
    std::optional<Stamp> m_toldAt;
    Role m_toldAs = Role::Neutral;
    QString m_told;
};

}  // namespace bathside::ui
