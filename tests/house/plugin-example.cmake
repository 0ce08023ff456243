# SPDX-License-Identifier: GPL-3.0-or-later
# The example of docs/plugins.md, taken out of the page and built as it stands: a page that no longer
# fits the SDK breaks the build.

# The first block of the page that is fenced as `language` and holds `mark`, into a file.
function(take_from_page page language mark file)
    string(FIND "${page}" "```${language}\n" begin)
    if(begin EQUAL -1)
        message(FATAL_ERROR "docs/plugins.md has no ${language} block any more; mend the page or tests/house.")
    endif()
    string(LENGTH "```${language}\n" fence)
    math(EXPR begin "${begin} + ${fence}")
    string(SUBSTRING "${page}" ${begin} -1 rest)
    string(FIND "${rest}" "```" end)
    string(SUBSTRING "${rest}" 0 ${end} block)
    string(FIND "${block}" "${mark}" found)
    if(found EQUAL -1)
        message(FATAL_ERROR "the ${language} block of docs/plugins.md does not hold '${mark}'.")
    endif()
    file(CONFIGURE OUTPUT "${file}" CONTENT "${block}" @ONLY) # written only where it changed
endfunction()

set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${CMAKE_SOURCE_DIR}/docs/plugins.md")
file(READ "${CMAKE_SOURCE_DIR}/docs/plugins.md" page)
set(example "${CMAKE_CURRENT_BINARY_DIR}/example")
take_from_page("${page}" json "event-count" "${example}/event-count.json")
take_from_page("${page}" cpp "Q_PLUGIN_METADATA" "${example}/event_count.cpp")
take_from_page("${page}" cmake "cutwater_add_plugin" "${example}/CMakeLists.txt")
set(CUTWATER_PLUGIN_OUTPUT_DIRECTORY "${example}/plugins-out") # not among those that are shipped
add_subdirectory("${example}" "${example}/build" EXCLUDE_FROM_ALL) # nor installed
