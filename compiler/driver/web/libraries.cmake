# The libraries of the WebAssembly: Debian has no packages of them for it, so they are compiled from Debian's own sources, which
# are fetched once and kept in the build folder; of what is headers alone the installed headers serve. Targets and variables
# have the names that the native build gives them, so the rooms ask for the same.
#
# What is compiled of COIN-OR is what a native executable of ours takes out of Debian's archives of it, no more.
enable_language(C)
set(sources "${CMAKE_BINARY_DIR}/sources")
set(headers "${CMAKE_BINARY_DIR}/headers")
execute_process(
  COMMAND sh "${CMAKE_CURRENT_LIST_DIR}/debian_sources.sh" "${sources}"
    antlr4-cpp-runtime coinutils coinor-osi clp coinor-cgl coinor-cbc libmd utf8proc qr-code-generator/upstream
    7zip/upstream
  COMMAND_ERROR_IS_FATAL ANY)

# Never all of /usr/include: the C library's headers there are those of another machine.
file(MAKE_DIRECTORY "${headers}")
foreach(name IN ITEMS fmt nlohmann valijson fast_float)
  file(CREATE_LINK "/usr/include/${name}" "${headers}/${name}" SYMBOLIC)
endforeach()
file(CREATE_LINK /usr/include/eigen3/Eigen "${headers}/Eigen" SYMBOLIC)
file(CREATE_LINK "${sources}/antlr4-cpp-runtime/runtime/src" "${headers}/antlr4-runtime" SYMBOLIC)
# What the standard library lacks comes before it.
include_directories(SYSTEM "${CMAKE_CURRENT_LIST_DIR}/missing" "${headers}")

# sheerpole_foreign(<target> FILES <file>... [FOLDERS <include>...] [DEFINES <definition>...] [APART <file>...])
# Somebody else's sources as a static library, joined to a few units; those of APART are not joined. By a later standard not
# all of them compile.
function(sheerpole_foreign target)
  cmake_parse_arguments(PARSE_ARGV 1 arg "" "" "FILES;FOLDERS;DEFINES;APART")
  add_library(${target} STATIC ${arg_FILES} ${arg_APART})
  set_target_properties(${target} PROPERTIES UNITY_BUILD ON UNITY_BUILD_BATCH_SIZE 40 CXX_STANDARD 11)
  if(arg_APART)
    set_source_files_properties(${arg_APART} PROPERTIES SKIP_UNITY_BUILD_INCLUSION ON)
  endif()
  target_include_directories(${target} SYSTEM PRIVATE ${arg_FOLDERS})
  target_compile_definitions(${target} PRIVATE ${arg_DEFINES})
  target_compile_options(${target} PRIVATE -w)
endfunction()

add_library(fmt::fmt-header-only INTERFACE IMPORTED)
target_compile_definitions(fmt::fmt-header-only INTERFACE FMT_HEADER_ONLY)
add_library(nlohmann_json::nlohmann_json INTERFACE IMPORTED)
add_library(Eigen3::Eigen INTERFACE IMPORTED)
set(VALIJSON_INCLUDE_DIR "${headers}")

set(ANTLR_HEADERS "${headers}/antlr4-runtime")
file(GLOB_RECURSE antlr_files "${sources}/antlr4-cpp-runtime/runtime/src/*.cpp")
sheerpole_foreign(antlr4_static FILES ${antlr_files} FOLDERS "${ANTLR_HEADERS}")

set(MD_LIBRARY sheerpole_md)
sheerpole_foreign(sheerpole_md FILES "${sources}/libmd/src/sha2.c" FOLDERS "${CMAKE_CURRENT_LIST_DIR}/missing")
target_include_directories(sheerpole_md SYSTEM PUBLIC "${sources}/libmd/include")

set(UTF8PROC_LIBRARY sheerpole_utf8proc)
sheerpole_foreign(sheerpole_utf8proc FILES "${sources}/utf8proc/utf8proc.c" DEFINES UTF8PROC_STATIC)
target_include_directories(sheerpole_utf8proc SYSTEM PUBLIC "${sources}/utf8proc")
target_compile_definitions(sheerpole_utf8proc PUBLIC UTF8PROC_STATIC)

set(QRCODEGEN_LIBRARY sheerpole_qrcodegen)
sheerpole_foreign(sheerpole_qrcodegen FILES "${sources}/qr-code-generator/cpp/qrcodegen.cpp")
file(MAKE_DIRECTORY "${headers}/qrcodegen")
file(CREATE_LINK "${sources}/qr-code-generator/cpp/qrcodegen.hpp" "${headers}/qrcodegen/qrcodegen.hpp" SYMBOLIC)
set(QRCODEGEN_INCLUDE_DIR "${headers}")

# The headers of COIN-OR lie in one folder when they are installed.
file(MAKE_DIRECTORY "${headers}/coin")
file(GLOB coin_headers "${sources}/coinutils/CoinUtils/src/*.h*" "${sources}/coinor-osi/Osi/src/Osi/*.h*"
  "${sources}/clp/Clp/src/*.h*" "${sources}/clp/Clp/src/OsiClp/*.h*" "${sources}/coinor-cgl/Cgl/src/*.h*"
  "${sources}/coinor-cgl/Cgl/src/*/*.h*" "${sources}/coinor-cbc/Cbc/src/*.h*")
