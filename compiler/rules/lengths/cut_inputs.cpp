#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "wording/checks/common_phrases.hpp"
#include "wording/checks/length_phrases.hpp"

#include <algorithm>
#include <map>

/// What a cut rests on: inputs that are missing, values that are assumed.
namespace sheerpole::cut_inputs {

namespace {

using Common = CommonCheckPhrase;

using P = LengthCheckPhrase;

/// The piece by the name that the finding gives its stay: `backstay-leg 1 of 2` for both sides.
std::string piece_name(const Rig& rig, const Piece& piece, const std::string& stay) {
  if (piece.of == 1)
    return stay;
  return say(rig, {P::piece_of, {Words{stay}, Count{piece.number}, Count{piece.of}}});
}

std::string all_missing(const Rig& rig, const Piece& piece) {
  Remarks inputs{{}, Join::and_word};
  for (const MissingInput& missing : piece.missing)
    inputs.all.push_back(missing.what);
  return say(rig, inputs);
}

void check_cut_is_draft(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const Piece& piece : stay.pieces) {
                    const std::string subject = piece_name(rig, piece, name);
                    if (piece.missing.empty()) {
                      of_stay.pass(piece.of == 1 ? Remark(P::cut_complete)
                                                 : Remark(P::piece_cut_complete, {Count{piece.number}}));
                      continue;
                    }
                    Diagnostic finding =
                        diagnose("cut-is-draft", {{"piece", subject}, {"what", all_missing(rig, piece)}})
                            .at(rig[stay.stay].place, said(P::lacks_input))
                            .about(subject)
                            .build();
                    for (const MissingInput& input : piece.missing)
                      finding.others.push_back({input.place, say(rig, input.mend)});
                    of_stay.find(std::move(finding));
                  }
                });
}

/// Meets every provenance of a rig once.
class Collector {
public:
  void meet(const Provenance& provenance) {
    if (!provenance.place)
      return;
    const bool itself =
        provenance.source_class == SourceClass::assumed && provenance.assumptions.size() == 1;
    for (const std::string& name : provenance.assumptions)
      (itself ? own_ : standing_in_).emplace(name, *provenance.place);
  }
  template <class Value>
  void meet(const Sourced<Value>& value) {
    meet(value.provenance);
  }
  template <class Value>
  void meet(const std::optional<Value>& value) {
    if (value)
      meet(*value);
  }
  void meet(const std::vector<Particular>& facts) {
    for (const Particular& fact : facts)
      meet(fact.value);
  }
  void meet(const End& end) {
    for (const EndDimension& dimension : end.dimensions)
      meet(dimension.length);
  }
  void meet(const LineMaterial& material) {
    meet(material.diameter);
    meet(material.break_load);
    meet(material.particulars);
  }
  void meet(const Splice& splice) {
    meet(splice.bury);
    meet(splice.eye_allowance);
    meet(splice.tail_to_trim);
    meet(splice.contraction);
    meet(splice.recovered);
  }
  void meet(const Part& part) {
    meet(part.length);
    meet(part.shortest);
    meet(part.longest);
    if (part.screw)
      meet(part.screw->provenance);
    meet(part.engaged_at_longest);
    meet(part.upper);
    meet(part.lower);
    meet(part.wrap);
  }
  void meet(const Stay& stay) {
    meet(stay.stated_pin_to_pin);
    meet(stay.particulars);
    for (const Reading& reading : stay.readings) {
      for (const Sourced<Length>& run : reading.runs)
        meet(run);
      meet(reading.offset);
      meet(reading.hoist_offset);
      meet(reading.particulars);
    }
    for (const StackItem& item : stay.stack) {
      meet(item.open);
      meet(item.set_length);
      meet(item.spare_bury);
      meet(item.line_length);
    }
  }

  std::map<std::string, Span> places() const {
    std::map<std::string, Span> result = own_;
    result.insert(standing_in_.begin(), standing_in_.end());
    return result;
  }

private:
  std::map<std::string, Span> own_;
  std::map<std::string, Span> standing_in_;
};

std::map<std::string, Span> assumed_places(const Rig& rig) {
  Collector collector;
  for (const Point& point : rig.points)
    collector.meet(point.provenance);
  for (const LineMaterial& material : rig.materials)
    collector.meet(material);
  for (const Splice& splice : rig.splices)
    collector.meet(splice);
  for (const Part& part : rig.parts)
    collector.meet(part);
  for (const Stay& stay : rig.stays)
    collector.meet(stay);
  for (const Record& record : rig.records)
    collector.meet(record.facts);
  return collector.places();
}

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
  return say(rig, {P::on_both_sides, {Words{piece_name(rig, piece, rig[piece.stay].base)}}});
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
  return joined(names, Join::and_word);
}

void check_assumed_input(const Rig& rig, const Derived& derived, CheckReport& report) {
  const std::map<std::string, Span> places = assumed_places(rig);
  const std::vector<Reach> reaches = reaches_of(derived);
  if (reaches.empty())
    report.pass(said(Common::this_rig), {P::none_assumed});
  for (const Reach& reach : reaches) {
    const auto place = places.find(reach.assumption);
    const Span fallback = rig[reach.pieces.front()->stay].place;
    report.find(diagnose("assumed-input",
                         {{"value", reach.assumption}, {"pieces", all_pieces(rig, derived, reach)}})
                    .at(place == places.end() ? fallback : place->second, said(P::assumed_here))
                    .about(reach.assumption));
  }
}

} // namespace

const CheckTable checks{CheckRow{"cut-is-draft", check_cut_is_draft},
                        CheckRow{"assumed-input", check_assumed_input}};

} // namespace sheerpole::cut_inputs
