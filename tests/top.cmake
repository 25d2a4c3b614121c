# The top level holds the agreed entries, dotfiles and the build folder; rooms hold no build litter.
cmake_minimum_required(VERSION 3.25)
file(GLOB entries RELATIVE ${ROOT} ${ROOT}/*)
list(FILTER entries EXCLUDE REGEX "^\\.")
list(REMOVE_ITEM entries CMakeLists.txt README.md DEVELOPERS.md LICENSE
     app core ui resources tests translations build)
if(entries)
  message(FATAL_ERROR "fence top: not on the agreed list: ${entries}")
endif()
