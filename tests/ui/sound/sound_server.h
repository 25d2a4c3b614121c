#pragma once

// A sound server of a test's own: PulseAudio with null devices, in a folder of its own, for root
// and for anybody.
//
// Dies with the test. What a null device is given can be recorded from its monitor (monitor.h). The
// environment is set so that everything in the process finds this server and no other.

#include <filesystem>
#include <map>
#include <string>

#include <sys/types.h>

namespace bathside::test {

class SoundServer {
public:
    SoundServer();
    SoundServer(const SoundServer&) = delete;
    SoundServer& operator=(const SoundServer&) = delete;
    ~SoundServer();

    [[nodiscard]] std::string address() const;

    /// Starts the daemon, without a device, and returns once it answers.
    void start();
    /// SIGKILL.
    void kill();
    /// SIGSTOP and SIGCONT.
    void freeze() const;
    void thaw() const;

    void addDevice(const std::string& name);
    void removeDevice(const std::string& name);
    /// What `pactl` prints when given these arguments; fails the test if it fails.
    std::string control(const std::string& arguments) const;

private:
    [[nodiscard]] std::filesystem::path socket() const { return m_folder / "native"; }

    std::filesystem::path m_folder;
    pid_t m_pid = -1;
    std::map<std::string, std::string> m_modules;  // by device
};

}  // namespace bathside::test
