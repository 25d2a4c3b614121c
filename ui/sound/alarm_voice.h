#pragma once

// What is to be sounded now: the part of the alarm thread that needs no thread.
//
// Asks the published source at each look, begins and ends bursts, repeats them, and reports. It
// never sounds a level before the source says so, and asks again at the source's next change, at
// the next repeat and once a second. When the sounder changes to another device, what sounds is
// begun again there.

#include <optional>
#include <vector>

#include "core/alarms/sounding.h"
#include "core/base/time.h"
#include "ui/sound/sound_report.h"
#include "ui/sound/sounder.h"

namespace bathside::ui {

class AlarmVoice {
public:
    static constexpr Micros kLookAgain = std::chrono::seconds{1};

    AlarmVoice(Sounder& sounder, const SoundBook& book) : m_sounder(sounder), m_book(book) {}

    /// The source was changed then: what it finds due at once is late from there on.
    void notePublished(BootTime at) { m_published = at; }
    /// Does what is due and returns when to look again at the latest. No source: silence.
    BootTime look(const SoundSource* source, const Stamp& now, std::vector<SoundReport>& reports);

private:
    void raise(const SoundSource& source, const Stamp& now, std::vector<SoundReport>& reports);
    void sound(const Stamp& now, std::vector<SoundReport>& reports);
    [[nodiscard]] BootTime dueSince(const SoundSource& source, const Stamp& now) const;
    [[nodiscard]] BootTime nextLook(const Stamp& now) const;

    Sounder& m_sounder;
    const SoundBook& m_book;
    Sounding m_current;                // what the source said last
    BootTime m_due{};                  // since when it is due
    std::optional<BootTime> m_repeat;  // when the burst is due again; none: not begun
    std::uint64_t m_generation = 0;    // of the sounder, when the burst was begun
    bool m_isReported = false;         // that it was sounded
    std::optional<BootTime> m_lastLook;
    BootTime m_published{};
};

}  // namespace bathside::ui
