#pragma once

#include "service/open_boat.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerpole::service {

/// A property as it is written, or one part of a stack.
struct WrittenProperty {
  std::string name;    ///< `knots`; `plate-a.port` of one side; of a stack the part
  std::string title;   ///< of a point; empty: it has none
  std::string written; ///< the value as it stands; of a stack what stands in the parentheses
  Span span;           ///< of a property its value; of a stack the whole item
};

/// One declaration as it is written, with its blocks.
struct WrittenDeclaration {
  std::string kind; ///< `reading`
  std::string name; ///< `cap-shroud.port`; empty: it has none
  std::string title;
  std::string of; ///< `cap-shroud.port` of a reading; empty: it is of nothing
  std::string on; ///< of points: the spar that carries them; empty: none
  Span span;      ///< the whole of it
  Span block;     ///< with its braces
  std::vector<WrittenProperty> properties = {};
  std::vector<WrittenDeclaration> inside = {};
};

/// What the files of a boat declare, in the order of files and places; with a kind only that. It needs no
/// more than that the texts can be read, so a form can write into a boat whose numbers are not there yet.
std::vector<WrittenDeclaration> declarations(const OpenBoat& boat, std::string_view kind = {});

} // namespace sheerpole::service
