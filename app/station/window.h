#pragma once

// The one window: shows one thing at a time over its whole face, and does not close within the
// critical window.

#include <QWidget>
#include <functional>

namespace bathside::app {

class Window final : public QWidget {
    Q_OBJECT

public:
    Window();

    /// Takes `content` and shows it in place of what was there before.
    void put(QWidget* content);
    [[nodiscard]] QWidget* content() const noexcept { return m_content; }
    /// Asked before closing; true: it may.
    void mayClose(std::function<bool()> question) { m_mayClose = std::move(question); }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    QWidget* m_content = nullptr;
    std::function<bool()> m_mayClose;
};

}  // namespace bathside::app
