#include "elaborate/elaboration.hpp"
#include "elaborate/read_fields.hpp"

#include "model/trade_words.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace sheerpole {

namespace {

LineMaterial::Kind kind_of(std::string_view word) {
  for (const auto kind : {LineMaterial::Kind::wire, LineMaterial::Kind::rod, LineMaterial::Kind::chain})
    if (name_of(kind) == word)
      return kind;
  return LineMaterial::Kind::rope;
}

/// A construction is read for its fibre, its lay and its heat-set, a grade for its metal: a word that is
/// nearly one of the trade would go unread.
void report_odd_words(Elaboration& elaboration, const ResolvedDeclaration& declaration,
                      std::string_view name, TradeSubject of) {
  const ResolvedProperty* property = declaration.find(name);
  const auto odd = odd_text(of, elaboration.text(declaration, name));
  if (property == nullptr || !odd)
    return;
  const std::string owner = elaboration.name_of(declaration);
  const Span place = property->syntax->value.expression().span;
  auto builder =
      diagnose("line-unclear", {{"property", std::string(name)}, {"line", owner}, {"word", odd->part}})
          .at(place)
          .about(owner);
  const std::string mended = "\"" + odd->suggestion + "\"";
  if (!odd->suggestion.empty())
    builder = std::move(builder).edit(place, mended, "if that is meant, write `" + mended + "`");
  elaboration.sink.report(std::move(builder));
}

void add_material(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  const bool complete = elaboration.has_required(declaration);
  const std::string owner = elaboration.name_of(declaration);
  LineMaterial material;
  material.kind = kind_of(declaration.kind->name);
  material.name = owner;
  material.title = declaration.syntax->title ? declaration.syntax->title->text : "";
  material.construction = read_construction(elaboration.text(declaration, "construction"));
  report_odd_words(elaboration, declaration, "construction", TradeSubject::construction);
  report_odd_words(elaboration, declaration, "grade", TradeSubject::grade);
  material.place = elaboration.place_of(declaration);
  material.particulars = particulars_beside<LineMaterial>(elaboration, declaration, owner);
  read_fields(elaboration, declaration, owner, material);
  const auto diameter = elaboration.length(declaration, "diameter");
  const ResolvedProperty* size = declaration.find("size");
  const auto named =
      size == nullptr ? std::nullopt : elaboration.read.size(size->syntax->value, *size->row, owner);
  if (!named || !complete)
    return;
  material.size = *named;
  if (diameter) {
    material.diameter = *diameter;
  } else {
    material.diameter.value = named->diameter;
    material.diameter.provenance = {.source_class = SourceClass::computed,
                                    .note = "from the size " + named->name,
                                    .written = named->name,
                                    .place = size->syntax->value.expression().span,
                                    .assumptions = {}};
    elaboration.read.apply_source(size->syntax->value, property_of(*size->row, owner),
                                  material.diameter.provenance);
  }
  elaboration.materials[declaration.symbol.value] =
      MaterialId{static_cast<std::uint32_t>(elaboration.rig.materials.size())};
  elaboration.rig.materials.push_back(std::move(material));
}

void add_splice(Elaboration& elaboration, const ResolvedDeclaration& declaration) {
  const bool complete = elaboration.has_required(declaration);
  const std::string owner = elaboration.name_of(declaration);
  Splice splice;
  splice.name = owner;
  splice.title = declaration.syntax->title ? declaration.syntax->title->text : "";
  splice.place = elaboration.place_of(declaration);
  read_fields(elaboration, declaration, owner, splice);
  splice.particulars = particulars_beside<Splice>(elaboration, declaration, owner);
  if (!complete || !splice.bury.provenance.place)
    return; // not stated, or not to be read; both reported
  elaboration.splices[declaration.symbol.value] =
      SpliceId{static_cast<std::uint32_t>(elaboration.rig.splices.size())};
  elaboration.rig.splices.push_back(std::move(splice));
}

} // namespace

void elaborate_lines(Elaboration& elaboration) {
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations) {
    if (declaration.symbol == poison_symbol)
      continue;
    if (declaration.kind->category == Category::material)
      add_material(elaboration, declaration);
    else if (declaration.kind->category == Category::splice)
      add_splice(elaboration, declaration);
  }
}

