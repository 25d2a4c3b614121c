#pragma once

// Tells a scanner that types as a keyboard from a person, by speed and by the key at the end.
//
// A scan is four signs or more, each no more than 35 ms after the one before, and as quickly after
// them Enter, Tab or a line feed. Anything else is a person's, and every key of it must be
// delivered, in order.
// Times are the input events' own, so that a screen that was busy does not matter; a key without
// one is never a scanner's. Pure: no clock, no timer, no widget. (Gap and count: common practice of
// such programs, and below what fingers do.)

#include <QString>
#include <QtGlobal>

namespace bathside::ui {

class Wedge final {
public:
    static constexpr quint64 kLongestGapMs = 35;
    static constexpr qsizetype kFewestSigns = 4;
    static constexpr int kPatienceMs = 60;  // no further key for so long: what is held is typing

    struct Key {
        enum class Sort { Sign, End, Other } sort = Sort::Other;
        QChar sign{};
        quint64 ms = 0;  // the event's own time; 0: none
        bool repeats = false;
    };

    /// What to do with a key and with those that are held.
    enum class Answer {
        Hold,
        ReleaseAndHold,  // those before are a person's: deliver them first
        ReleaseAndPass,  // so is this one
        Scanned,         // all of them, and this end key, are a scan: its text is in `text()`
        Swallow,         // an end key more, as some scanners send
    };

    [[nodiscard]] Answer press(const Key& key);
    /// Nothing came for `kPatienceMs`: what is held is to be delivered.
    void giveUp() { m_held.clear(); }

    /// The last scan.
    [[nodiscard]] const QString& text() const noexcept { return m_text; }
    [[nodiscard]] bool isHolding() const noexcept { return !m_held.isEmpty(); }

private:
    [[nodiscard]] bool isQuick(quint64 ms) const;
    Answer sign(const Key& key);
    Answer end(const Key& key);
    Answer release();

    QString m_held, m_text;
    quint64 m_last = 0;  // of the last key held, or of the last scan's end
    bool m_justScanned = false;
};

}  // namespace bathside::ui
