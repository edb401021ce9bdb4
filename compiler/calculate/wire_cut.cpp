#include "calculate/wire_cut.hpp"

#include "calculate/cut_length.hpp"
#include "calculate/insertion.hpp"

namespace sheerpole {

void wire_cut(const Rig& rig, const Stay& stay, std::size_t line, Piece& piece) {
  add_ends(piece, insertion(line_end(rig, stay, line, Where::aloft)),
           insertion(line_end(rig, stay, line, Where::below)), line_stretch(rig, stay, piece));
}

} // namespace sheerpole
