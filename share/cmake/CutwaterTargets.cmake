# SPDX-License-Identifier: GPL-3.0-or-later
# One helper per kind of target, so that each folder's CMakeLists.txt is a list of files.

# cutwater_add_model(NAME SOURCES ... [LINK ...]): a library of models/, target cutwater_NAME.
function(cutwater_add_model name)
    cmake_parse_arguments(ARG "" "" "SOURCES;LINK;PRIVATE_LINK" ${ARGN})
    add_library(cutwater_${name} STATIC ${ARG_SOURCES})
    add_library(Cutwater::${name} ALIAS cutwater_${name})
    target_link_libraries(cutwater_${name} PUBLIC ${ARG_LINK} PRIVATE ${ARG_PRIVATE_LINK} $<BUILD_INTERFACE:cutwater_settings>)
    target_include_directories(cutwater_${name} PUBLIC $<BUILD_INTERFACE:${CMAKE_SOURCE_DIR}> $<INSTALL_INTERFACE:include/cutwater>)
endfunction()

# cutwater_add_plugin(ID SOURCES ... [LINK ...]): a plug-in that the host finds; metadata in ID.json beside it.
function(cutwater_add_plugin id)
    cmake_parse_arguments(ARG "" "OUTPUT_DIRECTORY" "SOURCES;LINK" ${ARGN})
    string(REPLACE "-" "_" target ${id})
    if(NOT ARG_OUTPUT_DIRECTORY)
        set(ARG_OUTPUT_DIRECTORY "${CUTWATER_PLUGIN_OUTPUT_DIRECTORY}")
        set(install_it TRUE)
    endif()
    add_library(plugin_${target} MODULE ${ARG_SOURCES})
    set_target_properties(plugin_${target} PROPERTIES AUTOMOC ON PREFIX "" OUTPUT_NAME ${id}
                          LIBRARY_OUTPUT_DIRECTORY "${ARG_OUTPUT_DIRECTORY}")
    target_link_libraries(plugin_${target} PRIVATE cutwater_sdk ${ARG_LINK} cutwater_settings)
    if(install_it)
        install(TARGETS plugin_${target} LIBRARY DESTINATION ${CMAKE_INSTALL_LIBDIR}/cutwater/plugins)
    endif()
endfunction()

# cutwater_add_test(NAME SOURCES ... [LINK ...] [LABEL ...]): one GoogleTest program, each of its tests known to ctest.
function(cutwater_add_test name)
    cmake_parse_arguments(ARG "" "" "SOURCES;LINK;LABEL;ENVIRONMENT" ${ARGN})
    add_executable(${name} ${ARG_SOURCES})
    target_link_libraries(${name} PRIVATE ${ARG_LINK} GTest::gtest GTest::gmock GTest::gtest_main cutwater_settings)
    target_compile_definitions(${name} PRIVATE CUTWATER_SOURCE_DIR="${CMAKE_SOURCE_DIR}" CUTWATER_BINARY_DIR="${CMAKE_BINARY_DIR}")
    if(NOT ARG_LABEL)
        set(ARG_LABEL unit) # an empty one would swallow the next word below
    endif()
    set(environment "QT_QPA_PLATFORM=offscreen" ${ARG_ENVIRONMENT})
    gtest_discover_tests(${name} PROPERTIES ENVIRONMENT "${environment}" LABELS "${ARG_LABEL}" TIMEOUT 600 DISCOVERY_TIMEOUT 60)
endfunction()
