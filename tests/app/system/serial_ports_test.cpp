#include "app/system/serial_ports.h"

#include <fstream>

#include <gtest/gtest.h>

#include "tests/support/temp_folder.h"

namespace bathside::app {
namespace {

TEST(SerialPortsTest, lastingNamesGoBeforeNumbers)
{
    const test::TempFolder folder;
    EXPECT_TRUE(serialPorts(folder / "none").empty());
    for (const char* name : {"ttyUSB0", "ttyACM1", "ttyS0", "null"})
        std::ofstream(folder / name) << "";
    EXPECT_EQ(serialPorts(folder.path()),
              (std::set<std::string>{folder / "ttyACM1", folder / "ttyUSB0"}));
    std::filesystem::create_directories(folder.path() / "serial" / "by-id");
    std::ofstream(folder.path() / "serial" / "by-id" / "usb-meter") << "";
    EXPECT_EQ(serialPorts(folder.path()),
              (std::set<std::string>{folder.path() / "serial" / "by-id" / "usb-meter"}));
}

}  // namespace
}  // namespace bathside::app
