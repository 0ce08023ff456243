# SPDX-License-Identifier: GPL-3.0-or-later
# What a writer of plug-ins finds after the installation: find_package(Cutwater) gives Cutwater::sdk and the models.
include(CMakePackageConfigHelpers)

set(cutwater_package_folder "${CMAKE_INSTALL_LIBDIR}/cmake/Cutwater")
set(cutwater_offered project logic library document reliability evidence worksheet sdk sdk_tree)
list(TRANSFORM cutwater_offered PREPEND cutwater_ OUTPUT_VARIABLE cutwater_offered_targets)
foreach(name ${cutwater_offered})
    set_target_properties(cutwater_${name} PROPERTIES EXPORT_NAME ${name})
    target_compile_features(cutwater_${name} PUBLIC cxx_std_20)
endforeach()
install(TARGETS ${cutwater_offered_targets} EXPORT Cutwater ARCHIVE DESTINATION "${CMAKE_INSTALL_LIBDIR}/cutwater")
install(EXPORT Cutwater NAMESPACE Cutwater:: FILE CutwaterExports.cmake DESTINATION "${cutwater_package_folder}")
# Includes start at the top of the tree here and there: "models/project/project.h".
install(DIRECTORY "${CMAKE_SOURCE_DIR}/models" DESTINATION include/cutwater FILES_MATCHING PATTERN "*.h")
install(DIRECTORY "${CMAKE_SOURCE_DIR}/plugins/sdk" DESTINATION include/cutwater/plugins FILES_MATCHING PATTERN "*.h")

configure_package_config_file("${CMAKE_CURRENT_LIST_DIR}/CutwaterConfig.cmake.in" "${CMAKE_BINARY_DIR}/CutwaterConfig.cmake"
                              INSTALL_DESTINATION "${cutwater_package_folder}")
write_basic_package_version_file("${CMAKE_BINARY_DIR}/CutwaterConfigVersion.cmake" COMPATIBILITY SameMinorVersion)
install(FILES "${CMAKE_BINARY_DIR}/CutwaterConfig.cmake" "${CMAKE_BINARY_DIR}/CutwaterConfigVersion.cmake"
        DESTINATION "${cutwater_package_folder}")
