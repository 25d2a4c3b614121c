#pragma once

// The loudspeaker as set-up tries it: play the alarm, say which one it was, take another. Returns
// at once. UI thread.

#include <QString>
#include <vector>

namespace bathside::ui {

struct Loudspeaker {
    QString id;
    QString name;
};

class SoundTest {
public:
    SoundTest() = default;
    SoundTest(const SoundTest&) = delete;
    SoundTest& operator=(const SoundTest&) = delete;
    virtual ~SoundTest() = default;

    virtual void play() = 0;
    /// The one in use; empty: none.
    [[nodiscard]] virtual QString device() const = 0;
    [[nodiscard]] virtual std::vector<Loudspeaker> devices() const = 0;
    virtual void use(const QString& id) = 0;
    /// It was heard as loud as it is now: not to become softer.
    virtual void heard() = 0;
};

}  // namespace bathside::ui
