#pragma once

// What surrounds every page: the rehearsal banner, the status bar, the edge; and the one switch
// between pages.
//
// In the critical window the bench is shown and cannot be left. The pedal (ui/controls/pedal.h)
// presses the page's own step. What is scanned goes to the page or is said; what is refused of it
// is shown over any page. UI thread only.

#include <QWidget>
#include <map>

#include "core/scan/own_code.h"
#include "ui/frame/page.h"
#include "ui/frame/scan_notice.h"
#include "ui/models/station_model.h"
#include "ui/text/language.h"

namespace bathside::ui {

class Banner;
class Edge;
class Pedal;
class ScanListener;
class StatusBar;

class Frame final : public QWidget {
    Q_OBJECT

public:
    static constexpr auto kScanPlace = "scan";  // where a scan lands, as a tap does
    static constexpr auto kBench = "bench", kSetUp = "setup", kRecord = "record",
                          kStores = "stores", kPlan = "plan", kChecks = "checks",
                          kReview = "review", kPeople = "people";

    Frame(StationModel& model, const Language& language, QWidget* parent = nullptr);

    /// Takes the page; the first one is shown. Every page may be asked for by its id.
    void addPage(const QString& id, Page* page);
    [[nodiscard]] Page* page(const QString& id) const;
    [[nodiscard]] Page* current() const noexcept { return m_current; }

    /// Over the top of the page, until the next tap.
    void notice(const ScanNotice::Words& words);

public slots:
    /// False when there is no such page or the bench may not be left now.
    bool showPage(const QString& id);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

signals:
    /// The code of a printed day sheet, on whatever page.
    void sealScanned(const bathside::SealCode& code, const bathside::ui::TapStamp& stamp);

private:
    void place();
    void follow();
    void render();
    void put(Page* page);
    void takeScan(const QString& text, const TapStamp& stamp);
    [[nodiscard]] std::chrono::year thisYear() const;
    void showRefused(const QString& text, const Refusal& why);

    StationModel& m_model;
    Banner* m_rehearsal;
    StatusBar* m_status;
    Edge* m_edge;
    Pedal* m_pedal;
    ScanListener* m_scanner;
    ScanNotice* m_notice;
    std::map<QString, Page*> m_pages;
    Page* m_current = nullptr;
};

}  // namespace bathside::ui
