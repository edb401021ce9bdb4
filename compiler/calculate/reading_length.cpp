#include "calculate/reading_length.hpp"

#include "calculate/computed_provenance.hpp"
#include "calculate/reading_corrections.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>

namespace sheerpole {

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
