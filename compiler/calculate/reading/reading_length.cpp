#include "calculate/reading/reading_length.hpp"

#include "calculate/facts.hpp"
#include "calculate/length/length_sum.hpp"
#include "calculate/length/path_length.hpp"
#include "calculate/physics/line_deformation.hpp"
#include "calculate/physics/physical_values.hpp"
#include "calculate/physics/tape_correction.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerpole {

namespace {

struct Corrections {
  const Rig& rig;
  const Reading& reading;
  const Record& tape;
  Length read;
  std::vector<Term>& terms;
  std::vector<Remark>& not_corrected;

  void add(TermKind kind, ReadingPhrase name, const std::optional<Length>& amount, Remark how,
           const std::vector<const Provenance*>& sources) {
    if (!amount) {
      not_corrected.push_back({ReadingPhrase::outside_correction, {Remarks{{name}}}});
      return;
    }
    Provenance provenance = combine(sources);
    provenance.note = tape.name;
    provenance.source_class = SourceClass::computed;
    terms.push_back({kind, *amount, std::move(provenance), {}, std::move(how)});
  }

  void missing(ReadingPhrase name, Remark what) {
    not_corrected.push_back({ReadingPhrase::not_stated, {Remarks{{name}}, Remarks{{std::move(what)}}}});
  }
  Remark of_tape(const char* property) const {
    return {ReadingPhrase::property_of_name, {Words{property}, Words{tape.name}}};
  }
  static Remark of_reading(const char* property) {
    return {ReadingPhrase::property_of_reading, {Words{property}}};
  }

  void standard() {
    const auto nominal = fact_length(tape.facts, fact_names.nominal_length);
    const auto actual = fact_length(tape.facts, fact_names.true_length);
    if (nominal && actual)
      add(TermKind::tape_standard, ReadingPhrase::tape_standard,
          tape_standardisation_correction(read, nominal->value, actual->value),
          {ReadingPhrase::tape_says, {actual->value, nominal->value}},
          {&nominal->provenance, &actual->provenance});
    else if (nominal || actual)
      missing(ReadingPhrase::tape_standard, of_tape(nominal ? "true-length" : "nominal-length"));
  }

  void temperature() {
    const auto expansion = fact_number(tape.facts, fact_names.thermal);
    const auto standard = fact_number(tape.facts, fact_names.standard_temperature);
    const auto as_read = fact_number(reading.particulars, fact_names.temperature);
    if (expansion && standard && as_read) {
      const double warmer = as_read->value - standard->value;
      add(TermKind::tape_temperature, ReadingPhrase::tape_temperature,
          tape_temperature_correction(read, expansion->value, warmer),
          {ReadingPhrase::warmer_than_standard, {Fixed{warmer, 1}}},
          {&as_read->provenance, &expansion->provenance, &standard->provenance});
    } else if (as_read || standard) {
      missing(ReadingPhrase::tape_temperature, !as_read    ? of_reading("temperature")
                                               : !standard ? of_tape("standard-temperature")
                                                           : of_tape("thermal"));
    }
  }

  void pull() {
    const auto pulled = fact_force(reading.particulars, fact_names.pull);
    const auto standard = fact_force(tape.facts, fact_names.standard_pull);
    const auto section = fact_number(tape.facts, fact_names.section);
    const auto modulus = fact_number(tape.facts, fact_names.modulus);
    if (pulled && standard && section && modulus) {
      const auto stiffness = axial_stiffness(modulus->value, section->value);
      add(TermKind::tape_pull, ReadingPhrase::tape_pull,
          stiffness ? tape_pull_correction(read, pulled->value, standard->value, *stiffness) : std::nullopt,
          {ReadingPhrase::pull_against_standard,
           {Fixed{pulled->value.newtons(), 0}, Fixed{standard->value.newtons(), 0}}},
          {&pulled->provenance, &standard->provenance, &section->provenance, &modulus->provenance});
    } else if (standard) {
      missing(ReadingPhrase::tape_pull, !pulled    ? of_reading("pull")
                                        : !section ? of_tape("section")
                                                   : of_tape("modulus"));
    }
  }

