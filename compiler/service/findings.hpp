#pragma once

#include "service/open_boat.hpp"

#include <string>
#include <vector>

namespace sheerpole::service {

/// The findings that have their place in one file; those that have none stand with the file that was asked
/// for.
struct FileFindings {
  std::string file;
  SourceId source;
  bool was_read = true;                    ///< false: the file that was asked for is not there
  std::vector<const Diagnostic*> findings; ///< of `OpenBoat::compiled`
};

/// Of every file of the boat, those without a finding among them, in the order in which they were read.
std::vector<FileFindings> findings_by_file(const OpenBoat& boat);

/// A change of the texts that is offered.
struct Action {
  std::string title; ///< "write 12 mm"
  bool certain = false;
  const Diagnostic* finding = nullptr; ///< that it mends; null: all that is certain
  std::vector<TextEdit> edits;
};

/// The suggested edits of the findings that the span touches, in the order of the findings.
std::vector<Action> actions(const OpenBoat& boat, Span span);

/// All certain edits of the boat's files together, made again and again until none is left, as `mend`
/// makes them; nothing when there is none.
std::vector<Action> mend_all(const OpenBoat& boat, FileReader& reader);

/// The text laid out in the way of the language, as the edit that does so; no edit when it is tidy, nothing
/// when it can not be read.
std::optional<std::vector<TextEdit>> format(const SourceText& text);

} // namespace sheerpole::service
