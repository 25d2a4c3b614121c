#pragma once

// The only colours in the house, light and dark. All of our own choice; that they keep the
// contrasts and stay apart for colour-blind eyes is tested (tests/ui/theme/palette_test.cpp).
//
// Every tone's `ink` on its `fill` keeps 7:1, its `bar` on its `fill` 3:1, its `edge` against
// ground and panel 3:1. A pressed target swaps ink and fill.

#include <QColor>

#include "ui/theme/role.h"

namespace bathside::ui {

enum class Scheme { Light, Dark };

/// How one role looks.
struct Tone {
    QColor fill;  // ground of a button, tile or strip
    QColor ink;   // words and marks on `fill`
    QColor edge;  // its outline, seen against what is around it
    QColor bar;   // bars drawn on `fill`
};

class Palette {
public:
    [[nodiscard]] static const Palette& of(Scheme scheme);

    /// On paper: black and white, for label printers know nothing else.
    [[nodiscard]] static QColor paperInk();
    [[nodiscard]] static QColor paper();

    [[nodiscard]] const QColor& ground() const noexcept { return m_ground; }  // behind everything
    [[nodiscard]] const QColor& panel() const noexcept { return m_panel; }    // raised surfaces
    [[nodiscard]] const QColor& ink() const noexcept { return m_ink; }        // words; 7:1 and more
    [[nodiscard]] const QColor& softInk() const noexcept
    {
        return m_softInk;
    }                                                                     // lesser words; 4.5:1
    [[nodiscard]] const QColor& rule() const noexcept { return m_rule; }  // hair lines, no meaning
    [[nodiscard]] const QColor& track() const noexcept
    {
        return m_track;
    }  // the spent part of a bar
    [[nodiscard]] const QColor& focus() const noexcept { return m_focus; }  // keyboard focus; 3:1
    [[nodiscard]] const Tone& tone(Role role) const { return m_tones[static_cast<int>(role)]; }

private:
    Palette() = default;
    [[nodiscard]] static Palette light();
    [[nodiscard]] static Palette dark();

    QColor m_ground, m_panel, m_ink, m_softInk, m_rule, m_track, m_focus;
    Tone m_tones[kRoles];
};

}  // namespace bathside::ui
