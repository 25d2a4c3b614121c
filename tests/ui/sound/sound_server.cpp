#include "tests/ui/sound/sound_server.h"

#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <stdexcept>
#include <thread>

#include <signal.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

namespace bathside::test {

namespace {

constexpr auto kServesWithin = std::chrono::seconds{20};

struct Output {
    std::string text;
    int status = -1;
};

Output run(const std::string& command)
{
    Output output;
    FILE* pipe = ::popen(command.c_str(), "r");
    if (!pipe)
        return output;
    std::array<char, 512> chunk{};
    while (std::fgets(chunk.data(), static_cast<int>(chunk.size()), pipe))
        output.text += chunk.data();
    output.status = ::pclose(pipe);
    return output;
}

std::filesystem::path newFolder()
{
    std::string pattern =
        (std::filesystem::temp_directory_path() / "bathside-sound-XXXXXX").string();
    if (!::mkdtemp(pattern.data()))
        throw std::runtime_error("no folder for the sound server");
    return pattern;
}

}  // namespace

SoundServer::SoundServer() : m_folder(newFolder())
{
    for (const char* name :
         {"HOME", "XDG_RUNTIME_DIR", "PULSE_RUNTIME_PATH", "XDG_CONFIG_HOME", "PULSE_STATE_PATH"})
        ::setenv(name, m_folder.c_str(), 1);
    ::setenv("PULSE_SERVER", address().c_str(), 1);
    ::setenv("PULSE_COOKIE", (m_folder / "cookie").c_str(), 1);
    start();
}

SoundServer::~SoundServer()
{
    kill();
    std::error_code ignored;
    std::filesystem::remove_all(m_folder, ignored);
}

std::string SoundServer::address() const { return "unix:" + socket().string(); }

void SoundServer::start()
{
    const std::string protocol =
        "module-native-protocol-unix auth-anonymous=1 socket=" + socket().string();
    const pid_t parent = ::getpid();
    m_pid = ::fork();
    if (m_pid == 0) {
        ::prctl(PR_SET_PDEATHSIG, SIGKILL);
        if (::getppid() != parent)
            ::_exit(1);
        // The sanitizers' variables are ours, not the daemon's.
        ::unsetenv("LD_PRELOAD");
        ::unsetenv("PULSE_SERVER");
        ::execlp("pulseaudio", "pulseaudio", "-n", "--daemonize=no", "--use-pid-file=no",
                 "--exit-idle-time=-1", "--realtime=no", "--high-priority=no", "--disable-shm=yes",
                 "--log-target=stderr", "--log-level=error", "-L", protocol.c_str(), nullptr);
        ::_exit(127);
    }
    const auto until = std::chrono::steady_clock::now() + kServesWithin;
    while (run("pactl -s " + address() + " info 2>&1").status != 0) {
        if (std::chrono::steady_clock::now() > until)
            throw std::runtime_error("the sound server does not answer");
        std::this_thread::sleep_for(std::chrono::milliseconds{20});
    }
}

void SoundServer::kill()
{
    if (m_pid <= 0)
        return;
    ::kill(m_pid, SIGKILL);
    ::waitpid(m_pid, nullptr, 0);
    m_pid = -1;
    m_modules.clear();
    std::filesystem::remove(socket());
}

void SoundServer::freeze() const { ::kill(m_pid, SIGSTOP); }

void SoundServer::thaw() const { ::kill(m_pid, SIGCONT); }

std::string SoundServer::control(const std::string& arguments) const
{
    const Output output = run("pactl -s " + address() + " " + arguments + " 2>&1");
    if (output.status != 0)
        throw std::runtime_error("pactl " + arguments + ": " + output.text);
    return output.text;
}

void SoundServer::addDevice(const std::string& name)
{
    m_modules[name] =
        control("load-module module-null-sink rate=48000 channels=1 sink_name=" + name);
}

void SoundServer::removeDevice(const std::string& name)
{
    control("unload-module " + m_modules.at(name));
    m_modules.erase(name);
}

}  // namespace bathside::test
