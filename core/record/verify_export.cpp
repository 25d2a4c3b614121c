#include "core/record/verify_export.h"

#include <algorithm>

namespace bathside {
namespace {

// The longest line worth keeping; a longer one is no entry.
constexpr std::size_t kLongestLine = std::size_t(16) * 1024 * 1024;

Expectation expectationFrom(const std::optional<Manifest>& manifest, std::vector<Head> witnesses,
                            std::optional<std::string> key)
{
    Expectation expected;
    expected.key = std::move(key);
    expected.witnesses = std::move(witnesses);
    if (!manifest)
        return expected;
    expected.runs = manifest->runs;
    if (manifest->last.seq > 0)
        expected.witnesses.push_back(manifest->last);
    if (!manifest->station.empty())
        expected.station = StationId{manifest->station};
    return expected;
}

}  // namespace

ExportVerifier::ExportVerifier(std::optional<Manifest> manifest, std::vector<Head> witnesses,
                               std::optional<std::string> key)
    : m_manifest(std::move(manifest)),
      m_verifier(expectationFrom(m_manifest, std::move(witnesses), std::move(key)))
{
}

void ExportVerifier::add(std::string_view bytes)
{
    m_digest.add(bytes);
    m_bytes += static_cast<std::int64_t>(bytes.size());
    for (auto end = bytes.find('\n'); end != std::string_view::npos; end = bytes.find('\n')) {
        if (m_rest.empty()) {
            m_verifier.takeLine(bytes.substr(0, end));
        } else {
            m_rest.append(bytes.substr(0, end));
            m_verifier.takeLine(m_rest);
            m_rest.clear();
        }
        bytes.remove_prefix(end + 1);
    }
    if (m_rest.size() < kLongestLine)
        m_rest.append(bytes);
}

ExportVerification ExportVerifier::finish()
{
    if (!m_rest.empty())
        m_verifier.takeUnreadable(0, FlawKind::Unreadable);
    const Hash digest = m_digest.finish();
    return {.chain = m_verifier.finish(),
            .otherBytes = m_manifest && contradicts(*m_manifest, kEventsFile, m_bytes, digest)};
}

bool contradicts(const Manifest& manifest, std::string_view name, std::int64_t bytes,
                 const Hash& sha256)
{
    return std::ranges::any_of(manifest.files, [&](const Manifest::File& file) {
        return file.name == name && (file.bytes != bytes || file.sha256 != sha256);
    });
}

}  // namespace bathside
