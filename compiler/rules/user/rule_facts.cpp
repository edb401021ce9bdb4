#include "rules/user/rule_facts.hpp"

#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

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

RuleFact of_length(const std::optional<Sourced<Length>>& length) {
  return length ? of_number({length->value.si(), dimension::length}, length->provenance) : RuleFact{};
}

RuleFact of_share(const std::optional<Sourced<double>>& share) {
  return share ? of_number({share->value, dimension::number}, share->provenance) : RuleFact{};
}

RuleFact of_measure(const std::optional<Sourced<RopeMeasure>>& measure) {
  if (!measure)
    return {};
  const Dimension dimension = measure->value.in_diameters ? dimension::rope_diameters : dimension::length;
  return of_number({measure->value.amount, dimension}, measure->provenance);
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

} // namespace

RuleFact rule_fact(const Rig& rig, const Stay& stay, std::string_view property) {
  if (property == "sides")
    return of_words({stay.side == Side::centre ? "" : std::string(name_of(stay.side))});
  if (property == "line")
    return of_words({rig[stay.material].name});
  if (property == "duty")
    return of_words(stay.duties);
  if (property == "pin-to-pin")
    return of_length(stay.stated_pin_to_pin);
  if (property == "path") {
    std::vector<std::string> points;
    for (const PathStop& stop : stay.path)
      points.push_back(rig[stop.point].base);
    return of_words(std::move(points),
                    stay.path.empty() ? std::nullopt : std::optional(stay.path.front().place));
  }
  return of_particular(stay.particulars, property);
}

RuleFact rule_fact(const Rig& /*rig*/, const Part& part, std::string_view property) {
  const std::pair<std::string_view, const std::optional<Sourced<Length>>*> lengths[] = {
      {"length", &part.length},   {"shortest", &part.shortest},
      {"longest", &part.longest}, {"step", &part.step},
      {"wrap", &part.wrap},       {"engaged-at-longest", &part.engaged_at_longest}};
  for (const auto& [name, length] : lengths)
    if (property == name)
      return of_length(*length);
  if (property == "upper" || property == "lower") {
    const End& end = property == "upper" ? part.upper : part.lower;
    return of_words({end.type}, end.place);
  }
  if (property == "thread")
    return part.screw ? of_text(part.screw->thread.designation, part.screw->provenance.place) : RuleFact{};
  if (property == "screw")
    return part.screw ? of_words({part.screw->pair ? "pair" : "single"}, part.screw->provenance.place)
                      : RuleFact{};
  return of_particular(part.particulars, property);
}

RuleFact rule_fact(const Rig& /*rig*/, const LineMaterial& line, std::string_view property) {
  if (property == "construction")
    return of_text(line.construction.text);
  if (property == "grade")
    return of_text(line.grade);
  if (property == "size")
    return of_text(line.size.name, line.diameter.provenance.place);
  if (property == "diameter")
    return of_length(line.diameter);
  if (property == "break-load")
    return line.break_load
               ? of_number({line.break_load->value.si(), dimension::force}, line.break_load->provenance)
               : RuleFact{};
  return of_particular(line.particulars, property);
}

RuleFact rule_fact(const Rig& /*rig*/, const Splice& splice, std::string_view property) {
  if (property == "bury")
    return of_measure(splice.bury);
  if (property == "eye-allowance")
    return of_measure(splice.eye_allowance);
  if (property == "tail-to-trim")
    return of_measure(splice.tail_to_trim);
  if (property == "contraction")
    return of_share(splice.contraction);
  if (property == "recovered")
    return of_share(splice.recovered);
  if (property == "taper")
    return of_text(splice.taper);
  return of_particular(splice.particulars, property);
}

RuleFact rule_fact(const Rig& rig, const Spreader& spreader, std::string_view property) {
  if (property == "root" || property == "tip")
    return of_words({rig[property == "root" ? spreader.root : spreader.tip].base});
  if (property == "sides")
    return of_words({spreader.side == Side::centre ? "" : std::string(name_of(spreader.side))});
  if (property == "hold")
    return of_words({spreader.hold}, spreader.place);
  return of_particular(spreader.particulars, property);
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
