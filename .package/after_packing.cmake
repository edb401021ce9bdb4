# Run by cpack behind each package. Its archives hold files in the order in which the disk gives them, which differs from
# machine to machine; so the .tar.gz is packed once more, by name.
if(CPACK_GENERATOR STREQUAL "TGZ")
  foreach(package IN LISTS CPACK_PACKAGE_FILES)
    cmake_path(GET CPACK_TEMPORARY_INSTALL_DIRECTORY PARENT_PATH above)
    cmake_path(GET CPACK_TEMPORARY_INSTALL_DIRECTORY FILENAME name)
    execute_process(
      COMMAND tar --sort=name --format=gnu --owner=0 --group=0 --numeric-owner "--mtime=@$ENV{SOURCE_DATE_EPOCH}" -C "${above}" -cf - "${name}"
      COMMAND gzip -9n
      OUTPUT_FILE "${package}"
      COMMAND_ERROR_IS_FATAL ANY)
  endforeach()
endif()
