#pragma once

// Drafts in a file beside the trail: "trail.db" has "trail.drafts". Mode 0600; written whole or not
// at all.
//
// What cannot be read holds nothing; what cannot be written is kept until the program ends. UI
// thread.

#include <filesystem>
#include <map>

#include "ui/models/draft_shelf.h"

namespace bathside::app {

class DraftFile final : public ui::DraftShelf {
public:
    explicit DraftFile(std::filesystem::path file);

    [[nodiscard]] static std::filesystem::path beside(const std::filesystem::path& trail);

    [[nodiscard]] std::string kept(const QString& name) const override;
    void keep(const QString& name, const std::string& document) override;

private:
    void write() const;

    std::filesystem::path m_file;
    std::map<QString, std::string> m_drafts;
};

}  // namespace bathside::app
