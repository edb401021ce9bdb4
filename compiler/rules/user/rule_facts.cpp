#include "rules/user/user_rules.hpp"

#include "base/internal_error.hpp"
#include "model/field.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <type_traits>
#include <utility>

namespace sheerpole {

namespace {

RuleFact of_number(Quantity value, const Provenance& provenance) {
  RuleFact fact;
  fact.stated = true;
  fact.number = value;
  fact.text = !provenance.written.empty()            ? provenance.written
              : value.dimension == dimension::length ? length_text(Length::from_si(value.si))
                                                     : format_number(value.si);
  fact.place = provenance.place;
  return fact;
}

RuleFact of_words(std::vector<std::string> words, std::optional<Span> place = std::nullopt) {
  RuleFact fact;
  for (std::string& word : words)
    if (!word.empty()) {
      fact.text += (fact.text.empty() ? "" : ", ") + word;
      fact.words.push_back(std::move(word));
    }
  fact.stated = !fact.words.empty();
  fact.place = place;
  return fact;
}

RuleFact of_text(const std::string& text, std::optional<Span> place = std::nullopt) {
  RuleFact fact = of_words({text}, place);
  if (fact.stated)
    fact.text = "\"" + text + "\"";
  return fact;
}

/// What is kept as written. Only a number tells how it was written.
RuleFact of_particular(const std::vector<Particular>& facts, std::string_view property) {
  const Particular* fact = find_fact(facts, property);
  if (fact == nullptr)
    return {};
  if (!fact->value.provenance.written.empty())
    return of_number(fact->value.value, fact->value.provenance);
  if (!fact->names.empty())
    return of_words(fact->names, fact->value.provenance.place);
  return of_text(fact->text, fact->value.provenance.place);
}

/// What a member of the model says under its property, by its type.
class FactOfMember {
public:
  explicit FactOfMember(const Rig& rig) : rig_(rig) {}

  RuleFact operator()(const Sourced<Length>& length) const {
    return of_number({length.value.si(), dimension::length}, length.provenance);
  }
  RuleFact operator()(const Sourced<Force>& force) const {
    return of_number({force.value.si(), dimension::force}, force.provenance);
  }
  RuleFact operator()(const Sourced<double>& share) const {
    return of_number({share.value, dimension::number}, share.provenance);
  }
  RuleFact operator()(const Sourced<RopeMeasure>& measure) const {
    const Dimension dimension = measure.value.in_diameters ? dimension::rope_diameters : dimension::length;
    return of_number({measure.value.amount, dimension}, measure.provenance);
  }
  RuleFact operator()(const std::string& text) const { return of_text(text); }
  RuleFact operator()(const Construction& construction) const { return of_text(construction.text); }
  RuleFact operator()(const NamedSize& size) const { return of_text(size.name); }
  RuleFact operator()(const Screw& screw) const {
    return of_text(screw.thread.designation, screw.provenance.place);
  }
  RuleFact operator()(const End& end) const {
    return of_words({std::string(name_of(end.type))}, end.place);
  }
  RuleFact operator()(Side side) const {
    return of_words({side == Side::centre ? "" : std::string(name_of(side))});
  }
  RuleFact operator()(MaterialId id) const { return of_words({rig_[id].name}); }
  RuleFact operator()(PointId id) const { return of_words({rig_[id].base}); }
  RuleFact operator()(const std::vector<std::string>& words) const { return of_words(words); }
  RuleFact operator()(const std::vector<PathStop>& path) const {
    std::vector<std::string> points;
    for (const PathStop& stop : path)
      points.push_back(rig_[stop.point].base);
    return of_words(std::move(points), path.empty() ? std::nullopt : std::optional(path.front().place));
  }
  template <class Value>
  RuleFact operator()(const std::optional<Value>& value) const {
    return value ? (*this)(*value) : RuleFact{};
  }

private:
  const Rig& rig_;
};

/// The member that a property states, of those that the table of the type names; else the fact of that
/// name.
template <class Thing>
RuleFact fact_of(const Rig& rig, const Thing& thing, std::string_view property) {
  std::optional<RuleFact> found;
  visit_fields(thing, [&](const auto& field, const auto& member) {
    if (found || field.property != property)
      return;
    if constexpr (std::is_invocable_v<FactOfMember, decltype(member)>)
      found = FactOfMember(rig)(member);
    else
      internal_error("a rule asks for a property that has no words for rules");
  });
  return found ? *std::move(found) : of_particular(thing.particulars, property);
}

} // namespace

RuleFact rule_fact(const Rig& rig, const Stay& stay, std::string_view property) {
  return fact_of(rig, stay, property);
}

RuleFact rule_fact(const Rig& rig, const Part& part, std::string_view property) {
  if (property == "screw") // the one property that two members of the model share with its thread
    return part.screw ? of_words({part.screw->pair ? "pair" : "single"}, part.screw->provenance.place)
                      : RuleFact{};
  return fact_of(rig, part, property);
}

RuleFact rule_fact(const Rig& rig, const LineMaterial& line, std::string_view property) {
  RuleFact fact = fact_of(rig, line, property);
  if (property == "size") // written where the diameter that it stands for is
    fact.place = line.diameter.provenance.place;
  return fact;
}

RuleFact rule_fact(const Rig& rig, const Splice& splice, std::string_view property) {
  return fact_of(rig, splice, property);
}

RuleFact rule_fact(const Rig& rig, const Spreader& spreader, std::string_view property) {
  if (property == "hold") // a word, no text
    return of_words({spreader.hold}, spreader.place);
  return fact_of(rig, spreader, property);
}

namespace {

std::vector<Length> known(const LengthSum& sum) {
  if (sum.unknown)
    return {};
  return {sum.known()};
}

} // namespace

std::vector<Length> stay_quantity(const DerivedStay& stay, std::string_view quantity) {
  if (quantity == "pin-to-pin")
    return known(stay.pin_to_pin);
  if (quantity == "body" && stay.pieces.size() <= 1)
    return known(stay.body);
  std::vector<Length> values;
  if (quantity == "body" || quantity == "cut") {
    for (const Piece& piece : stay.pieces) {
      const LengthSum& sum = quantity == "body" ? piece.body : piece.cut;
      // A cut that lacks an input is no number to hold against another.
      if (!sum.unknown && (quantity == "body" || piece.missing.empty()))
        values.push_back(sum.known());
    }
    return values;
  }
  for (const TakeUp& adjuster : stay.adjusters) {
    if (quantity == "to-tighten")
      values.push_back(adjuster.to_tighten);
    else if (quantity == "to-slacken")
      values.push_back(adjuster.to_slacken);
    else if (quantity == "engaged" && adjuster.engaged)
      values.push_back(*adjuster.engaged);
  }
  return values;
}

} // namespace sheerpole
