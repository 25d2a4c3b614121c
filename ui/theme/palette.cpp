#include "ui/theme/palette.h"

namespace bathside::ui {
namespace {

QColor rgb(QRgb value) { return QColor::fromRgb(value); }

}  // namespace

const Palette& Palette::of(Scheme scheme)
{
    static const Palette kLight = light();
    static const Palette kDark = dark();
    return scheme == Scheme::Light ? kLight : kDark;
}

QColor Palette::paperInk() { return rgb(0x000000); }
QColor Palette::paper() { return rgb(0xFFFFFF); }

// Tones in the order of Role: Neutral, Quiet, Primary, Good, HeadsUp, Limit, Overrun, Rehearsal.
Palette Palette::light()
{
    Palette p;
    p.m_ground = rgb(0xF1F3F0);
    p.m_panel = rgb(0xFFFFFF);
    p.m_ink = rgb(0x12181D);
    p.m_softInk = rgb(0x4A555E);
    p.m_rule = rgb(0xCDD2CF);
    p.m_track = rgb(0xE1E5E2);
    p.m_focus = rgb(0x0B57D0);
    const auto tone = [&p](Role role, QRgb fill, QRgb ink, QRgb edge, QRgb bar) {
        p.m_tones[static_cast<int>(role)] = {rgb(fill), rgb(ink), rgb(edge), rgb(bar)};
    };
    tone(Role::Neutral, 0xFFFFFF, 0x12181D, 0x66717A, 0x66717A);
    tone(Role::Quiet, 0xE9ECEA, 0x454F57, 0x7B858C, 0x7B858C);
    tone(Role::Primary, 0x17387A, 0xFFFFFF, 0x17387A, 0xFFFFFF);
    tone(Role::Good, 0xCFF0E9, 0x07332C, 0x14776A, 0x14776A);
    tone(Role::HeadsUp, 0xFADF3A, 0x2A1F00, 0x8A6200, 0x2A1F00);
    tone(Role::Limit, 0xF9792A, 0x140A00, 0xA84300, 0x140A00);
    tone(Role::Overrun, 0x760A42, 0xFFFFFF, 0x760A42, 0xFFFFFF);
    tone(Role::Rehearsal, 0xE5DFF7, 0x2B1B59, 0x6B54B0, 0x6B54B0);
    return p;
}

Palette Palette::dark()
{
    Palette p;
    p.m_ground = rgb(0x0E1317);
    p.m_panel = rgb(0x1A2127);
    p.m_ink = rgb(0xF1F4F5);
    p.m_softInk = rgb(0xAAB5BD);
    p.m_rule = rgb(0x333D45);
    p.m_track = rgb(0x2A343B);
    p.m_focus = rgb(0x7FB8FF);
    const auto tone = [&p](Role role, QRgb fill, QRgb ink, QRgb edge, QRgb bar) {
        p.m_tones[static_cast<int>(role)] = {rgb(fill), rgb(ink), rgb(edge), rgb(bar)};
    };
    tone(Role::Neutral, 0x1F2830, 0xF1F4F5, 0x84919B, 0x84919B);
    tone(Role::Quiet, 0x171D22, 0xA9B3BA, 0x6C7882, 0x6C7882);
    tone(Role::Primary, 0xABD3F6, 0x06213F, 0xABD3F6, 0x06213F);
    tone(Role::Good, 0x183A33, 0xD2F5EC, 0x45B8A5, 0x45B8A5);
    tone(Role::HeadsUp, 0xF7E046, 0x1C1400, 0xF7E046, 0x1C1400);
    tone(Role::Limit, 0xF38036, 0x140A00, 0xF38036, 0x140A00);
    tone(Role::Overrun, 0x971F79, 0xFFFFFF, 0xF490DC, 0xFFFFFF);
    tone(Role::Rehearsal, 0x352A5C, 0xEAE3FF, 0x9C86E0, 0x9C86E0);
    return p;
}

}  // namespace bathside::ui
