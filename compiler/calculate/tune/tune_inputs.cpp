#include "calculate/tune/tune_inputs.hpp"

#include "calculate/facts.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

void say_once(std::vector<Remark>& all, Remark what) {
  if (std::ranges::find(all, what) == all.end())
    all.push_back(std::move(what));
}

} // namespace

TuneInput& TuneInputs::listed(const Remark& of, FactName name) {
  const auto found = std::ranges::find_if(
      inputs, [&](const TuneInput& input) { return input.property == name.text && input.of == of; });
  if (found != inputs.end())
    return *found;
  return inputs.emplace_back(TuneInput{.of = of, .property = std::string(name.text)});
}

std::optional<double> TuneInputs::if_stated(const Remark& of, const std::vector<Particular>& facts,
                                            FactName name) {
  return find_fact(facts, name) == nullptr ? std::nullopt : needed(of, facts, name);
}

std::optional<double> TuneInputs::needed(const Remark& of, const std::vector<Particular>& facts,
                                         FactName name) {
  TuneInput& input = listed(of, name);
  const auto stated = fact_number(facts, name);
  if (!stated)
    return std::nullopt;
  const Particular& fact = *find_fact(facts, name);
  input.value = stated->provenance.written.empty() ? fact.text : stated->provenance.written;
  input.provenance = stated->provenance;
  input.in_bounds = stated->tolerance.has_value();
  return moved(stated->value, stated->influences);
}

std::string TuneInputs::needed_word(const Remark& of, const std::vector<Particular>& facts, FactName name) {
  const std::string word = fact_text(facts, name);
  needed_word(of, name, word);
  return word;
}

bool TuneInputs::needed_word(const Remark& of, FactName name, const std::string& word) {
  listed(of, name).value = word;
  return !word.empty();
}

std::optional<double> TuneInputs::axial_stiffness(MaterialId line) {
  const std::vector<Particular>& facts = rig_[line].particulars;
  const Remark of{TunePhrase::line, {line}};
  if (find_fact(facts, fact_names.stiffness) != nullptr ||
      find_fact(facts, fact_names.modulus) == nullptr ||
      find_fact(facts, fact_names.metallic_area) == nullptr)
    return needed(of, facts, fact_names.stiffness);
  const auto modulus = needed(of, facts, fact_names.modulus);
  const auto area = needed(of, facts, fact_names.metallic_area);
  return *modulus * *area;
}

double TuneInputs::moved(double value, const Influences& influences) {
  for (const Influence& influence : influences) {
    bounds.insert(influence.bound);
    for (const MovedBound& moved : moved_)
      if (influence.bound == moved.bound)
        value += moved.by * influence.amount;
  }
  return value;
}

void TuneInputs::lacks(Remark what) {
  say_once(lacking, std::move(what));
}

void TuneInputs::note(Remark what) {
  say_once(notes, std::move(what));
}

bool TuneInputs::incomplete() const {
  return !lacking.empty() ||
         std::ranges::any_of(inputs, [](const TuneInput& input) { return input.value.empty(); });
}

} // namespace sheerpole
