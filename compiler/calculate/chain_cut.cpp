#include "calculate/chain_cut.hpp"

#include "calculate/cut_length.hpp"
#include "calculate/line_end.hpp"
#include "units/quantity_text.hpp"

#include <cmath>
#include <utility>

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

std::optional<Length> pitch_of(const LineMaterial& chain) {
  for (const Particular& particular : chain.particulars)
    if (particular.name == "pitch")
      return Length::from_si(particular.value.value.si);
  return std::nullopt;
}

/// A chain parts at a link, so the length that is worked out is not the one that can be had.
std::string whole_links(const Rig& rig, const Piece& piece) {
  const auto pitch = pitch_of(rig[piece.material]);
  if (!pitch)
    return "a chain is cut at a whole link; its pitch is not stated";
  if (piece.body.unknown)
    return "a chain is cut at a whole link, every " + length_text(*pitch);
  const double links = std::round(piece.body.known() / *pitch);
  const Length whole = *pitch * links;
  const Length off = whole - piece.body.known();
  const std::string count = std::to_string(static_cast<long>(links));
  return "a chain is cut at a whole link: " + count + " links of " + length_text(*pitch) + " make " +
         length_text(whole) + ", " + length_text(off < Length{} ? -off : off) +
         (off < Length{} ? " shorter" : " longer") + ", for the adjuster to take up";
}

} // namespace

void chain_cut(const Rig& rig, const Stay& stay, std::size_t line, Piece& piece) {
  EndUse below = shackled(line_end(rig, stay, line, Where::below));
  below.end.note = whole_links(rig, piece);
  add_ends(piece, shackled(line_end(rig, stay, line, Where::aloft)), std::move(below));
}

} // namespace sheerpole
