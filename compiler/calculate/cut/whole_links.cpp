#include "calculate/cut/whole_links.hpp"

#include "calculate/facts.hpp"
#include "model/fact_name.hpp"
#include "units/quantity_text.hpp"

#include <algorithm>
#include <cmath>

namespace sheerpole {

namespace {

std::optional<Sourced<Length>> stated_pitch(const LineMaterial& line) {
  auto pitch = line.kind == LineMaterial::Kind::chain ? fact_length(line.particulars, fact_names.pitch)
                                                      : std::nullopt;
  return pitch && pitch->value > Length{} ? pitch : std::nullopt;
}

std::string written(const Sourced<Length>& pitch) {
  return pitch.provenance.written.empty() ? length_text(pitch.value) : pitch.provenance.written;
}

} // namespace

std::optional<Length> pitch_of(const LineMaterial& line) {
  const auto pitch = stated_pitch(line);
  return pitch ? std::optional(pitch->value) : std::nullopt;
}

std::string pitch_words(const LineMaterial& line) {
  const auto pitch = stated_pitch(line);
  return pitch ? written(*pitch) : std::string();
}

std::optional<WholeLinks> whole_links(const LineMaterial& line, Length wanted) {
  const auto pitch = stated_pitch(line);
  if (!pitch)
    return std::nullopt;
  const double count = std::max(1.0, std::round(wanted / pitch->value));
  const Length length = pitch->value * count;
  return WholeLinks{static_cast<std::int64_t>(count), written(*pitch), length, length - wanted};
}

} // namespace sheerpole
