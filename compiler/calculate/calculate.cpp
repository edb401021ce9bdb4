#include "calculate/calculate.hpp"

#include "calculate/body.hpp"
#include "calculate/chain_cut.hpp"
#include "calculate/pin_to_pin.hpp"
#include "calculate/rope_cut.hpp"
#include "calculate/state_position.hpp"
#include "calculate/take_up.hpp"
#include "calculate/wire_cut.hpp"

#include <utility>

namespace sheerpole {

namespace {

std::vector<std::size_t> lines_of(const Stay& stay) {
  std::vector<std::size_t> lines;
  for (std::size_t i = 0; i < stay.stack.size(); ++i)
    if (stay.stack[i].kind == StackItem::Kind::line)
      lines.push_back(i);
  return lines;
}

std::string piece_name(const Stay& stay, std::size_t number, std::size_t of) {
  if (of == 1)
    return stay.name;
  return stay.name + " " + std::to_string(number) + " of " + std::to_string(of);
}

std::vector<Piece> pieces_of(const Rig& rig, StayId id, const LengthSum& pin_to_pin,
                             const Hardware& hardware) {
  const Stay& stay = rig[id];
  const std::vector<std::size_t> lines = lines_of(stay);
  std::vector<LengthSum> bodies = piece_bodies(stay, pin_to_pin, hardware);
  std::vector<Piece> pieces;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    Piece piece;
    piece.name = piece_name(stay, i + 1, lines.size());
    piece.stay = id;
    piece.number = static_cast<int>(i + 1);
    piece.of = static_cast<int>(lines.size());
    piece.material = stay.stack[lines[i]].material.value_or(stay.material);
    piece.body = std::move(bodies[i]);
    if (!stay.stack[lines[i]].line_length)
      piece.missing = hardware.missing;
    switch (rig[piece.material].kind) {
    case LineMaterial::Kind::rope:
      rope_cut(rig, stay, lines[i], piece);
      break;
    case LineMaterial::Kind::wire:
    case LineMaterial::Kind::rod:
      wire_cut(rig, stay, lines[i], piece);
      break;
    case LineMaterial::Kind::chain:
      chain_cut(rig, stay, lines[i], piece);
      break;
    }
    pieces.push_back(std::move(piece));
  }
  return pieces;
}

DerivedStay derive(const Rig& rig, StayId id) {
  const Stay& stay = rig[id];
  PinToPin length = pin_to_pin(rig, stay);
  const Hardware parts = hardware(rig, stay);
  DerivedStay result;
  result.stay = id;
  result.route = length.route;
  result.body = body(length.sum, parts);
  result.pieces = pieces_of(rig, id, length.sum, parts);
  result.pin_to_pin = std::move(length.sum);
  result.other_routes = std::move(length.other_routes);
  for (std::size_t i = 0; i < stay.stack.size(); ++i)
    if (auto adjuster = take_up(rig, stay, i)) {
      adjuster->stay = id;
      result.adjusters.push_back(std::move(*adjuster));
    }
  return result;
}

std::vector<DerivedPosition> positions_of(const Rig& rig) {
  std::vector<DerivedPosition> result;
  for (std::size_t state = 0; state < rig.states.size(); ++state) {
    const std::vector<StatePosition>& positions = rig.states[state].positions;
    for (std::size_t i = 0; i < positions.size(); ++i)
      result.push_back(state_position(rig, state, i));
  }
  return result;
}

} // namespace

Derived calculate(const Rig& rig) {
  Derived derived;
  for (std::size_t i = 0; i < rig.stays.size(); ++i)
    derived.stays.push_back(derive(rig, StayId{static_cast<std::uint32_t>(i)}));
  derived.positions = positions_of(rig);
  return derived;
}

} // namespace sheerpole
