# What authors of back ends in C++ install, as the component `development`: the headers of the contract and of all that it hands
# on, the compiler as one library, a CMake package and a pkg-config file. It is no part of what `cmake --install` puts in place
# by itself, nor of the packages for users.
#   cmake --build build/release --target sheerpole_for_authors
#   cmake --install build/release --component development --prefix FOLDER
set(development_folder "${CMAKE_SOURCE_DIR}/.package/development")
get_property(rooms GLOBAL PROPERTY SHEERPOLE_LINKED_ALONE)
list(APPEND rooms sheerpole_driver)
list(REMOVE_DUPLICATES rooms)

# One archive of all of them, so that nobody has to know our rooms or their order.
set(library "${CMAKE_BINARY_DIR}/lib/libsheerpole.a")
set(script "create ${library}\n")
foreach(room IN LISTS rooms)
  string(APPEND script "addlib $<TARGET_FILE:${room}>\n")
endforeach()
string(APPEND script "save\nend\n")
file(GENERATE OUTPUT "${CMAKE_BINARY_DIR}/lib/libsheerpole.mri" CONTENT "${script}")
add_custom_command(
  OUTPUT "${library}"
  COMMAND "${CMAKE_COMMAND}" -E rm -f "${library}"
  COMMAND "${CMAKE_AR}" -M < "${CMAKE_BINARY_DIR}/lib/libsheerpole.mri"
  COMMAND "${CMAKE_RANLIB}" -D "${library}"
  DEPENDS ${rooms} "${CMAKE_BINARY_DIR}/lib/libsheerpole.mri"
  COMMENT "Joining the rooms to one library"
  VERBATIM)
add_custom_target(sheerpole_for_authors DEPENDS "${library}")

# What the archive needs besides, by the names under which Debian has it.
set(SHEERPOLE_NEEDS fmt antlr4-runtime ${coin_libraries} md utf8proc qrcodegencpp event)
if(SHEERPOLE_STATIC)
  list(APPEND SHEERPOLE_NEEDS gfortran quadmath)
endif()
list(TRANSFORM SHEERPOLE_NEEDS PREPEND "-l" OUTPUT_VARIABLE SHEERPOLE_LINKED)
string(REPLACE ";" " " SHEERPOLE_LINKED "${SHEERPOLE_LINKED}")
configure_file("${development_folder}/sheerpole.pc.in" "${CMAKE_BINARY_DIR}/lib/sheerpole.pc" @ONLY)
include(CMakePackageConfigHelpers)
set(config_folder "${CMAKE_INSTALL_LIBDIR}/cmake/Sheerpole")
configure_package_config_file("${development_folder}/SheerpoleConfig.cmake.in" "${CMAKE_BINARY_DIR}/lib/SheerpoleConfig.cmake"
  INSTALL_DESTINATION "${config_folder}"
  PATH_VARS CMAKE_INSTALL_INCLUDEDIR CMAKE_INSTALL_LIBDIR)
# A back end in C++ belongs to one version of the compiler (docs/backends/outside.md).
write_basic_package_version_file("${CMAKE_BINARY_DIR}/lib/SheerpoleConfigVersion.cmake" VERSION "${PROJECT_VERSION}"
  COMPATIBILITY ExactVersion)

set(for_authors COMPONENT development EXCLUDE_FROM_ALL)
foreach(room IN ITEMS base statics source units diagnostics limits kinds model calculate wording results backend)
  install(DIRECTORY "compiler/${room}" DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}/sheerpole" ${for_authors}
    FILES_MATCHING PATTERN "*.hpp" PATTERN "findings" EXCLUDE PATTERN "generate" EXCLUDE)
endforeach()
install(FILES compiler/driver/outside/plugin_main.hpp DESTINATION "${CMAKE_INSTALL_INCLUDEDIR}/sheerpole/driver/outside" ${for_authors})
install(FILES "${library}" DESTINATION "${CMAKE_INSTALL_LIBDIR}" ${for_authors})
install(FILES "${CMAKE_BINARY_DIR}/lib/SheerpoleConfig.cmake" "${CMAKE_BINARY_DIR}/lib/SheerpoleConfigVersion.cmake"
  DESTINATION "${config_folder}" ${for_authors})
install(FILES "${CMAKE_BINARY_DIR}/lib/sheerpole.pc" DESTINATION "${CMAKE_INSTALL_LIBDIR}/pkgconfig" ${for_authors})
