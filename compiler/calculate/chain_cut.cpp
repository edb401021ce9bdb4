#include "calculate/chain_cut.hpp"

#include "calculate/cut_length.hpp"
#include "calculate/line_end.hpp"

namespace sheerpole {

namespace {

EndUse shackled(const LineEnd& end) {
  EndUse use;
  if (end.bare())
    return use;
  use.end.part = end.part->name;
  use.end.title = end.part->title;
  return use;
}

} // namespace

void chain_cut(const Rig& rig, const Stay& stay, std::size_t line, Piece& piece) {
  add_ends(piece, shackled(line_end(rig, stay, line, Where::aloft)),
           shackled(line_end(rig, stay, line, Where::below)));
}

} // namespace sheerpole
