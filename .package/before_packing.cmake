# Run by cpack when everything lies in the folder that it is going to pack.
file(GLOB_RECURSE programs LIST_DIRECTORIES OFF "${CPACK_TEMPORARY_INSTALL_DIRECTORY}/*/bin/sheerpole"
  "${CPACK_TEMPORARY_INSTALL_DIRECTORY}/bin/sheerpole")
list(GET programs 0 program)
cmake_path(GET program PARENT_PATH bin)
cmake_path(GET bin PARENT_PATH prefix)
execute_process(
  COMMAND sh "${CPACK_SHEERPOLE_SOURCE}/.package/finish" "${prefix}" "${CPACK_SHEERPOLE_BUILD}" "${CPACK_GENERATOR}"
    "${CPACK_PACKAGE_VERSION}" "${CPACK_TEMPORARY_INSTALL_DIRECTORY}"
  COMMAND_ERROR_IS_FATAL ANY)
