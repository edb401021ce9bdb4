#include "elaborate/elaboration.hpp"

#include "model/fact_name.hpp"

#include <array>
#include <cmath>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

namespace {

/// What a spar states for all of its length, or each of its stations for one place.
constexpr std::array by_station{fact_names.axial_stiffness, fact_names.bending_stiffness,
                                fact_names.bending_stiffness_across, fact_names.twisting_stiffness};

constexpr FactName from_heel = fact_names.from_heel;

struct Station {
  const ResolvedDeclaration* declaration = nullptr;
  const Record* record = nullptr;
  const Sourced<Quantity>* at = nullptr; ///< from the heel

  double metres() const { return at->value.si; }
  std::string place_words() const { return at->provenance.written; }
  Span place() const { return at->provenance.place.value_or(record->place); }
};

const Sourced<Quantity>* stated(const std::vector<Particular>& facts, FactName name) {
  const Particular* fact = find_fact(facts, name.text);
  return fact == nullptr ? nullptr : &fact->value;
}

/// Those of each spar, by its name, in the order of the file, each with its declaration.
std::map<std::string, std::vector<Station>> all_stations(const Elaboration& elaboration) {
  std::map<Span, const Record*> records;
  for (const Record& record : elaboration.rig.records)
    if (record.kind == RecordKind::spar_station)
      records.emplace(record.place, &record);
  std::map<std::string, std::vector<Station>> result;
  if (records.empty())
    return result;
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations)
    if (const auto record = records.find(elaboration.place_of(declaration)); record != records.end())
      if (const auto* at = stated(record->second->facts, from_heel))
        result[record->second->of].push_back({&declaration, record->second, at});
  return result;
}

/// A stiffness that the spar states for all of its length and a station for its place says two things.
void refuse_both(Elaboration& elaboration, const Spar& spar, const ResolvedDeclaration& declaration,
                 const std::vector<Station>& stations) {
  for (const FactName name : by_station) {
    const ResolvedProperty* whole = declaration.find(name.text);
    if (whole == nullptr)
      continue;
    for (const Station& station : stations) {
      const ResolvedProperty* here = station.declaration->find(name.text);
      if (here == nullptr)
        continue;
      elaboration.sink.report(
          diagnose(
              "station-and-whole-spar",
              {{"spar", spar.name}, {"property", std::string(name.text)}, {"place", station.place_words()}})
              .at(whole->syntax->name.span)
              .and_at(here->syntax->name.span, "at " + station.place_words())
              .about(spar.name)
              .edit(whole->syntax->span, "",
                    "if it is tapered, take out " + std::string(name.text) + " of the whole spar"));
      break;
    }
  }
}

void refuse_beyond(Elaboration& elaboration, const Spar& spar, const Station& station) {
  const Sourced<Quantity>* length = stated(spar.particulars, fact_names.length);
  if (length == nullptr || station.metres() <= length->value.si + 1e-9)
    return;
  const std::string text = length->provenance.written;
  auto finding = diagnose("station-beyond-spar",
                          {{"spar", spar.name}, {"place", station.place_words()}, {"length", text}})
                     .at(station.place())
                     .about(spar.name);
  if (length->provenance.place)
    finding = std::move(finding).and_at(*length->provenance.place, "the length of " + spar.name);
  elaboration.sink.report(
      std::move(finding).edit(station.place(), text, "if its end is meant, write `" + text + "`"));
}

void refuse_twice(Elaboration& elaboration, const Spar& spar, const Station& first, const Station& second) {
  elaboration.sink.report(
      diagnose("station-twice", {{"spar", spar.name}, {"place", second.place_words()}})
          .at(second.place())
          .and_at(first.place(), "the first one")
          .about(spar.name)
          .edit(second.declaration->syntax->span, "", "if both are one, take out the second"));
}

/// What stands between two declarations of one file stays where it is.
std::string in_each_others_place(const Elaboration& elaboration, Span first, Span second) {
  const SourceText& text = elaboration.sources[first.source];
  return std::string(text.text(second)) + std::string(text.text({first.source, first.end, second.begin})) +
         std::string(text.text(first));
}

void doubt_order(Elaboration& elaboration, const Spar& spar, const Station& before,
                 const Station& station) {
  auto finding =
      diagnose("station-out-of-order",
               {{"spar", spar.name}, {"place", station.place_words()}, {"before", before.place_words()}})
          .at(station.place())
          .and_at(before.place(), "it stands behind this one")
          .about(spar.name);
  const Span first = before.declaration->syntax->span, second = station.declaration->syntax->span;
  if (first.source == second.source && first.end <= second.begin)
    finding = std::move(finding).edit({first.source, first.begin, second.end},
                                      in_each_others_place(elaboration, first, second),
                                      "if both are right, let the two change places");
  elaboration.sink.report(std::move(finding));
}

void check_places(Elaboration& elaboration, const Spar& spar, const std::vector<Station>& stations) {
  std::map<long long, const Station*> seen; // by micrometre: places in different units are one within that
  for (std::size_t i = 0; i < stations.size(); ++i) {
    refuse_beyond(elaboration, spar, stations[i]);
    const auto [other, is_new] = seen.emplace(std::llround(1e6 * stations[i].metres()), &stations[i]);
    if (!is_new)
      refuse_twice(elaboration, spar, *other->second, stations[i]);
    else if (i > 0 && stations[i].metres() < stations[i - 1].metres())
      doubt_order(elaboration, spar, stations[i - 1], stations[i]);
  }
}

} // namespace

void elaborate_spar_stations(Elaboration& elaboration) {
  const std::map<std::string, std::vector<Station>> by_spar = all_stations(elaboration);
  if (by_spar.empty())
    return;
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations) {
    if (declaration.kind->category != Category::spar)
      continue;
    for (const Spar& spar : elaboration.rig.spars) {
      if (spar.place != elaboration.place_of(declaration))
        continue;
      const auto found = by_spar.find(spar.name);
      if (found == by_spar.end())
        continue;
      refuse_both(elaboration, spar, declaration, found->second);
      check_places(elaboration, spar, found->second);
    }
  }
}

} // namespace sheerpole
