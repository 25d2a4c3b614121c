#pragma once

// The Record page's answers from the session's own trail.
//
// Reads go through the store's thread in short slices, so that taps are stored between them; an
// export is written, and a copy is checked, on threads of their own. Answers come on
// the UI thread; those that come after this is gone are dropped. Outlived by the session.

#include <QThreadPool>
#include <atomic>
#include <memory>

#include "app/station/session.h"
#include "core/trail/store/earlier_days.h"
#include "ui/models/preferences.h"
#include "ui/models/record_source.h"

namespace bathside::app {

struct ExportJob;

class TrailRecord final : public ui::RecordSource {
    Q_OBJECT

public:
    explicit TrailRecord(Session& session, QObject* parent = nullptr);
    /// An export that is being written breaks off, without a manifest.
    ~TrailRecord() override;

    [[nodiscard]] std::string zone() const override;
    [[nodiscard]] ui::Date currentDay() const override;
    [[nodiscard]] std::vector<ui::RecordPlace> places() const override;

    void readDays(const ui::DayRange& days, Seq after) override;
    void readStretch(const ui::DayRange& days, const ui::EntryWish& wish, Seq before) override;
    [[nodiscard]] Seq beginsAfter() const override;
    void findDay(Seq seq) override;
    void verify() override;
    void exportDays(const ui::DayRange& days, const QString& folder, char decimalSign) override;
    void copyTrail(const QString& folder) override;
    void askSheet(ui::Date date) override;
    void witness(const SealCode& code) override;

    /// Whose paper and language day sheets have from now on; A4 and English before.
    void drawBy(const ui::Preferences& preferences) { m_preferences = &preferences; }
    [[nodiscard]] Result<ui::SetPages, ui::PrintFault> drawn(const DaySheet& sheet) const;

private:
    void readLastFile(const ui::DayRange& days, Seq after, const store::EarlierDays& earlier);
    void start(const std::shared_ptr<ExportJob>& job);

    Session& m_session;
    const ui::Preferences* m_preferences = nullptr;
    QThreadPool m_threads;  // of exports
    std::shared_ptr<std::atomic<bool>> m_stop = std::make_shared<std::atomic<bool>>(false);
};

}  // namespace bathside::app