  void sag() {
    const Particular* spans = find_fact(reading.particulars, fact_names.spans);
    if (spans == nullptr)
      return;
    const auto mass = fact_number(tape.facts, fact_names.linear_mass);
    const auto pulled = fact_force(reading.particulars, fact_names.pull);
    // A tape along a stay hangs steeply and sags little; taken for a level one it would shorten the cut.
    const auto slope = fact_number(reading.particulars, fact_names.slope);
    if (!mass || !pulled || !slope) {
      missing(ReadingPhrase::tape_sag, !mass     ? of_tape("linear-mass")
                                       : !pulled ? of_reading("pull")
                                                 : of_reading("slope"));
      return;
    }
    std::optional<Length> sum = Length{};
    std::vector<const Provenance*> sources{&mass->provenance, &pulled->provenance, &slope->provenance};
    for (const Sourced<Quantity>& span : spans->values) {
      const auto one = tape_sag_correction(Length::from_si(span.value.si),
                                           mass->value * standard_gravity_metres_per_second_squared,
                                           pulled->value, slope->value);
      sources.push_back(&span.provenance);
      sum = sum && one ? std::optional(*sum + *one) : std::nullopt;
    }
    const std::size_t count = spans->values.size();
    add(TermKind::tape_sag, ReadingPhrase::tape_sag, sum,
        {count == 1 ? ReadingPhrase::free_span : ReadingPhrase::free_spans,
         {Count{static_cast<std::int64_t>(count)}, Fixed{pulled->value.newtons(), 0}}},
        sources);
  }
};

/// Adds the corrections of the tape to what was `read` off it. Where the tape states a part of a correction
/// and the rest is missing, says so in `not_corrected`.
void add_tape_corrections(const Rig& rig, const Reading& reading, Length read, std::vector<Term>& terms,
                          std::vector<Remark>& not_corrected) {
  const Record* tape = reading.tape.empty() ? nullptr : find_record(rig, RecordKind::tape, reading.tape);
  if (tape == nullptr) {
    for (const FactName& name : {fact_names.temperature, fact_names.spans, fact_names.slope})
      if (find_fact(reading.particulars, name) != nullptr)
        not_corrected.push_back({ReadingPhrase::no_tape, {Words{std::string(name.text)}}});
    return;
  }
  Corrections corrections{rig, reading, *tape, read, terms, not_corrected};
  corrections.standard();
  corrections.temperature();
  corrections.pull();
  corrections.sag();
}

/// Adds what an old stay of another line was longer under the dock tension than under the pull with which
/// it was measured.
void add_old_stretch(const Rig& rig, const Stay& stay, const Reading& reading, Length read,
                     std::vector<Term>& terms, std::vector<Remark>& not_corrected) {
  const LineMaterial& line = rig[*reading.old_line];
  const auto dock = fact_force(stay.particulars, fact_names.dock_tension);
  const auto pulled = fact_force(reading.particulars, fact_names.pull);
  const auto stiffness = line_stiffness(line);
  if (!dock || !pulled || !stiffness) {
    const Remark what =
        !dock     ? Remark(ReadingPhrase::property_of_stay, {Words{"dock-tension"}, Words{stay.base}})
        : !pulled ? Remark(ReadingPhrase::property_of_reading, {Words{"pull"}})
                  : Remark(ReadingPhrase::property_of_line, {Words{"stiffness"}, *reading.old_line});
    not_corrected.push_back(
        {ReadingPhrase::not_stated, {Remarks{{ReadingPhrase::old_stretch}}, Remarks{{what}}}});
    return;
  }
  const auto stretch = elastic_stretch(read, dock->value - pulled->value, stiffness->value);
  if (!stretch) {
    not_corrected.push_back({ReadingPhrase::outside_hooke, {Remarks{{ReadingPhrase::old_stretch}}}});
    return;
  }
  Provenance provenance =
      combine({&dock->provenance, &pulled->provenance, &stiffness->provenance}, Derivation::hookes_law);
  provenance.source_class = SourceClass::computed;
  terms.push_back(
      {TermKind::old_stretch,
       *stretch,
       std::move(provenance),
       {},
       {ReadingPhrase::pull_less, {Fixed{dock->value.newtons(), 0}, Fixed{pulled->value.newtons(), 0}}}});
}

/// "tape, 2026-05-02, the owner, afloat": all that the file says of how it was measured.
std::string circumstances(const Reading& reading) {
  std::string text;
  const std::string tally = reading.knots ? std::to_string(*reading.knots) + " knots" : "";
  for (const std::string_view word :
       {name_of(reading.method), std::string_view(reading.cord), std::string_view(tally),
        std::string_view(reading.mark), std::string_view(reading.date), std::string_view(reading.by),
        std::string_view(reading.note)}) {
    if (word.empty())
      continue;
    if (!text.empty())
      text += ", ";
    text += word;
  }
  return text;
}

Remark how_the_mean_came(const Reading& reading) {
  if (reading.lengths().size() == 1)
    return {};
  Remarks runs{{}, Join::plus};
  Length shortest = reading.lengths().front().value;
  Length longest = shortest;
  for (const Sourced<Length>& run : reading.lengths()) {
    runs.all.push_back({ReadingPhrase::run, {Fixed{run.value.millimetres(), 1}}});
    shortest = std::min(shortest, run.value);
    longest = std::max(longest, run.value);
  }
  const Count count{static_cast<std::int64_t>(reading.lengths().size())};
  return {ReadingPhrase::mean_of_runs, {std::move(runs), count, longest - shortest}};
}

Term mean_term(const Reading& reading) {
  Length sum;
  std::vector<const Provenance*> sources;
  for (const Sourced<Length>& run : reading.lengths()) {
    sum += run.value;
    sources.push_back(&run.provenance);
  }
  const std::size_t runs = reading.lengths().size();
  Provenance provenance = combine(sources);
  provenance.note = circumstances(reading);
  provenance.place = reading.place;
  if (runs == 1)
    provenance.written = reading.lengths().front().provenance.written;
  return {TermKind::runs, sum / static_cast<double>(runs) + reading.shift, std::move(provenance),
          Runs{runs}, how_the_mean_came(reading)};
}

/// What of the cord that keeps the length is not in its doubt, since the file does not say it.
void add_cord_not_counted(const Rig& rig, const Stay& stay, const Reading& reading,
                          std::vector<Remark>& not_corrected) {
  const Record* cord = reading.cord.empty() ? nullptr : find_record(rig, RecordKind::cord, reading.cord);
  if (cord == nullptr)
    return;
  const auto missing = [&](ReadingPhrase of, Remark what) {
    not_corrected.push_back({ReadingPhrase::not_stated, {Remarks{{of}}, Remarks{{std::move(what)}}}});
  };
  const auto of_cord = [&](const char* property) {
    return Remark{ReadingPhrase::property_of_name, {Words{property}, Words{cord->name}}};
  };
  const auto stretch = fact_number(cord->facts, fact_names.stretch);
  if (!stretch)
    missing(ReadingPhrase::cord_stretch, of_cord("stretch"));
  else if (!stretch->tolerance)
    missing(ReadingPhrase::cord_stretch, {ReadingPhrase::bound_of_cord_stretch, {Words{cord->name}}});
  else if (!expected_length(rig, stay))
    missing(ReadingPhrase::cord_stretch, {ReadingPhrase::length_of_stay, {Words{stay.base}}});
  if (!fact_length(cord->facts, fact_names.knot_width))
    missing(ReadingPhrase::knot_of_cord, of_cord("knot-width"));
}

void add_offsets(const Reading& reading, std::vector<Term>& terms) {
  if (reading.offset)
    terms.push_back(
        {reading.method == ReadingMethod::messenger ? TermKind::cord_offset : TermKind::hook_offset,
         -reading.offset->value, reading.offset->provenance});
  if (reading.hoist_offset)
    terms.push_back(
        {TermKind::hoist_offset, reading.hoist_offset->value, reading.hoist_offset->provenance});
  if (reading.below_knot)
    terms.push_back({TermKind::below_knot, reading.below_knot->value, reading.below_knot->provenance});
}

} // namespace

