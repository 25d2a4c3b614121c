#pragma once

// The stores: every lot with its balance, expiry, place and standing; what comes in, is moved,
// counted, taken out, set apart and allowed; warnings; and the shift reckoned up, with what does
// not add up first.
//
// A tap on a lot asks what to do with it. A delivery's file is read and shown before it is taken.
// Places: stores.bench, .more, .receive, .file, .take, .warnings, .sums; lots under stores.lot.X;
// what is asked as on the bench (ask.X, pad.X, letters.X).

#include <vector>

#include "core/bench/delivery.h"
#include "core/stores/warnings.h"
#include "ui/bench/ask_pane.h"
#include "ui/bench/bench_context.h"
#include "ui/frame/page.h"
#include "ui/models/delivery_source.h"
#include "ui/review/signing.h"
#include "ui/stores/lot_tile.h"

namespace bathside::ui {

class Banner;
class FieldSheet;
class ReckoningView;
struct Sheet;

class StoresPage final : public Page {
    Q_OBJECT

public:
    struct Parts {
        StationModel& model;
        const Language& language;
        const DeliverySource& deliveries;
        PinDesk& pins;
        std::string zone;  // IANA name of the site's zone
    };

    explicit StoresPage(Parts parts, QWidget* parent = nullptr);

    /// A label opens what can be done with its lot; a lot that is new here, the receipt. Where a
    /// signature is asked for, a person's code says whose.
    bool usesScan(const QString& text, const TapStamp& stamp) override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    enum class View : std::uint8_t { Lots, Warnings, Delivery, Sums };

    // taps (stores_page.cpp)
    [[nodiscard]] TapButton* button(const char* name);
    void connectAll();
    void ask(const TapStamp& stamp, const std::function<void()>& question);
    void pressTile(std::size_t index, const TapStamp& stamp);
    void pressMore();
    void pressFile(const TapStamp& stamp);
    void pressTake(const TapStamp& stamp);
    void readFile(const QString& path);
    void put(View view);
    void showSheet(const Sheet& sheet);
    void showRefusal(const Refusal& refusal);
    void tell(const QString& whyNot);

    // scans (stores_scan.cpp)
    void askScanned(const std::vector<Stock>& known);

    // what is shown (stores_render.cpp)
    void place();
    void placeTiles(const QRect& room);
    void placeBar();
    void makeTiles();
    void render();
    void renderTiles();
    void renderBar();
    void renderNotice();
    void renderView();
    [[nodiscard]] std::vector<const StockLot*> lots() const;  // as they are shown
    [[nodiscard]] std::vector<StoreWarning> warnings() const;
    [[nodiscard]] std::chrono::sys_days day() const;
    [[nodiscard]] std::int64_t nearDays() const;
    [[nodiscard]] int pages() const;
    [[nodiscard]] int pageNow() const;
    [[nodiscard]] bool takes() const;  // a delivery stands there to be taken

    Parts m_parts;
    StationModel& m_model;
    PullDraft m_draft;  // what is asked at the bench wants one; nothing is planned here
    std::vector<LotTile*> m_tiles;
    TapButton *m_bench, *m_more, *m_receive, *m_file, *m_take, *m_warnings, *m_sums;
    Banner* m_notice;
    FieldSheet* m_sheet;
    ReckoningView* m_reckoning;
    AskPane* m_ask;
    Signing m_signing;
    BenchContext m_context;
    View m_view = View::Lots;
    Intake m_delivery;
    bool m_deliveryTaken = false;
    int m_columns = 2, m_rows = 3, m_page = 0;
    std::optional<Stamp> m_refusedAt;
    QString m_refusal;
};

}  // namespace bathside::ui
