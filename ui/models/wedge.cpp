#include "ui/models/wedge.h"

#include "core/scan/scanned_code.h"

namespace bathside::ui {

bool Wedge::isQuick(quint64 ms) const { return ms >= m_last && ms - m_last <= kLongestGapMs; }

Wedge::Answer Wedge::release()
{
    m_held.clear();
    return Answer::ReleaseAndPass;
}

// A blank never begins a code: the pedal's key is not held up.
Wedge::Answer Wedge::sign(const Key& key)
{
    const bool goesOn = isHolding() && isQuick(key.ms) && m_held.size() < qsizetype{kLongestScan};
    m_last = key.ms;
    if (!goesOn && key.sign == u' ')
        return release();
    if (!goesOn) {
        const bool first = !isHolding();
        m_held = key.sign;
        return first ? Answer::Hold : Answer::ReleaseAndHold;
    }
    m_held += key.sign;
    return Answer::Hold;
}

Wedge::Answer Wedge::end(const Key& key)
{
    if (m_held.size() < kFewestSigns || !isQuick(key.ms))
        return release();
    m_text = std::exchange(m_held, {});
    m_last = key.ms;
    m_justScanned = true;
    return Answer::Scanned;
}

Wedge::Answer Wedge::press(const Key& key)
{
    const bool afterScan = std::exchange(m_justScanned, false) && isQuick(key.ms);
    if (key.ms == 0 || key.repeats)
        return release();
    switch (key.sort) {
        case Key::Sort::Sign:
            return sign(key);
        case Key::Sort::End:
            if (!afterScan)
                return end(key);
            m_justScanned = true;
            return Answer::Swallow;
        case Key::Sort::Other:
            return release();
    }
    Q_UNREACHABLE();
}

}  // namespace bathside::ui
