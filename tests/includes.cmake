# Who may include what: app -> ui -> core, and nothing from the world in core.
include(${CMAKE_CURRENT_LIST_DIR}/support/fence.cmake)

fence_include(core-is-pure "core knows no Qt, no database, no ui and no app"
  IN core BUT core/trail/store MATCH "Q[A-Z]|Qt|ui/|app/|tests/|sqlite3|core/trail/store/")
fence_include(core-has-no-world "core knows no file, thread or system clock"
  IN core BUT core/trail/store
  MATCH "thread>|mutex>|shared_mutex>|condition_variable>|future>|fstream>|filesystem>|iostream>|ctime>|time\\.h>|unistd|fcntl|sys/|linux/|spdlog")
fence_include(store-shows-nothing "the store is Qt Core and Qt Sql behind core's port"
  IN core/trail/store MATCH "ui/|app/|tests/|QtWidgets|QtGui|QWidget|QApplication|QGuiApplication|spdlog")
fence_include(ui-sees-the-port "ui knows the core's values and ports only"
  IN ui MATCH "app/|tests/|core/trail/store/|sqlite3|QSql|QtSql|spdlog|nlohmann")
fence_include(system-in-one-place "what talks to the kernel stands in app/system"
  IN core ui app BUT app/system ui/sound core/trail/store MATCH "sys/|linux/|poll\\.h|pthread\\.h|time\\.h|signal\\.h|unistd\\.h|fcntl\\.h")
fence_include(sound-waits-and-plays "ui/sound waits on the kernel's clock and asks it for nothing else"
  IN ui/sound MATCH "linux/|fcntl\\.h|signal\\.h|sys/[^te]|sys/t[^i]|sys/e[^v]")
fence_include(charts-in-one-place "ui/charts is the one place that knows Qt Charts"
  IN core ui app BUT ui/charts MATCH "QtCharts|Qt6Charts|QChart|QAbstractAxis|QValueAxis|Q[A-Z][a-z]+Series")
fence_include(loudspeaker-in-one-place "the sound server is ui/sound's"
  IN core ui app BUT ui/sound MATCH "pulse/")
fence_include(system-knows-no-screen "app/system serves the station and the command line"
  IN app/system MATCH "ui/|app/station|app/cli|QtWidgets|QWidget|QApplication")
fence_include(json-in-sources "nlohmann/json.hpp is heavy: sources include it, headers do not"
  IN core ui app FILES *.h MATCH "nlohmann/json\\.hpp")
fence_include(full-paths "includes of ours are full paths from the root"
  IN core ui app MATCH "\\.|[a-z_0-9]+\\.h\"")
