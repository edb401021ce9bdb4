#pragma once

#include "service/open_boat.hpp"

#include <string>
#include <vector>

namespace sheerpole::service {

/// Words that an editor shows behind a word of the text.
struct Inlay {
  Span behind;
  std::string words;
};

/// Of one file, in the order of the places: behind the name of each stay the lengths of its bodies, behind
/// each adjuster in its stack how far it can go both ways. Sides that are alike are said once. Nothing
/// while the boat has an error.
std::vector<Inlay> inlays(const OpenBoat& boat, SourceId source);

} // namespace sheerpole::service
