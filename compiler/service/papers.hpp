#pragma once

#include "backend/backend.hpp"

#include <memory>
#include <span>
#include <string>
#include <vector>

namespace sheerpole::service {

/// The papers of one back end.
struct BackendPapers {
  std::string backend;
  std::string summary;
  std::vector<OutputFile> files;
  std::string fault; ///< of the back end itself; empty: it has none
};

using BackendList = std::span<const std::unique_ptr<Backend>>;

/// What the back ends make of a checked rig, in their order; of those named alone, where `only` names any.
std::vector<BackendPapers> papers(const CheckedRig& checked, BackendList backends,
                                  const std::vector<std::string>& only, PaperSize size = PaperSize::a4);

/// The media type of a file by its name (IANA): "text/html".
std::string_view media_type(std::string_view file);

} // namespace sheerpole::service
