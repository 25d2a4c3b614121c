#include "ui/theme/theme.h"

#include <QApplication>
#include <QPalette>
#include <QStyleFactory>

namespace bathside::ui {
namespace {

QPalette forOthers(const Palette& p)
{
    QPalette q(p.panel(), p.ground());
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText,
                            QPalette::BrightText, QPalette::ToolTipText})
        q.setColor(role, p.ink());
    for (const auto role : {QPalette::Base, QPalette::Button, QPalette::ToolTipBase})
        q.setColor(role, p.panel());
    q.setColor(QPalette::Window, p.ground());
    q.setColor(QPalette::AlternateBase, p.ground());
    q.setColor(QPalette::PlaceholderText, p.softInk());
    q.setColor(QPalette::Mid, p.rule());
    q.setColor(QPalette::Highlight, p.tone(Role::Primary).fill);
    q.setColor(QPalette::HighlightedText, p.tone(Role::Primary).ink);
    q.setColor(QPalette::Link, p.focus());
    return q;
}

}  // namespace

Theme& theme()
{
    static Theme one;
    return one;
}

void Theme::setMetrics(const Metrics& metrics)
{
    if (metrics == m_metrics)
        return;
    m_metrics = metrics;
    emit changed();
}

void Theme::setScheme(Scheme scheme)
{
    if (scheme == m_scheme)
        return;
    m_scheme = scheme;
    emit changed();
}

void Theme::dress(QApplication& application)
{
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    const auto dressed = [this] {
        QApplication::setPalette(forOthers(palette()));
        QApplication::setFont(m_metrics.font(Metrics::kSmall));
    };
    dressed();
    connect(this, &Theme::changed, &application, dressed);
}

}  // namespace bathside::ui
