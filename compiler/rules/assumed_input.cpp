#include "rules/assumed_places.hpp"
#include "rules/by_side.hpp"
#include "rules/length_checks.hpp"

#include <algorithm>
#include <map>

namespace sheerpole {

namespace {

/// What one assumed value reaches.
struct Reach {
  std::string assumption;
  std::vector<const Piece*> pieces;
};

/// In the order in which the pieces meet them.
std::vector<Reach> reaches_of(const Derived& derived) {
  std::vector<Reach> reaches;
  for (const DerivedStay& stay : derived.stays)
    for (const Piece& piece : stay.pieces)
      for (const Term& term : piece.cut.terms)
        for (const std::string& name : term.provenance.assumptions) {
          auto reach = std::find_if(reaches.begin(), reaches.end(),
                                    [&](const Reach& known) { return known.assumption == name; });
          if (reach == reaches.end())
            reach = reaches.insert(reaches.end(), {name, {}});
          if (reach->pieces.empty() || reach->pieces.back() != &piece)
            reach->pieces.push_back(&piece);
        }
  return reaches;
}

std::string name_on(const Rig& rig, const Piece& piece, bool both_sides) {
  if (!both_sides)
    return piece.name;
  std::string name = rig[piece.stay].base;
  if (piece.of > 1)
    name += " " + std::to_string(piece.number) + " of " + std::to_string(piece.of);
  return name + " on both sides";
}

/// "cap-shroud on both sides, backstay and runner.port"
std::string all_pieces(const Rig& rig, const Derived& derived, const Reach& reach) {
  const auto reached = [&](const DerivedStay* stay, int number) {
    return stay != nullptr &&
           std::any_of(reach.pieces.begin(), reach.pieces.end(), [&](const Piece* piece) {
             return piece->stay == stay->stay && piece->number == number;
           });
  };
  std::vector<std::string> names;
  for (const Piece* piece : reach.pieces) {
    const bool both = reached(other_side(rig, derived, derived.stays[piece->stay.index()]), piece->number);
    std::string name = name_on(rig, *piece, both);
    if (std::find(names.begin(), names.end(), name) == names.end())
      names.push_back(std::move(name));
  }
  std::string text = names.front();
  for (std::size_t i = 1; i < names.size(); ++i)
    text += (i + 1 == names.size() ? " and " : ", ") + names[i];
  return text;
}

} // namespace

void check_assumed_input(const Rig& rig, const Derived& derived, CheckReport& report) {
  const std::map<std::string, Span> places = assumed_places(rig);
  const std::vector<Reach> reaches = reaches_of(derived);
  if (reaches.empty())
    report.pass("this rig", "no assumed value reaches a cut");
  for (const Reach& reach : reaches) {
    const auto place = places.find(reach.assumption);
    const Span fallback = rig[reach.pieces.front()->stay].place;
    report.find(diagnose("assumed-input",
                         {{"value", reach.assumption}, {"pieces", all_pieces(rig, derived, reach)}})
                    .at(place == places.end() ? fallback : place->second, "assumed here")
                    .about(reach.assumption));
  }
}

} // namespace sheerpole
