#pragma once

// The entries of local days as rows, each knowing what mended it and what it mends.
//
// Rows are inserted as they are read, never reset. An entry of a kind that this version does not
// know stands there with its kind and is shown as such. UI thread.

#include <QAbstractListModel>
#include <map>
#include <vector>

#include "core/trail/entry.h"
#include "ui/models/record_source.h"
#include "ui/record/about.h"

namespace bathside::ui {

struct DayRow {
    enum class Mend : std::uint8_t { None, Corrected, TakenBack };

    Entry entry;
    std::optional<Fact> fact;  // none: of a kind not known here
    Group group = Group::Station;
    About about;
    int shift = 0;  // which shift of the trail's part read so far
    Mend mend = Mend::None;
    std::set<Seq> links;  // entries that it points at and that point at it, of any day
};

class DayModel final : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role { SentenceRole = Qt::UserRole, TimeRole, PersonRole, MendRole, SeqRole, GroupRole };

    using QAbstractListModel::QAbstractListModel;

    /// Empties it for other days.
    void begin(std::string zone, const DayRange& days = {});
    /// After what is there; what comes again is left out.
    void append(const std::vector<Entry>& entries);
    /// What points at entries of these days from later ones: linked, not shown.
    void mendBy(const std::vector<Entry>& later);
    /// The language changed.
    void retranslate();

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

    [[nodiscard]] const std::vector<DayRow>& rows() const noexcept { return m_rows; }
    /// −1: not of these days.
    [[nodiscard]] int rowOf(Seq seq) const;
    [[nodiscard]] Seq lastSeq() const { return m_rows.empty() ? 0 : m_rows.back().entry.seq; }
    [[nodiscard]] const std::string& zone() const noexcept { return m_zone; }

    /// Directly, or by an ampoule of theirs.
    [[nodiscard]] bool isAboutBag(const DayRow& row, const std::string& bag) const;
    [[nodiscard]] bool isAboutLot(const DayRow& row, const std::string& lot) const;
    /// All that the day names, for the filter.
    [[nodiscard]] About named() const;

private:
    using Place = std::pair<int, AmpouleRef>;  // shift, ampoule

    [[nodiscard]] DayRow rowFrom(const Entry& entry);
    void learn(const DayRow& row);
    void link(Seq from, const About& about);
    void relearn(DayRow& mended, const About& by);

    [[nodiscard]] QString timeText(WallTime at) const;

    std::string m_zone;
    bool m_saysDay = false, m_saysYear = false;  // with the time
    std::vector<DayRow> m_rows;
    std::map<Place, std::set<std::string>> m_bags, m_lots;  // as said, and as corrected
    int m_shift = 0;
};

/// The sentence of a row; for a kind not known, which it is.
[[nodiscard]] QString sentenceOf(const DayRow& row);

}  // namespace bathside::ui
