#include "calculate/rope_cut.hpp"

#include "calculate/cut_length.hpp"
#include "calculate/splice_allowance.hpp"

namespace sheerpole {

void rope_cut(const Rig& rig, const Stay& stay, std::size_t line, Piece& piece) {
  const LineMaterial& material = rig[piece.material];
  add_ends(piece, splice_allowance(rig, material, line_end(rig, stay, line, Where::aloft)),
           splice_allowance(rig, material, line_end(rig, stay, line, Where::below)),
           line_stretch(rig, stay, piece));
}

} // namespace sheerpole
