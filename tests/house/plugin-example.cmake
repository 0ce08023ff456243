# SPDX-License-Identifier: GPL-3.0-or-later
# The example of docs/plugins.md, taken out of the page and built as it stands: a page that no longer
# fits the SDK breaks the build.

# The fenced block of the page that holds `mark`, into a file.
function(take_from_page page mark file)
    string(FIND "${page}" "${mark}" at)
    if(at EQUAL -1)
        message(FATAL_ERROR "docs/plugins.md does not hold '${mark}' any more; mend the page or tests/house.")
    endif()
    string(SUBSTRING "${page}" 0 ${at} before)
    string(FIND "${before}" "```" fence REVERSE)
    string(SUBSTRING "${page}" ${fence} -1 block)
    string(FIND "${block}" "\n" line)
    math(EXPR line "${line} + 1")
    string(SUBSTRING "${block}" ${line} -1 block)
    string(FIND "${block}" "```" end)
    string(SUBSTRING "${block}" 0 ${end} block)
    file(CONFIGURE OUTPUT "${file}" CONTENT "${block}" @ONLY) # written only where it changed
endfunction()

set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS "${CMAKE_SOURCE_DIR}/docs/plugins.md")
file(READ "${CMAKE_SOURCE_DIR}/docs/plugins.md" page)
set(example "${CMAKE_CURRENT_BINARY_DIR}/example")
take_from_page("${page}" "\"id\": \"event-count\"" "${example}/event-count.json")
take_from_page("${page}" "Q_PLUGIN_METADATA" "${example}/event_count.cpp")
take_from_page("${page}" "cutwater_add_plugin(event-count" "${example}/CMakeLists.txt")
set(CUTWATER_PLUGIN_OUTPUT_DIRECTORY "${example}/plugins-out") # not among those that are shipped
add_subdirectory("${example}" "${example}/build" EXCLUDE_FROM_ALL) # nor installed

# The same as a stranger builds it, outside this tree, against the installed package.
set(stranger "${CMAKE_CURRENT_BINARY_DIR}/stranger")
file(COPY "${example}/event-count.json" "${example}/event_count.cpp" DESTINATION "${stranger}")
take_from_page("${page}" "find_package(Cutwater" "${stranger}/CMakeLists.txt")
