#include "app/system/other_program.h"

#include <unistd.h>

namespace bathside::app {

void becomeProgram(const std::filesystem::path& program, std::vector<std::string> words)
{
    std::vector<char*> argv;
    for (std::string& word : words)
        argv.push_back(word.data());
    argv.push_back(nullptr);
    execv(program.c_str(), argv.data());
}

}  // namespace bathside::app
