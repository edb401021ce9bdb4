#pragma once

#include "service/open_boat.hpp"
#include "service/texts.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole::service {

/// What can be given another name: the word and how it is called now.
struct Renamable {
  Span span;
  std::string name;
};

/// The name at the byte `offset`; nothing where no name of the files stands.
std::optional<Renamable> renamable(const OpenBoat& boat, SourceId source, std::uint32_t offset);

/// A new name written everywhere, or why not.
struct Renaming {
  std::vector<TextEdit> edits; ///< of all files, in their order; empty: it can not be
  std::string refused;         ///< in words; empty when it can be
};

/// Gives the name at the byte `offset` another one in all files of the boat. The new name has to be one
/// that the language takes and that nothing else has. The edits are proven: the renamed texts are read
/// again, and every place has to stand for the same thing as before.
Renaming rename(const OpenBoat& boat, FileReader& reader, const CompileOptions& options, SourceId source,
                std::uint32_t offset, const std::string& new_name);

} // namespace sheerpole::service
