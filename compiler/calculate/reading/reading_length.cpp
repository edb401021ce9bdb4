#include "calculate/reading/reading_length.hpp"

#include "calculate/facts.hpp"
#include "calculate/length/length_sum.hpp"
#include "calculate/physics/line_deformation.hpp"
#include "calculate/physics/physical_values.hpp"
#include "calculate/physics/tape_correction.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

struct Corrections {
  const Rig& rig;
  const Reading& reading;
  const Record& tape;
  Length read;
  std::vector<Term>& terms;
  std::vector<std::string>& not_corrected;

  void add(std::string name, const std::optional<Length>& amount, std::string how,
           const std::vector<const Provenance*>& sources) {
    if (!amount) {
      not_corrected.push_back(name + ": its numbers are outside what the correction holds for");
      return;
    }
    Provenance provenance = combine(sources, tape.name);
    provenance.source_class = SourceClass::computed;
    terms.push_back({std::move(name), *amount, std::move(how), std::move(provenance)});
  }

  void missing(const std::string& name, const std::string& what) {
    not_corrected.push_back(name + ": " + what + " is not stated");
  }

  void standard() {
    const auto nominal = fact_length(tape.facts, "nominal-length");
    const auto actual = fact_length(tape.facts, "true-length");
    if (nominal && actual)
      add("tape standard", tape_standardisation_correction(read, nominal->value, actual->value),
          length_text(actual->value) + " where it says " + length_text(nominal->value),
          {&nominal->provenance, &actual->provenance});
    else if (nominal || actual)
      missing("tape standard", nominal ? "true-length of " + tape.name : "nominal-length of " + tape.name);
  }

  void temperature() {
    const auto expansion = fact_number(tape.facts, "thermal");
    const auto standard = fact_number(tape.facts, "standard-temperature");
    const auto as_read = fact_number(reading.particulars, "temperature");
    if (expansion && standard && as_read) {
      const double warmer = as_read->value - standard->value;
      add("tape temperature", tape_temperature_correction(read, expansion->value, warmer),
          format_fixed(warmer, 1) + " K from its standard",
          {&as_read->provenance, &expansion->provenance, &standard->provenance});
    } else if (as_read || standard) {
      missing("tape temperature", !as_read    ? "temperature of the reading"
                                  : !standard ? "standard-temperature of " + tape.name
                                              : "thermal of " + tape.name);
    }
  }

  void pull() {
    const auto pulled = fact_force(reading.particulars, "pull");
    const auto standard = fact_force(tape.facts, "standard-pull");
    const auto section = fact_number(tape.facts, "section");
    const auto modulus = fact_number(tape.facts, "modulus");
    if (pulled && standard && section && modulus) {
      const auto stiffness = axial_stiffness(modulus->value, section->value);
      add("tape pull",
          stiffness ? tape_pull_correction(read, pulled->value, standard->value, *stiffness) : std::nullopt,
          format_fixed(pulled->value.newtons(), 0) + " N against " +
              format_fixed(standard->value.newtons(), 0) + " N",
          {&pulled->provenance, &standard->provenance, &section->provenance, &modulus->provenance});
    } else if (standard) {
      missing("tape pull", !pulled    ? "pull of the reading"
                           : !section ? "section of " + tape.name
                                      : "modulus of " + tape.name);
    }
  }

  void sag() {
    const Particular* spans = find_fact(reading.particulars, "spans");
    if (spans == nullptr)
      return;
    const auto mass = fact_number(tape.facts, "linear-mass");
    const auto pulled = fact_force(reading.particulars, "pull");
    // A tape along a stay hangs steeply and sags little; taken for a level one it would shorten the cut.
    const auto slope = fact_number(reading.particulars, "slope");
    if (!mass || !pulled || !slope) {
      missing("tape sag", !mass     ? "linear-mass of " + tape.name
                          : !pulled ? "pull of the reading"
                                    : "slope of the reading");
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
    add("tape sag", sum,
        std::to_string(count) + (count == 1 ? " free span" : " free spans") + " at " +
            format_fixed(pulled->value.newtons(), 0) + " N",
        sources);
  }
};

} // namespace

