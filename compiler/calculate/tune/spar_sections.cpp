#include "calculate/tune/spar_sections.hpp"

#include "calculate/facts.hpp"

#include <algorithm>
#include <optional>
#include <utility>

namespace sheerpole {

namespace {

/// Where twist carries nothing of account a spar is taken as this much stiffer against it than against
/// bending.
constexpr double not_twisting = 100.0;

/// A spar for all of its length, or one of its stations.
struct StatedSpar {
  Remark of;
  const std::vector<Particular>* facts = nullptr;
};

/// Reads what is stated of a spar and of its stations; in coherent SI units.
class SectionReader {
public:
  SectionReader(const Rig& rig, const Spar& spar, TuneInputs& inputs)
      : whole_{{TunePhrase::spar, {Words{spar.name}}}, &spar.particulars}, inputs_(inputs) {
    for (const Record& record : rig.records)
      if (record.kind == RecordKind::spar_station && record.of == spar.name)
        if (const Particular* at = find_fact(record.facts, from_heel))
          stations_.push_back(
              {{TunePhrase::station, {Words{spar.name}, Words{station_place(*at)}}}, &record.facts});
  }

  bool tapered() const { return !stations_.empty(); }
  std::size_t count() const { return std::max<std::size_t>(stations_.size(), 1); }
  double metres(std::size_t station) {
    return tapered()
               ? inputs_.needed(stations_[station].of, *stations_[station].facts, from_heel).value_or(0.0)
               : 0.0;
  }

  bool is_stated(FactName name) const {
    return find_fact(*whole_.facts, name) != nullptr || stated_by_station(name);
  }
  std::optional<double> value(FactName name, std::size_t station) {
    const StatedSpar& from = stated_by_station(name) ? stations_[station] : whole_;
    return inputs_.needed(from.of, *from.facts, name);
  }

private:
  bool stated_by_station(FactName name) const {
    return std::ranges::any_of(
        stations_, [&](const StatedSpar& station) { return find_fact(*station.facts, name) != nullptr; });
  }

  StatedSpar whole_;
  std::vector<StatedSpar> stations_;
  TuneInputs& inputs_;
};

} // namespace

std::string station_place(const Particular& at) {
  const std::string& written = at.value.provenance.written;
  return written.empty() ? at.text : written;
}

std::vector<statics::Station> spar_sections(const Rig& rig, const Spar& spar, bool can_be_twisted,
                                            double head_mm, TuneInputs& inputs) {
  SectionReader read(rig, spar, inputs);
  const bool read_twisting = can_be_twisted || read.is_stated(fact_names.twisting_stiffness);
  std::vector<statics::Station> result;
  bool bending_stated = true;
  for (std::size_t i = 0; i < read.count(); ++i) {
    const auto axial = read.value(fact_names.axial_stiffness, i);
    const auto in_side = read.value(fact_names.bending_stiffness, i);
    const auto square = read.value(fact_names.bending_stiffness_across, i);
    const auto twisting = read_twisting ? read.value(fact_names.twisting_stiffness, i) : std::nullopt;
    bending_stated = bending_stated && in_side && square;
    const double bending = in_side.value_or(0.0) + square.value_or(0.0);
    result.push_back(
        {mm_per_m * read.metres(i),
         {axial.value_or(0.0), mm2_per_m2 * in_side.value_or(0.0), mm2_per_m2 * square.value_or(0.0),
          mm2_per_m2 * (read_twisting ? twisting.value_or(0.0) : not_twisting * bending)}});
  }
  if (!read_twisting && bending_stated)
    inputs.note({TunePhrase::mast_taken_not_twisting, {Words{spar.name}}});
  if (!read.tapered())
    return result;
  std::ranges::stable_sort(result, {}, &statics::Station::at_mm);
  if (result.front().at_mm > same_height_mm)
    inputs.lacks(
        {TunePhrase::no_station_at_heel, {Words{spar.name}, Length::millimetres(result.front().at_mm)}});
  if (result.back().at_mm < head_mm - same_height_mm)
    inputs.lacks(
        {TunePhrase::no_station_at_head,
         {Words{spar.name}, Length::millimetres(result.back().at_mm), Length::millimetres(head_mm)}});
  return result;
}

} // namespace sheerpole
