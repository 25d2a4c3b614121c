# The fences as CTest tests; each is a script that reads the tree and builds nothing.
foreach(fence includes words top mirror packages)
  add_test(NAME fence.${fence}
           COMMAND ${CMAKE_COMMAND} -DROOT=${PROJECT_SOURCE_DIR} -P ${CMAKE_CURRENT_LIST_DIR}/${fence}.cmake)
endforeach()
add_test(NAME fence.can_fail
         COMMAND ${CMAKE_COMMAND} -DSCRATCH=${CMAKE_CURRENT_BINARY_DIR}/fenced -P ${CMAKE_CURRENT_LIST_DIR}/fences_can_fail.cmake)

find_package(Python3 REQUIRED COMPONENTS Interpreter)
add_test(NAME fence.translations
         COMMAND Python3::Interpreter ${CMAKE_CURRENT_LIST_DIR}/translations.py
                 ${PROJECT_SOURCE_DIR} $<TARGET_FILE:Qt6::lupdate>)

find_program(SHELLCHECK shellcheck REQUIRED)
add_test(NAME fence.scripts COMMAND ${SHELLCHECK} app/install app/run tests/run .ci/run
         WORKING_DIRECTORY ${PROJECT_SOURCE_DIR})

find_program(DESKTOP_FILE_VALIDATE desktop-file-validate REQUIRED)
find_program(APPSTREAMCLI appstreamcli REQUIRED)
add_test(NAME resources.desktop_entry
         COMMAND ${DESKTOP_FILE_VALIDATE} ${PROJECT_SOURCE_DIR}/resources/org.bathside.Bathside.desktop)
add_test(NAME resources.metainfo
         COMMAND ${APPSTREAMCLI} validate --no-net ${PROJECT_SOURCE_DIR}/resources/org.bathside.Bathside.metainfo.xml)

get_property(fences DIRECTORY PROPERTY TESTS)
set_tests_properties(${fences} PROPERTIES LABELS fence)
