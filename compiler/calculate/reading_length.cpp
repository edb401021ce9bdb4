#include "calculate/reading_length.hpp"

#include "calculate/computed_provenance.hpp"
#include "calculate/length_text.hpp"
#include "units/format_length.hpp"

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

std::vector<Term> reading_terms(const Reading& reading) {
  if (reading.runs.empty())
    return {};
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
  std::vector<Term> terms;
  terms.push_back({runs == 1 ? "one run" : "mean of " + std::to_string(runs) + " runs",
                   sum / static_cast<double>(runs), how_the_mean_came(reading), std::move(provenance)});
  if (reading.offset)
    terms.push_back(offset_term(reading));
  return terms;
}

} // namespace sheerpole