std::optional<Length> expected_length(const Rig& rig, const Stay& stay) {
  if (const auto path = path_length(rig, stay))
    return path->known();
  if (stay.stated_pin_to_pin)
    return stay.stated_pin_to_pin->value;
  if (const auto estimate = fact_length(stay.particulars, fact_names.estimate))
    return estimate->value;
  return std::nullopt;
}

Remark where_x_lies(const Reading& reading) {
  if (reading.cord.empty())
    return {
        Derivation::mark_on,
        {Words{reading.method == ReadingMethod::unstated ? "cord" : std::string(name_of(reading.method))},
         Words{reading.mark}}};
  Remark where(Derivation::on_cord, {Words{reading.cord}});
  if (reading.knots)
    where = *reading.knots == 1
                ? Remark(Derivation::on_cord_at_one_knot, {Words{reading.cord}})
                : Remark(Derivation::on_cord_at_knots, {Words{reading.cord}, Count{*reading.knots}});
  return reading.mark.empty() ? where
                              : Remark(Derivation::with_mark, {Remarks{{where}}, Words{reading.mark}});
}

/// Spars, hull and an old stay were as warm as the tape; the lengths of the file hold at the reference
/// temperature of the boat. Half a degree does nothing that a tape shows.
void add_boat_not_at_reference(const Rig& rig, const Reading& reading, std::vector<Remark>& not_corrected) {
  constexpr double alike_kelvin = 0.5;
  const auto reference = fact_number(rig.boat.particulars, fact_names.reference_temperature);
  const auto as_read = fact_number(reading.particulars, fact_names.temperature);
  if (reference && as_read && std::abs(reference->value - as_read->value) > alike_kelvin)
    not_corrected.push_back({ReadingPhrase::boat_not_at_reference,
                             {Temperature{as_read->value}, Temperature{reference->value}}});
}

