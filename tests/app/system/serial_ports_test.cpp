#include "app/system/serial_ports.h"

#include <fstream>

#include <gtest/gtest.h>

#include "tests/support/temp_folder.h"

namespace bathside::app {
namespace {

TEST(SerialPortsTest, eachIsThereOnceByItsLastingNameWhereItHasOne)
{
    const test::TempFolder folder;
    EXPECT_TRUE(serialPorts(folder / "none").empty());
    for (const char* name : {"ttyUSB0", "ttyUSB1", "ttyACM1", "ttyS0", "ttyAMA0", "null", "tty1"})
        std::ofstream(folder / name) << "";
    EXPECT_EQ(serialPorts(folder.path()),
              (std::vector<std::string>{folder / "ttyUSB0", folder / "ttyUSB1", folder / "ttyACM1",
                                        folder / "ttyAMA0", folder / "ttyS0"}));
    const auto byId = folder.path() / "serial" / "by-id";
    std::filesystem::create_directories(byId);
    std::filesystem::create_symlink("../../ttyUSB1", byId / "usb-meter");
    EXPECT_EQ(serialPorts(folder.path()),
              (std::vector<std::string>{byId / "usb-meter", folder / "ttyUSB0", folder / "ttyACM1",
                                        folder / "ttyAMA0", folder / "ttyS0"}));
}

TEST(SerialPortsTest, aLastingNameAndANumberAreOnePort)
{
    const test::TempFolder folder;
    std::ofstream(folder / "ttyUSB0") << "";
    std::filesystem::create_symlink("ttyUSB0", folder.path() / "meter");
    EXPECT_TRUE(isSamePort(folder / "meter", folder / "ttyUSB0"));
    EXPECT_FALSE(isSamePort(folder / "meter", folder / "ttyUSB1"));
    EXPECT_TRUE(isSamePort(folder / "gone", folder / "gone"));
}

}  // namespace
}  // namespace bathside::app
