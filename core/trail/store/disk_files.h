#pragma once

// The trail's file and its spools on disk.
//
// A spool stands beside the trail or in another given folder, as `<trail>.spool-<n>`; once merged
// it is renamed to `….merged` and kept. Numbers are never used twice. On the trail's thread.

#include <optional>

#include "core/trail/failover.h"
#include "core/trail/store/trail_db.h"

namespace bathside::store {

class DiskFiles final : public TrailFiles {
public:
    struct Places {
        std::filesystem::path trail;
        std::vector<std::filesystem::path>
            spoolFolders;                  // tried in order; none: nothing is spooled
        std::filesystem::path spoolsOf{};  // the first file of a trail of several; empty: `trail`
        Origin origin{};                   // of the trail, where it is made
    };

    /// `mode` is for the first opening; later ones want the file to be there.
    explicit DiskFiles(Places places, Mode mode = Mode::Station)
        : m_places(std::move(places)), m_mode(mode)
    {
    }

    [[nodiscard]] Result<std::unique_ptr<TrailStore>, StoreTrouble> openTrail() override;
    [[nodiscard]] Result<Spool, StoreTrouble> makeSpool(const Head& after) override;
    [[nodiscard]] std::vector<std::string> unmerged() override;
    [[nodiscard]] Result<Spool, StoreTrouble> openSpool(const std::string& name) override;
    void markMerged(const std::string& name) override;

    /// Why the trail was refused the last time it was opened.
    [[nodiscard]] const std::optional<OpenFault>& refusal() const noexcept { return m_refusal; }

private:
    struct Found {
        std::filesystem::path file;
        int number = 0;
        bool merged = false;
    };
    [[nodiscard]] std::vector<Found> spools() const;
    [[nodiscard]] std::string spoolPrefix() const;

    Places m_places;
    Mode m_mode;
    std::optional<OpenFault> m_refusal;
};

}  // namespace bathside::store