ReadingLength reading_length(const Rig& rig, const Stay& stay, const Reading& reading) {
  ReadingLength result;
  add_cord_not_counted(rig, stay, reading, result.not_corrected);
  if (reading.lengths().empty()) {
    add_offsets(reading, result.terms);
    for (const auto& [fact, name] : {std::pair(fact_names.pull, ReadingPhrase::cord_pull),
                                     std::pair(fact_names.temperature, ReadingPhrase::cord_temperature)})
      if (find_fact(reading.particulars, fact) != nullptr)
        result.not_corrected.push_back({ReadingPhrase::cord_without_number, {Remarks{{name}}}});
    return result;
  }
  result.terms.push_back(mean_term(reading));
  const Length read = result.terms.front().amount;
  add_tape_corrections(rig, reading, read, result.terms, result.not_corrected);
  add_boat_not_at_reference(rig, reading, result.not_corrected);
  add_offsets(reading, result.terms);
  if (reading.old_line)
    add_old_stretch(rig, stay, reading, read, result.terms, result.not_corrected);
  return result;
}

bool is_assumed(const Reading& reading) {
  const auto assumed = [](const Sourced<Length>& length) {
    return length.provenance.source_class == SourceClass::assumed;
  };
  if (!reading.lengths().empty())
    return std::any_of(reading.lengths().begin(), reading.lengths().end(), assumed);
  return (reading.offset && assumed(*reading.offset)) ||
         (reading.hoist_offset && assumed(*reading.hoist_offset));
}

const Sourced<Length>& odd_run(const std::vector<Sourced<Length>>& runs) {
  std::vector<Length> sorted;
  for (const Sourced<Length>& run : runs)
    sorted.push_back(run.value);
  std::sort(sorted.begin(), sorted.end());
  const Length middle = sorted[(sorted.size() - 1) / 2];
  if (runs.size() == 2)
    return runs.back();
  return *std::max_element(runs.begin(), runs.end(), [&](const auto& a, const auto& b) {
    return magnitude(a.value - middle) < magnitude(b.value - middle);
  });
}

} // namespace sheerpole
