# SPDX-License-Identifier: GPL-3.0-or-later
# Installs the build into a folder of its own, moves that, builds the plug-in of docs/plugins.md against it as a
# stranger would, and runs it, and one of ours, with the installed program.
# Called with: build, source, stranger (folder with the stranger's sources).

function(must_run)
    execute_process(COMMAND ${ARGN} RESULT_VARIABLE status OUTPUT_VARIABLE text ERROR_VARIABLE errors)
    if(NOT status EQUAL 0)
        message(FATAL_ERROR "this ended with ${status}: ${ARGN}\n${text}\n${errors}")
    endif()
    set(text "${text}" PARENT_SCOPE)
endfunction()

function(must_say what)
    string(FIND "${text}" "${what}" at)
    if(at EQUAL -1)
        message(FATAL_ERROR "this does not say '${what}':\n${text}")
    endif()
endfunction()

set(first "${stranger}/prefix")
set(place "${stranger}/moved prefix")
file(REMOVE_RECURSE "${first}" "${place}" "${stranger}/build")
must_run("${CMAKE_COMMAND}" --install "${build}" --prefix "${first}")
file(RENAME "${first}" "${place}")

must_run("${CMAKE_COMMAND}" -G Ninja -S "${stranger}" -B "${stranger}/build" -DCMAKE_BUILD_TYPE=Release
         "-DCMAKE_PREFIX_PATH=${place}" "-DCMAKE_CXX_FLAGS=-Wall -Wextra -Werror")
must_run("${CMAKE_COMMAND}" --build "${stranger}/build")

set(demo "${source}/share/examples/sandpiper-bay.cutwater")
must_run("${place}/bin/cutwater" event-count "${demo}" --plugins "${stranger}/build")
must_say("Number of events")
must_run("${place}/bin/cutwater" single-failures "${demo}" --top T3-1)
must_say("F7")
must_run("${place}/bin/cutwater" library fuse)
must_say("WASH-1400")
file(REMOVE_RECURSE "${place}" "${stranger}/build")
