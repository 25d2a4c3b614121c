#pragma once

// The second path: Qt Multimedia's sink with its default buffer, on a thread of its own.
//
// Slower to start a sound than our own stream (DEVELOPERS.md, the decision on sound), but other
// code on the way to the server. It cannot tell a muted device, so it never follows when the first
// path found every device muted or absent. The thread is started at the first `open` and never
// waited for while alarms wait.

#include <memory>

#include "ui/sound/audio_out.h"

class QThread;

namespace bathside::ui {

class QtOut final : public AudioOut {
public:
    QtOut();
    ~QtOut() override;

    void open(const std::string& device) override;
    void close() override;
    void play(Voice voice, std::shared_ptr<const Burst> burst) override;
    void silence() override;
    [[nodiscard]] OutStatus status() const override;
    [[nodiscard]] bool canFollow(OutFault fault) const override;
    void listen(std::function<void()> changed) override;

private:
    class Worker;
    struct Shared;

    void startThread();

    std::shared_ptr<Shared> m_shared;
    std::unique_ptr<QThread> m_thread;  // none before the first `open`
    Worker* m_worker = nullptr;         // lives on the thread and is deleted there
};

}  // namespace bathside::ui