void add_tape_corrections(const Rig& rig, const Reading& reading, Length read, std::vector<Term>& terms,
                          std::vector<std::string>& not_corrected) {
  const Record* tape = reading.tape.empty() ? nullptr : find_record(rig, "tape", reading.tape);
  if (tape == nullptr) {
    if (find_fact(reading.particulars, "temperature") != nullptr ||
        find_fact(reading.particulars, "spans") != nullptr)
      not_corrected.push_back("tape: the reading names no tape (with)");
    return;
  }
  Corrections corrections{rig, reading, *tape, read, terms, not_corrected};
  corrections.standard();
  corrections.temperature();
  corrections.pull();
  corrections.sag();
}

void add_old_stretch(const Rig& rig, const Stay& stay, const Reading& reading, Length read,
                     std::vector<Term>& terms, std::vector<std::string>& not_corrected) {
  const LineMaterial& line = rig[*reading.old_line];
  const auto dock = fact_force(stay.particulars, "dock-tension");
  const auto pulled = fact_force(reading.particulars, "pull");
  const auto stiffness = line_stiffness(line);
  if (!dock || !pulled || !stiffness) {
    not_corrected.push_back("stretch of the old stay: " +
                            (!dock     ? "dock-tension of " + stay.base
                             : !pulled ? std::string("pull of the reading")
                                       : "stiffness of " + line.name) +
                            " is not stated");
    return;
  }
  const auto stretch = elastic_stretch(read, dock->value - pulled->value, stiffness->value);
  if (!stretch) {
    not_corrected.push_back("stretch of the old stay: its numbers are outside what Hooke's law holds for");
    return;
  }
  Provenance provenance =
      combine({&dock->provenance, &pulled->provenance, &stiffness->provenance}, "Hooke's law");
  provenance.source_class = SourceClass::computed;
  terms.push_back({"stretch of the old stay", *stretch,
                   format_fixed(dock->value.newtons(), 0) + " N less " +
                       format_fixed(pulled->value.newtons(), 0) + " N",
                   std::move(provenance)});
}

namespace {

/// "tape, 2026-05-02, the owner, afloat": all that the file says of how it was measured.
std::string circumstances(const Reading& reading) {
  std::string text;
  for (const std::string* word : {&reading.method, &reading.date, &reading.by, &reading.note}) {
    if (word->empty())
      continue;
    if (!text.empty())
      text += ", ";
    text += *word;
  }
  return text;
}

std::string how_the_mean_came(const Reading& reading) {
  if (reading.runs.size() == 1)
    return {};
  std::string text = "(";
  Length shortest = reading.runs.front().value;
  Length longest = shortest;
  for (const Sourced<Length>& run : reading.runs) {
    if (text.size() > 1)
      text += " + ";
    text += format_millimetres(run.value, 1);
    shortest = std::min(shortest, run.value);
    longest = std::max(longest, run.value);
  }
  text += ") / " + std::to_string(reading.runs.size()) + " mm, spread " + length_text(longest - shortest);
  return text;
}

} // namespace

Term offset_term(const Reading& reading) {
  return {"hook offset", -reading.offset->value, "", reading.offset->provenance};
}

namespace {

Term mean_term(const Reading& reading) {
  Length sum;
  std::vector<const Provenance*> sources;
  for (const Sourced<Length>& run : reading.runs) {
    sum += run.value;
    sources.push_back(&run.provenance);
  }
  const std::size_t runs = reading.runs.size();
  Provenance provenance = combine(sources, circumstances(reading));
  provenance.place = reading.place;
  if (runs == 1)
    provenance.written = reading.runs.front().provenance.written;
  return {runs == 1 ? "one run" : "mean of " + std::to_string(runs) + " runs",
          sum / static_cast<double>(runs) + reading.shift, how_the_mean_came(reading),
          std::move(provenance)};
}

} // namespace

ReadingLength reading_length(const Rig& rig, const Stay& stay, const Reading& reading) {
  ReadingLength result;
  if (reading.runs.empty())
    return result;
  result.terms.push_back(mean_term(reading));
  const Length read = result.terms.front().amount;
  add_tape_corrections(rig, reading, read, result.terms, result.not_corrected);
  if (reading.offset)
    result.terms.push_back(offset_term(reading));
  if (reading.hoist_offset)
    result.terms.push_back(
        {"hoist offset", reading.hoist_offset->value, "", reading.hoist_offset->provenance});
  if (reading.old_line)
    add_old_stretch(rig, stay, reading, read, result.terms, result.not_corrected);
  return result;
}

} // namespace sheerpole
