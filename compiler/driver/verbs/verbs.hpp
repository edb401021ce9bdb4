#pragma once

#include "driver/begin/first_rig.hpp"
#include "driver/compile.hpp"
#include "driver/outside/outside_backends.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// How findings are shown.
struct FindingsForm {
  std::string form = "text"; ///< text, lines, json, sarif
};

struct CheckOptions {
  std::string file;
  CompileOptions rig;
  FindingsForm findings;
  std::string print;   ///< a phase; empty: none
  std::string depends; ///< file for what was read, `boat.checked.d`; empty: none
};

struct BuildOptions {
  std::string file;
  CompileOptions rig;
  std::string folder;
  std::vector<std::string> only; ///< back ends; empty: the usual ones
  FindingsForm findings;
  std::string since;        ///< rig file of the version before; empty: there is none to compare with
  std::string depends;      ///< file for what was made from what; empty: none
  bool pdf = false;         ///< papers as PDF as well
  std::string paper = "a4"; ///< or "letter"
  OutsideOptions outside;   ///< programs that make papers as well
};

struct ChangesOptions {
  std::string from;
  std::string to;            ///< empty: the same file, with what `rig` sets
  std::string from_as_of;    ///< a layer: the first file without what later layers state
  CompileOptions rig;        ///< of the second
  std::string folder;        ///< empty: the sheet goes to the terminal
  std::string form = "text"; ///< text, json; on the terminal
  FindingsForm findings;
  bool pdf = false;
  std::string paper = "a4";
};

struct FleetOptions {
  std::vector<std::string> files; ///< or `@list.txt`
  CompileOptions rig;             ///< for each of them
  std::string folder;             ///< empty: the boats are only checked
  std::vector<std::string> only;  ///< back ends; empty: the usual ones
  FindingsForm findings;
  bool pdf = false;
  std::string paper = "a4";
  unsigned workers = 0; ///< 0: as many as processors
};

struct SealOptions {
  std::string file;
  CompileOptions rig;
  std::string folder;            ///< has to be empty, or not there
  std::vector<std::string> only; ///< back ends; empty: the usual ones
  bool pdf = false;
  std::string paper = "a4";
};

struct VerifyOptions {
  std::string folder;
  std::string seal;   ///< SHA-256 of its list of sums, as written down elsewhere; may be empty
  bool again = false; ///< make the papers again and compare
};

struct FindOptions {
  std::string what;               ///< see find/sought.hpp
  std::vector<std::string> files; ///< or `@list.txt`
  CompileOptions rig;             ///< for each of them
  std::string form = "text";      ///< text, csv, json
  unsigned workers = 0;           ///< 0: as many as processors
};

struct PlanOptions {
  std::vector<std::string> files;
  CompileOptions rig; ///< for each of them
  std::string folder;
  FindingsForm findings;
};

struct ShowOptions {
  std::string table;
  std::string file;
  CompileOptions rig;
  std::string form = "text"; ///< text, csv
};

struct BeginOptions {
  std::string file;     ///< to be written; empty only with `print`
  FirstNumbers numbers; ///< used when `lengths` is empty
  std::string lengths;  ///< a table of lengths, CSV
  bool print = false;   ///< show the text and write nothing
};

struct TidyOptions {
  std::vector<std::string> files;
  bool look = false;  ///< say which files are not tidy, write nothing
  bool print = false; ///< write to the terminal, not to the file
  FindingsForm findings;
};

struct MendOptions {
  std::vector<std::string> files;
  bool print = false; ///< show the mended text of the one file and write nothing
};

struct ListOptions {
  std::string what;       ///< one of listings()
  OutsideOptions outside; ///< for `back-ends`
};

// Each verb returns an exit code.
int check_verb(const CheckOptions& options);
int build_verb(const BuildOptions& options);
int changes_verb(const ChangesOptions& options);
int fleet_verb(const FleetOptions& options);
int seal_verb(const SealOptions& options);
int verify_verb(const VerifyOptions& options);
int find_verb(const FindOptions& options);
int plan_verb(const PlanOptions& options);
int show_verb(const ShowOptions& options);
int begin_verb(const BeginOptions& options);
int mend_verb(const MendOptions& options);
int tidy_verb(const TidyOptions& options);
int list_verb(const ListOptions& options);
int explain_verb(const std::string& word);

/// The words after `list`, with what each lists.
struct Listing {
  std::string name;
  std::string help;
};
const std::vector<Listing>& listings();

/// The words after `--print`.
const std::vector<Listing>& phases();

} // namespace sheerpole
