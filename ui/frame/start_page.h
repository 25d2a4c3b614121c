#pragma once

// The first thing a person sees: rehearse the demo day, or start the real one. Also says, in one
// sentence, why a day could not be started. No trail is open yet.

#include <QWidget>

#include "ui/models/preferences.h"

namespace bathside::ui {

class Banner;
class Label;
class TapButton;

class StartPage final : public QWidget {
    Q_OBJECT

public:
    explicit StartPage(Preferences& preferences, QWidget* parent = nullptr);

    /// Why the last choice did not work; empty: nothing to say.
    void showFault(const QString& sentence);

signals:
    void rehearsalChosen();
    void realChosen();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void place();
    void render();
    void nextLanguage();

    Preferences& m_preferences;
    Label *m_title, *m_text, *m_fault;
    TapButton *m_rehearse, *m_real, *m_language, *m_scheme;
};

}  // namespace bathside::ui
