#pragma once

// What the Record page asks of the trail: the entries of local days, whole or in stretches, verify,
// export, copy.
//
// Nothing waits: each question is answered by one signal (`entriesRead` by any number and
// `laterRead` before `dayRead`), on the UI thread. Nothing of the record can be changed through it.
// An export is a folder of its own under the place; a copy is one file there, checked after
// writing. UI thread.

#include <QObject>
#include <QString>
#include <chrono>
#include <functional>
#include <limits>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "core/record/day_sheet.h"
#include "core/record/export.h"
#include "core/scan/own_code.h"
#include "core/trail/verify.h"
#include "ui/print/fault.h"

namespace bathside::ui {

using Date = std::chrono::year_month_day;
[[nodiscard]] inline Date daysAfter(Date date, int days)
{
    return Date{std::chrono::sys_days(date) + std::chrono::days(days)};
}

/// Local days in a row, both within.
struct DayRange {
    Date first{}, last{};
    [[nodiscard]] int count() const
    {
        return static_cast<int>(
                   (std::chrono::sys_days(last) - std::chrono::sys_days(first)).count()) +
               1;
    }
    friend bool operator==(const DayRange&, const DayRange&) = default;
};

/// What the entries of many days shall be about; all that is set must hold.
struct EntryWish {
    std::function<bool(std::string_view kind)> isOfKind{};  // null: any
    bool orMended = false;                                  // or corrected or taken back
    std::string person{}, bag{}, lot{};                     // empty: any
};

/// Where an export or a copy may go.
struct RecordPlace {
    QString folder;
    QString stick;  // its name; empty: this computer's documents
    friend bool operator==(const RecordPlace&, const RecordPlace&) = default;
};

struct VerifyAnswer {
    Verification chain;
    std::optional<bool> indexesAgree;     // none: they could not be compared
    std::optional<StoreTrouble> trouble;  // reading broke off
    [[nodiscard]] bool isSound() const
    {
        return !chain.flaw && !chain.badSeal && indexesAgree.value_or(false) && !trouble;
    }
};

struct ExportAnswer {
    static constexpr int kMostDaysOnPaper = 31;  // a longer export has no day sheets

    DayRange days;
    QString folder;
    Manifest manifest;  // `count` 0: there was nothing of these days, and nothing was written
    std::optional<ExportFault> fault;
    std::optional<PrintFault> sheetFault{};  // the day sheet alone is not among the files
    std::vector<Seq> damaged{};              // entries that cannot be read: in no sheet
};

/// A day's sheet, to be drawn; null: there is nothing of that day.
struct SheetAnswer {
    Date date{};
    std::shared_ptr<const DaySheet> sheet;
    std::optional<ExportFault> fault;
};

/// What the record has where the code of a printed day sheet says a head.
struct WitnessAnswer {
    enum class Found : std::uint8_t {
        Agrees,
        Differs,
        NotReached,  // the record has fewer entries
        Before,      // the record in use begins later
    };
    SealCode code;
    Found found{};
    std::optional<StoreTrouble> trouble;  // it could not be read
};

struct CopyAnswer {
    QString file;
    VerifyAnswer check;                   // of the copy
    std::optional<StoreTrouble> trouble;  // it could not be written
    QStringList renamed{};  // copies of earlier files there, where theirs are another file's names
};

class RecordSource : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    /// IANA name of the zone by which days are cut.
    [[nodiscard]] virtual std::string zone() const = 0;
    /// The day that what is tapped now belongs to: that of the open shift, else today.
    [[nodiscard]] virtual Date currentDay() const = 0;
    /// Those there are at the moment; never empty.
    [[nodiscard]] virtual std::vector<RecordPlace> places() const = 0;

    /// The entries of these days' record after that seq.
    virtual void readDays(const DayRange& days, Seq after) = 0;
    /// The last `kStretch` entries of these days before that seq that are about it, of the file in
    /// use; what points at them as `laterRead`.
    virtual void readStretch(const DayRange& days, const EntryWish& wish, Seq before) = 0;
    static constexpr int kStretch = 1000;
    static constexpr Seq kNewest = std::numeric_limits<Seq>::max();
    /// Entries up to this one are in earlier files of a trail that goes on after damage; 0: none.
    [[nodiscard]] virtual Seq beginsAfter() const = 0;
    /// Of which day's record that entry is.
    virtual void findDay(Seq seq) = 0;
    virtual void verify() = 0;
    virtual void exportDays(const DayRange& days, const QString& folder, char decimalSign) = 0;
    /// Between pulls only.
    virtual void copyTrail(const QString& folder) = 0;
    virtual void askSheet(Date date) = 0;
    virtual void witness(const SealCode& code) = 0;

signals:
    void entriesRead(const bathside::ui::DayRange& days,
                     const std::vector<bathside::Entry>& entries);
    /// What points at entries of these days from later ones, before `dayRead`.
    void laterRead(const bathside::ui::DayRange& days, const std::vector<bathside::Entry>& entries);
    void dayRead(const bathside::ui::DayRange& days,
                 const std::optional<bathside::StoreTrouble>& trouble);
    /// None: there is no such entry, or it could not be read.
    void dayFound(bathside::Seq seq, const std::optional<bathside::ui::Date>& day);
    void verified(const bathside::ui::VerifyAnswer& answer);
    void exported(const bathside::ui::ExportAnswer& answer);
    void copied(const bathside::ui::CopyAnswer& answer);
    void sheetRead(const bathside::ui::SheetAnswer& answer);
    void witnessed(const bathside::ui::WitnessAnswer& answer);
};

}  // namespace bathside::ui
