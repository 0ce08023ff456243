# SPDX-License-Identifier: GPL-3.0-or-later
# Compiler settings that every target of ours shares.
set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_POSITION_INDEPENDENT_CODE ON)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)

if(NOT CMAKE_BUILD_TYPE AND NOT CMAKE_CONFIGURATION_TYPES)
    set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "" FORCE)
endif()

option(CUTWATER_WARNINGS_AS_ERRORS "Treat warnings as errors" OFF)
option(CUTWATER_ASSERTS "Keep assert() in optimised builds" OFF)
option(CUTWATER_COVERAGE "Instrument for gcov" OFF)
set(CUTWATER_SANITIZE "" CACHE STRING "Comma-separated sanitizers: address,undefined or thread")

# Everything that is run stands together in the build tree, as it does when installed.
set(CMAKE_RUNTIME_OUTPUT_DIRECTORY "${CMAKE_BINARY_DIR}/bin")
set(CUTWATER_PLUGIN_OUTPUT_DIRECTORY "${CMAKE_BINARY_DIR}/plugins-out")

add_library(cutwater_settings INTERFACE)
target_compile_options(cutwater_settings INTERFACE -Wall -Wextra -Wpedantic -Wshadow -Wnon-virtual-dtor
                                                   -Woverloaded-virtual -Wcast-align -Wunused)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND CMAKE_CXX_COMPILER_VERSION VERSION_LESS 13)
    # At -O3 g++ 12 sees overlapping copies in every assignment of a literal to a std::string (GCC bug 105651).
    target_compile_options(cutwater_settings INTERFACE -Wno-restrict)
endif()
if(CUTWATER_WARNINGS_AS_ERRORS)
    target_compile_options(cutwater_settings INTERFACE -Werror)
endif()
if(CUTWATER_ASSERTS)
    target_compile_options(cutwater_settings INTERFACE -UNDEBUG)
endif()
if(CUTWATER_COVERAGE)
    target_compile_options(cutwater_settings INTERFACE --coverage)
    target_link_options(cutwater_settings INTERFACE --coverage)
endif()
if(CUTWATER_SANITIZE)
    target_compile_options(cutwater_settings INTERFACE -fsanitize=${CUTWATER_SANITIZE} -fno-omit-frame-pointer
                                                       -fno-sanitize-recover=all)
    target_link_options(cutwater_settings INTERFACE -fsanitize=${CUTWATER_SANITIZE})
endif()
# Includes are written from the top of the source tree: the folder is part of the name.
target_include_directories(cutwater_settings INTERFACE "$<BUILD_INTERFACE:${CMAKE_SOURCE_DIR}>")
