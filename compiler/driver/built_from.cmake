# cmake -DSOURCE=<folder> -DCOMMIT=<commit or empty> -DINTO=<file> -P built_from.cmake
# Writes the header with the commit that is compiled, and only when it is another one than before, so that nothing is
# compiled or linked again for it. COMMIT is for whoever builds from an archive of the source.
set(commit "${COMMIT}")
if(NOT commit)
  set(commit unknown)
  find_program(GIT git)
  if(GIT)
    execute_process(COMMAND "${GIT}" rev-parse --show-toplevel WORKING_DIRECTORY "${SOURCE}"
      OUTPUT_VARIABLE top OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET RESULT_VARIABLE failed)
    file(REAL_PATH "${SOURCE}" here)
    # A source that lies in the repository of something else has no commit of its own.
    if(NOT failed AND top STREQUAL here)
      execute_process(COMMAND "${GIT}" rev-parse --verify HEAD WORKING_DIRECTORY "${SOURCE}"
        OUTPUT_VARIABLE head OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET RESULT_VARIABLE failed)
      if(NOT failed)
        set(commit "${head}")
        execute_process(COMMAND "${GIT}" diff --quiet HEAD WORKING_DIRECTORY "${SOURCE}"
          OUTPUT_QUIET ERROR_QUIET RESULT_VARIABLE changed)
        if(changed)
          string(APPEND commit "-changed")
        endif()
      endif()
    endif()
  endif()
endif()
set(text "#define SHEERPOLE_BUILT_FROM \"${commit}\"\n")
set(before "")
if(EXISTS "${INTO}")
  file(READ "${INTO}" before)
endif()
if(NOT text STREQUAL before)
  file(WRITE "${INTO}" "${text}")
endif()
