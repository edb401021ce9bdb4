#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/length_phrases.hpp"

#include <algorithm>
#include <map>
#include <optional>
#include <ranges>
#include <set>
#include <type_traits>

/// What a cut rests on: inputs that are missing, values that are assumed.
namespace sheerpole::cut_inputs {

namespace {

using Common = AnyCheckPhrase;

using P = LengthCheckPhrase;

/// The piece by the name that the finding gives its stay: `backstay-leg 1 of 2` for both sides.
std::string piece_name(const Rig& rig, const Piece& piece, const std::string& stay) {
  if (piece.of == 1)
    return stay;
  return say(rig, {P::piece_of, {Words{stay}, Count{piece.number}, Count{piece.of}}});
}

std::string all_missing(const Rig& rig, const Piece& piece) {
  Remarks inputs{{}, Join::and_word};
  for (const MissingInput& missing : piece.missing)
    inputs.all.push_back(missing.what);
  return say(rig, inputs);
}

/// What leaving out does to the piece.
P comes_out(const Piece& piece) {
  const auto takes_off = [](const MissingInput& missing) { return missing.takes_off; };
  return std::all_of(piece.missing.begin(), piece.missing.end(), takes_off)   ? P::comes_out_long
         : std::any_of(piece.missing.begin(), piece.missing.end(), takes_off) ? P::comes_out_either
                                                                              : P::comes_out_short;
}

void check_cut_is_draft(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const Piece& piece : stay.pieces) {
                    const std::string subject = piece_name(rig, piece, name);
                    if (piece.missing.empty()) {
                      of_stay.pass(piece.of == 1 ? Remark(P::cut_complete)
                                                 : Remark(P::piece_cut_complete, {Count{piece.number}}));
                      continue;
                    }
                    Diagnostic finding = diagnose("cut-is-draft", {{"piece", subject},
                                                                   {"what", all_missing(rig, piece)},
                                                                   {"comes_out", said(comes_out(piece))}})
                                             .at(rig[stay.stay].place, said(P::lacks_input))
                                             .about(subject)
                                             .build();
                    for (const MissingInput& input : piece.missing)
                      finding.others.push_back({input.place, say(rig, input.mend)});
                    of_stay.find(std::move(finding));
                  }
                });
}

/// Where each assumed value of the rig is written, by its name. Meets every provenance of the model,
/// through the fields of its types. A value that rests on an assumption made elsewhere, as on a `let`,
/// stands in for it when the assumption itself is nowhere in the rig.
class AssumedPlaces {
public:
  explicit AssumedPlaces(const Rig& rig) { meet(rig); }

  std::optional<Span> find(const std::string& assumption) const {
    for (const auto* places : {&own_, &standing_in_})
      if (const auto found = places->find(assumption); found != places->end())
        return found->second;
    return std::nullopt;
  }

private:
  void note(const Provenance& provenance) {
    if (!provenance.place)
      return;
    const bool itself =
        provenance.source_class == SourceClass::assumed && provenance.assumptions.size() == 1;
    for (const std::string& name : provenance.assumptions)
      (itself ? own_ : standing_in_).emplace(name, *provenance.place);
  }

  template <class Value>
  void meet(const Value& value) {
    if constexpr (std::is_same_v<Value, Provenance>)
      note(value);
    else if constexpr (requires { value.provenance.assumptions; } && !HasFields<Value>)
      note(value.provenance);
    else if constexpr (HasFields<Value>)
      visit_fields(value, [&](const auto& /*field*/, const auto& member) { meet(member); });
    else if constexpr (requires { value.has_value(); })
      meet_inside(value);
    else if constexpr (std::ranges::range<Value> && !std::is_convertible_v<Value, std::string_view>)
      for (const auto& one : value)
        meet(one);
  }
  template <class Value>
  void meet_inside(const std::optional<Value>& value) {
    if (value)
      meet(*value);
  }

  std::map<std::string, Span> own_;
  std::map<std::string, Span> standing_in_;
};

/// What one assumed value reaches.
struct Reach {
  std::string assumption;
  std::vector<const Piece*> pieces;
};

