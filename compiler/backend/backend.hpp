#pragma once

// What a back end may use comes with the contract: it includes no room of the compiler by itself.
#include "backend/drawing/drawing.hpp"
#include "backend/not_yet.hpp"
#include "backend/page/paper.hpp"
#include "backend/paper_identity.hpp"
#include "backend/paper_words.hpp"
#include "backend/printed_sums.hpp"
#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "backend/text_page.hpp"
#include "base/code_point.hpp"
#include "calculate/spool_plan/spool_plan.hpp"
#include "diagnostics/render.hpp"
#include "results/checked_rig.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One file that a back end hands back, by a relative name without folders above it.
struct OutputFile {
  std::string name; ///< `cut-list.txt`
  std::string bytes;
};

/// A paper that the driver has drawn as a PDF.
struct PagedFile {
  std::string name; ///< `bench-cards.pdf`
  std::string title;
  std::vector<Drawing> pages;
};

struct OutputBundle {
  std::vector<OutputFile> files;
  std::vector<PagedFile> papers = {}; ///< for those who ask for PDFs
};

/// What a back end says of itself.
struct BackendDescription {
  std::string name;                        ///< `cut-list`
  std::string summary;                     ///< one line, in a rigger's words
  std::vector<std::string> outputs;        ///< names of the files it makes
  std::vector<std::string> sometimes = {}; ///< and of those that it makes when there is something to say
  std::vector<std::string> papers = {};    ///< names of the PDFs that it makes for those who ask
};

/// One rig of several that are planned together.
struct FleetRig {
  const CheckedRig* checked = nullptr;
  std::string file; ///< as it was asked for, without its folder
  /// By SourceId: two files of the fleet are one file when their keys are equal. Never shown.
  std::vector<std::string> source_keys;
};

/// Everything a back end may use. The same request gives the same bytes.
struct BackendRequest {
  const CheckedRig& checked;
  std::vector<FleetRig> fleet = {}; ///< all rigs, `checked` among them; empty: that one alone
  PaperSize paper = PaperSize::a4;  ///< what is printed on
  /// Whether `papers` are wanted; a back end may leave out what it would make for them alone.
  bool printed = true;
  /// The rig as it was, for those that say what has changed; null: nothing to compare with.
  const CheckedRig* previous = nullptr;
  std::string name = {};          ///< what `checked` is called beside it: "pellimoor.rig as fitted"
  std::string previous_name = {}; ///< and what that is called
};

/// Turns a checked rig into files. Pure: no disk, no clock, no environment, no network.
class Backend {
public:
  virtual ~Backend() = default;
  virtual BackendDescription describe() const = 0;
  virtual OutputBundle generate(const BackendRequest& request) const = 0;
};

} // namespace sheerpole