namespace {

/// One knot of a cord: which stay it keeps, and by which reading.
struct Knot {
  const Stay* stay = nullptr;
  const Reading* reading = nullptr;
};

std::string of_tally(int knots) {
  return knots == 1 ? "1 knot" : std::to_string(knots) + " knots";
}

/// Tallies that the file states of a pair: one knot keeps both its sides, and stays the same knot when one
/// side is hoisted again.
using KnotsOfPairs = std::set<std::pair<std::string, int>>;

KnotsOfPairs knots_of_pairs(const std::vector<Knot>& knots) {
  std::map<std::pair<Span, int>, const Stay*> first;
  KnotsOfPairs pairs;
  for (const Knot& knot : knots)
    if (knot.reading->knots) {
      const auto [seen, is_new] = first.try_emplace({knot.reading->place, *knot.reading->knots}, knot.stay);
      if (!is_new && seen->second != knot.stay)
        pairs.emplace(knot.stay->base, *knot.reading->knots);
    }
  return pairs;
}

/// Whether the file says that one knot keeps both: it is stated of the pair, or of one side by its distance
/// from the knot of the other.
bool is_shared(const Knot& one, const Knot& other, const KnotsOfPairs& pairs) {
  return one.stay == other.stay ||
         (one.stay->base == other.stay->base && (one.reading->below_knot || other.reading->below_knot ||
                                                 pairs.contains({one.stay->base, *one.reading->knots})));
}

std::vector<Knot> knots_on(const Rig& rig, const std::string& cord) {
  std::vector<Knot> knots;
  for (const Stay& stay : rig.stays)
    for (const Reading& reading : stay.readings)
      if (reading.cord == cord)
        knots.push_back({&stay, &reading});
  return knots;
}

/// Where each reading that states a tally states it.
using TallyPlaces = std::map<Span, Span>;

TallyPlaces tally_places(const Elaboration& elaboration) {
  TallyPlaces places;
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations)
    if (declaration.kind->category == Category::reading)
      if (const ResolvedProperty* knots = declaration.find("knots"))
        places.emplace(declaration.syntax->kind.span, knots->syntax->value.expression().span);
  return places;
}

/// The two sides of a pair may have had one knot made for both; else a little knot was overlooked, and the
/// next tally that the cord does not have yet is the likeliest.
DiagnosticBuilder with_way_out(DiagnosticBuilder finding, const Knot& one, const Knot& other,
                               const TallyPlaces& places, const std::set<int>& taken) {
  const auto tally = places.find(one.reading->place);
  if (tally == places.end())
    return finding;
  if (one.stay->base == other.stay->base) {
    const Span behind{tally->second.source, tally->second.end, tally->second.end};
    return std::move(finding).edit(
        behind, "\n  below-knot: 0 mm",
        "if one knot was made for both sides and this pin lies at it, write `below-knot: 0 mm`");
  }
  int free = *one.reading->knots + 1;
  for (auto next = taken.lower_bound(free); next != taken.end() && *next == free; ++next)
    ++free;
  const std::string text = std::to_string(free);
  return std::move(finding).edit(tally->second, text,
                                 "if there are " + text + ", write `knots: " + text + "`");
}

void report_clashes(Elaboration& elaboration, const std::string& cord, const std::vector<Knot>& knots,
                    const TallyPlaces& places) {
  std::set<int> taken;
  for (const Knot& knot : knots)
    if (knot.reading->knots)
      taken.insert(*knot.reading->knots);
  const KnotsOfPairs pairs = knots_of_pairs(knots);
  for (std::size_t later = 1; later < knots.size(); ++later) {
    const Knot& one = knots[later];
    if (!one.reading->knots)
      continue;
    const auto clash = std::find_if(
        knots.begin(), knots.begin() + static_cast<std::ptrdiff_t>(later), [&](const Knot& other) {
          return other.reading->knots == one.reading->knots && !is_shared(one, other, pairs);
        });
    if (clash == knots.begin() + static_cast<std::ptrdiff_t>(later))
      continue;
    auto finding = diagnose("cord-clash", {{"stay", one.stay->name},
                                           {"other", clash->stay->name},
                                           {"cord", cord},
                                           {"tally", of_tally(*one.reading->knots)}})
                       .at(one.reading->place)
                       .and_at(clash->reading->place, clash->stay->name)
                       .about(one.stay->name);
    elaboration.sink.report(with_way_out(std::move(finding), one, *clash, places, taken));
  }
}

void report_without_tally(Elaboration& elaboration, const std::string& cord,
                          const std::vector<Knot>& knots) {
  std::set<const Stay*> stays;
  for (const Knot& knot : knots)
    stays.insert(knot.stay);
  if (stays.size() < 2)
    return;
  for (const Knot& knot : knots)
    if (!knot.reading->knots)
      elaboration.sink.report(
          diagnose("cord-tally-missing",
                   {{"stay", knot.stay->name}, {"cord", cord}, {"count", std::to_string(stays.size())}})
              .at(knot.reading->place)
              .about(knot.stay->name));
}

} // namespace

void check_knots(Elaboration& elaboration) {
  std::vector<std::string> cords;
  for (const Stay& stay : elaboration.rig.stays)
    for (const Reading& reading : stay.readings)
      if (!reading.cord.empty() && std::find(cords.begin(), cords.end(), reading.cord) == cords.end())
        cords.push_back(reading.cord);
  const TallyPlaces places = cords.empty() ? TallyPlaces{} : tally_places(elaboration);
  for (const std::string& cord : cords) {
    const std::vector<Knot> knots = knots_on(elaboration.rig, cord);
    report_clashes(elaboration, cord, knots, places);
    report_without_tally(elaboration, cord, knots);
  }
}

} // namespace sheerpole
