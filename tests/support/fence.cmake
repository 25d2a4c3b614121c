# Greps for what may not stand where. Each script that includes this is run with -DROOT=<tree>.
cmake_minimum_required(VERSION 3.25)

# fence(<name> <why> IN <folders> [BUT <folders>] [FILES <globs>] MATCH <regex>)
#
# Fails on the first file below IN, and not below BUT, whose text without // comments has a match.
# FILES is *.h and *.cpp where nothing is said. A folder that is not there yet holds nothing wrong.
function(fence name why)
  cmake_parse_arguments(PARSE_ARGV 2 F "" "MATCH" "IN;BUT;FILES")
  if(NOT F_FILES)
    set(F_FILES *.h *.cpp)
  endif()
  foreach(folder IN LISTS F_IN)
    list(TRANSFORM F_FILES PREPEND ${ROOT}/${folder}/ OUTPUT_VARIABLE globs)
    file(GLOB_RECURSE files RELATIVE ${ROOT} ${globs})
    foreach(except IN LISTS F_BUT)
      list(FILTER files EXCLUDE REGEX "^${except}/")
    endforeach()
    foreach(file IN LISTS files)
      file(READ ${ROOT}/${file} text)
      string(REGEX REPLACE "//[^\n]*" "" text "${text}")
      if("\n${text}" MATCHES "${F_MATCH}")
        message(FATAL_ERROR "fence ${name}: ${file}\n  ${CMAKE_MATCH_0}\n  ${why}")
      endif()
    endforeach()
  endforeach()
endfunction()

# As fence, for what a file includes: MATCH is the beginning of the name between <> or "".
function(fence_include name why)
  cmake_parse_arguments(PARSE_ARGV 2 F "" "MATCH" "IN;BUT;FILES")
  fence(${name} "${why}" IN ${F_IN} BUT ${F_BUT} FILES ${F_FILES}
        MATCH "\n[ \t]*#[ \t]*include[ \t]*[<\"](${F_MATCH})[^\n]*")
endfunction()
