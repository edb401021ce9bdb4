#pragma once

#include "calculate/derived.hpp"
#include "diagnostics/check_result.hpp"
#include "diagnostics/diagnostic.hpp"
#include "model/rig.hpp"
#include "names/kept_trees.hpp"
#include "names/resolved_tree.hpp"
#include "results/checked_rig.hpp"
#include "rules/check_report.hpp"
#include "source/file_reader.hpp"
#include "source/photograph.hpp"
#include "source/source_set.hpp"
#include "syntax/syntax_tree.hpp"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// What each phase handed on. A later one is empty when an earlier one found an error. What `checked` has
/// is the same thing and no copy of it.
struct Compilation {
  std::shared_ptr<SourceSet> sources; ///< by the names under which they were opened
  std::vector<std::shared_ptr<const SyntaxTree>> trees;
  std::optional<ResolvedTree> names;
  std::shared_ptr<const Rig> rig;
  /// Pictures that the files name; none where only the rig was asked for.
  std::shared_ptr<const std::vector<Photograph>> photographs = std::make_shared<std::vector<Photograph>>();
  std::shared_ptr<const Derived> derived;
  std::optional<CheckedRig> checked;
  std::vector<Diagnostic> findings; ///< in the order of file and place
  /// Of every check; empty when it did not come to that.
  std::shared_ptr<const CheckResults> results = std::make_shared<CheckResults>();
  bool has_errors = false;
};

/// What the command line adds to a rig file.
struct CompileOptions {
  std::vector<std::string> settings;    ///< `mast-step=25 mm`: values for this run, see names/what_if.hpp
  std::vector<std::string> wishes = {}; ///< `mast head-aft 20 mm`: what is to be tuned to in this run
  std::vector<std::string> folders;     ///< folders beside the rig file's own from which `use` may read
  std::string as_of = {};               ///< name of a layer: later ones are left out; empty: none is
  std::string shop = {};                ///< name of the shop for which lengths are restated; may be empty
  unsigned threads = 0;                 ///< for what is worked out in parts; 0: as many as processors
  bool rig_only = false;                ///< nothing is calculated and checked
  Wanted wanted = Wanted::words;        ///< counts: what checks read, too little for a paper
  bool rig_alone = false;    ///< nobody asks for the trees and the names behind it: large ones are let go
  bool photographs = true;   ///< false: the pictures that the rig names are left alone, and not missed
  KeptTrees* kept = nullptr; ///< of texts that were read before; may be null
};

/// Takes a rig file through all phases. A phase is not begun when one before it has reported an error, so
/// that one cause does not make findings in two phases; names are still bound in a file with slips in its
/// text.
Compilation compile(const std::string& path, FileReader& reader, const CompileOptions& options = {});

/// What papers that compare call a rig: "boat.rig", "boat.rig as designed", "boat.rig with step=25 mm".
std::string called(const std::string& file, const CompileOptions& rig);

} // namespace sheerpole
