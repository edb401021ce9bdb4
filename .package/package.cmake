# What is installed beside the programs, and how cpack makes a .deb and a .tar.gz of it. Included by the top CMakeLists.txt.
set(package_folder "${CMAKE_CURRENT_LIST_DIR}")
set(commands_folder "${CMAKE_SOURCE_DIR}/docs/commands")

install(DIRECTORY "${commands_folder}/man/" DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
install(FILES "${commands_folder}/completions/sheerpole.bash"
  DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions RENAME sheerpole)
install(FILES "${commands_folder}/completions/_sheerpole" DESTINATION ${CMAKE_INSTALL_DATADIR}/zsh/vendor-completions)
install(FILES "${commands_folder}/completions/sheerpole.fish" DESTINATION ${CMAKE_INSTALL_DATADIR}/fish/vendor_completions.d)

set(CPACK_GENERATOR DEB TGZ)
set(CPACK_PACKAGE_NAME sheerpole)
set(CPACK_PACKAGE_VERSION ${PROJECT_VERSION})
set(CPACK_PACKAGE_VENDOR "Sheerpole contributors")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "compiler for descriptions of a boat's standing rigging")
set(CPACK_PACKAGE_DESCRIPTION "Reads a boat's standing rigging as text, from aloft to deck, and writes
cut lists in which every length is a visible sum, bench cards, order lists,
drawings, reports, and findings in plain words. It reports; it does not
approve a rig.")
set(CPACK_PACKAGE_FILE_NAME "sheerpole-${PROJECT_VERSION}-linux-${CMAKE_SYSTEM_PROCESSOR}")
set(CPACK_STRIP_FILES ON)
# Licences, the list of what is linked in, compressed pages of the manual and one time for all files.
set(CPACK_PRE_BUILD_SCRIPTS "${package_folder}/before_packing.cmake")
set(CPACK_POST_BUILD_SCRIPTS "${package_folder}/after_packing.cmake")
set(CPACK_SHEERPOLE_SOURCE "${CMAKE_SOURCE_DIR}")
set(CPACK_SHEERPOLE_BUILD "${CMAKE_BINARY_DIR}")

set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_MAINTAINER "Sheerpole contributors <contributors@sheerpole.invalid>")
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
# sheerpole is static; sheerpole-pdf loads cairo and pango, and draws in these typefaces and no others.
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_DEPENDS "fonts-liberation, fonts-dejavu-core, fonts-droid-fallback")

set(CPACK_PROJECT_CONFIG_FILE "${package_folder}/each_generator.cmake")
include(CPack)