/// In the order in which the pieces meet them.
std::vector<Reach> reaches_of(const Derived& derived) {
  std::vector<Reach> reaches;
  for (const DerivedStay& stay : derived.stays)
    for (const Piece& piece : stay.pieces)
      for (const Term& term : piece.cut.terms)
        for (const std::string& name : term.provenance.assumptions) {
          auto reach = std::find_if(reaches.begin(), reaches.end(),
                                    [&](const Reach& known) { return known.assumption == name; });
          if (reach == reaches.end())
            reach = reaches.insert(reaches.end(), {name, {}});
          if (reach->pieces.empty() || reach->pieces.back() != &piece)
            reach->pieces.push_back(&piece);
        }
  return reaches;
}

std::string name_on(const Rig& rig, const Piece& piece, bool both_sides) {
  if (!both_sides)
    return piece.name;
  return say(rig, {P::on_both_sides, {Words{piece_name(rig, piece, rig[piece.stay].base)}}});
}

/// "cap-shroud on both sides, backstay and runner.port"
std::string all_pieces(const Rig& rig, const Derived& derived, const Reach& reach) {
  const auto reached = [&](const DerivedStay* stay, int number) {
    return stay != nullptr &&
           std::any_of(reach.pieces.begin(), reach.pieces.end(), [&](const Piece* piece) {
             return piece->stay == stay->stay && piece->number == number;
           });
  };
  std::vector<std::string> names;
  for (const Piece* piece : reach.pieces) {
    const bool both = reached(other_side(rig, derived, derived.stays[piece->stay.index()]), piece->number);
    std::string name = name_on(rig, *piece, both);
    if (std::find(names.begin(), names.end(), name) == names.end())
      names.push_back(std::move(name));
  }
  return joined(names, Join::and_word);
}

/// Of more assumed values than this one finding tells, by the names of the first. A file just begun has
/// dozens, and what else is found would be lost among them.
constexpr std::size_t told_one_by_one = 3;

DiagnosticBuilder one_finding(const Rig& rig, const Derived& derived, const std::vector<Reach>& reaches,
                              const AssumedPlaces& places) {
  std::vector<std::string> names;
  Reach all;
  for (const Reach& reach : reaches) {
    if (names.size() < told_one_by_one)
      names.push_back(reach.assumption);
    all.pieces.insert(all.pieces.end(), reach.pieces.begin(), reach.pieces.end());
  }
  names.push_back(say(rig, {P::and_so_many_more, {Count{std::ssize(reaches) - std::ssize(names)}}}));
  std::size_t pieces = 0;
  for (const DerivedStay& stay : derived.stays)
    pieces += stay.pieces.size();
  const std::set<const Piece*> reached(all.pieces.begin(), all.pieces.end());
  auto finding =
      diagnose("assumed-input", {{"value", joined(names, Join::and_word)},
                                 {"is", "are"},
                                 {"it", "them"},
                                 {"pieces", reached.size() == pieces ? said(P::every_piece)
                                                                     : all_pieces(rig, derived, all)}})
          .about(said(Common::this_rig));
  const Span fallback = rig[all.pieces.front()->stay].place;
  finding = std::move(finding).at(places.find(reaches.front().assumption).value_or(fallback),
                                  said(P::assumed_here));
  for (std::size_t i = 1; i < told_one_by_one; ++i)
    if (const auto place = places.find(reaches[i].assumption))
      finding = std::move(finding).and_at(*place, said(P::assumed_here));
  return finding;
}

void check_assumed_input(const Rig& rig, const Derived& derived, CheckReport& report) {
  const AssumedPlaces places(rig);
  const std::vector<Reach> reaches = reaches_of(derived);
  if (reaches.empty())
    report.pass(said(Common::this_rig), {P::none_assumed});
  if (reaches.size() > told_one_by_one) {
    report.find(one_finding(rig, derived, reaches, places));
    return;
  }
  for (const Reach& reach : reaches) {
    const auto place = places.find(reach.assumption);
    const Span fallback = rig[reach.pieces.front()->stay].place;
    report.find(diagnose("assumed-input", {{"value", reach.assumption},
                                           {"is", "is"},
                                           {"it", "it"},
                                           {"pieces", all_pieces(rig, derived, reach)}})
                    .at(place.value_or(fallback), said(P::assumed_here))
                    .about(reach.assumption));
  }
}

} // namespace

const CheckTable checks{CheckRow{"cut-is-draft", check_cut_is_draft},
                        CheckRow{"assumed-input", check_assumed_input}};

} // namespace sheerpole::cut_inputs