foreach(header IN LISTS coin_headers)
  cmake_path(GET header FILENAME name)
  if(NOT name STREQUAL "config_default.h")
    file(CREATE_LINK "${header}" "${headers}/coin/${name}" SYMBOLIC)
  endif()
endforeach()

# sheerpole_coin_part(<target> <definition> <folder of the sources> <file>...)
function(sheerpole_coin_part target building folder)
  list(TRANSFORM ARGN PREPEND "${sources}/${folder}/")
  list(TRANSFORM ARGN APPEND ".cpp")
  sheerpole_foreign(${target} APART ${ARGN} DEFINES ${building} COIN_HAS_CLP
    FOLDERS "${sources}/${folder}" "${CMAKE_SOURCE_DIR}/compiler/driver/web/missing/coin" "${headers}/coin")
endfunction()
sheerpole_coin_part(sheerpole_coin_coinutils COINUTILS_BUILD coinutils/CoinUtils/src
  CoinBuild CoinDenseFactorization CoinDenseVector CoinError CoinFactorization1 CoinFactorization2 CoinFactorization3
  CoinFactorization4 CoinFileIO CoinFinite CoinIndexedVector CoinLpIO CoinMessage CoinMessageHandler CoinModel CoinModelUseful
  CoinModelUseful2 CoinMpsIO CoinOslFactorization CoinOslFactorization2 CoinOslFactorization3 CoinPackedMatrix
  CoinPackedVector CoinPackedVectorBase CoinPostsolveMatrix CoinPrePostsolveMatrix CoinPresolveDoubleton CoinPresolveDual
  CoinPresolveDupcol CoinPresolveEmpty CoinPresolveFixed CoinPresolveForcing CoinPresolveHelperFunctions
  CoinPresolveImpliedFree CoinPresolveMatrix CoinPresolveSingleton CoinPresolveSubst CoinPresolveTighten CoinPresolveTripleton
  CoinPresolveUseless CoinPresolveZeros CoinSearchTree CoinShallowPackedVector CoinSimpFactorization CoinStructuredModel
  CoinWarmStartBasis)
sheerpole_coin_part(sheerpole_coin_osi OSI_BUILD coinor-osi/Osi/src/Osi
  OsiAuxInfo OsiBranchingObject OsiChooseVariable OsiColCut OsiCut OsiCuts OsiNames OsiPresolve OsiRowCut OsiRowCutDebugger
  OsiSolverBranch OsiSolverInterface)
sheerpole_coin_part(sheerpole_coin_clp CLP_BUILD clp/Clp/src
  ClpCholeskyBase ClpCholeskyDense ClpDualRowDantzig ClpDualRowPivot ClpDualRowSteepest ClpDynamicMatrix ClpEventHandler
  ClpFactorization ClpHelperFunctions ClpInterior ClpLinearObjective ClpLsqr ClpMatrixBase ClpMessage ClpModel ClpNetworkBasis
  ClpNetworkMatrix ClpNode ClpNonLinearCost ClpObjective ClpPEDualRowSteepest ClpPEPrimalColumnSteepest ClpPESimplex
  ClpPackedMatrix ClpPdco ClpPlusMinusOneMatrix ClpPredictorCorrector ClpPresolve ClpPrimalColumnDantzig ClpPrimalColumnPivot
  ClpPrimalColumnSteepest ClpQuadraticObjective ClpSimplex ClpSimplexDual ClpSimplexNonlinear ClpSimplexOther ClpSimplexPrimal
  ClpSolve IdiSolve Idiot OsiClp/OsiClpSolverInterface)
sheerpole_coin_part(sheerpole_coin_cgl CGL_BUILD coinor-cgl/Cgl/src
  CglClique/CglClique CglClique/CglCliqueHelper CglCutGenerator CglDuplicateRow/CglDuplicateRow CglFlowCover/CglFlowCover
  CglGomory/CglGomory CglKnapsackCover/CglKnapsackCover CglMessage CglMixedIntegerRounding2/CglMixedIntegerRounding2
  CglPreProcess/CglPreProcess CglProbing/CglProbing CglStored CglTreeInfo CglTwomir/CglTwomir)
sheerpole_coin_part(sheerpole_coin_cbc CBC_BUILD coinor-cbc/Cbc/src
  CbcBranchCut CbcBranchDecision CbcBranchDefaultDecision CbcBranchDynamic CbcBranchingObject CbcClique CbcCompareDefault
  CbcCompareDepth CbcCountRowCut CbcCutGenerator CbcDummyBranchingObject CbcFathom CbcFollowOn CbcFullNodeInfo CbcGeneral
  CbcGeneralDepth CbcHeuristic CbcHeuristicDive CbcHeuristicFPump CbcHeuristicLocal CbcHeuristicRINS CbcMessage CbcModel
  CbcNode CbcNodeInfo CbcObject CbcObjectUpdateData CbcPartialNodeInfo CbcSOS CbcSimpleInteger
  CbcSimpleIntegerDynamicPseudoCost CbcSimpleIntegerPseudoCost CbcStatistics CbcStrategy CbcSubProblem CbcThread CbcTree
  CbcTreeLocal)
add_library(sheerpole_coin INTERFACE)
target_link_libraries(sheerpole_coin INTERFACE
  sheerpole_coin_cbc sheerpole_coin_cgl sheerpole_coin_clp sheerpole_coin_osi sheerpole_coin_coinutils)
