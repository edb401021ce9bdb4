#include "calculate/facts.hpp"
#include "calculate/length/body.hpp"
#include "calculate/length/path_length.hpp"
#include "calculate/reading/reading_length.hpp"
#include "model/fact_name.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "units/format_length.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/length_phrases.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

/// What the lengths of a stay come to: its body, its two ways, its two sides.
namespace sheerpole::stay_lengths {

namespace {

using P = LengthCheckPhrase;

/// The entry that takes most: a part, or a line with a length of its own.
const StackItem* longest_entry(const Rig& rig, const Stay& stay) {
  const StackItem* longest = nullptr;
  Length most;
  for (const StackItem& item : stay.stack) {
    const auto taken = item.line_length ? std::optional(item.line_length->value) : taken_length(rig, item);
    if (taken && *taken > most) {
      most = *taken;
      longest = &item;
    }
  }
  return longest;
}

Remark label_of(const Rig& rig, const StackItem& item) {
  if (item.line_length)
    return {P::longest_line, {item.line_length->value}};
  return {P::longest_part, {item.part, *taken_length(rig, item)}};
}

void check_negative_body(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  // Of an unknown length it can not be said what is left.
                  if (derived_stay.pin_to_pin.unknown) {
                    of_stay.not_checked({P::its_length_is_x});
                    return;
                  }
                  // The shortest body says it for all: only the line without a length of its own can come
                  // out too short.
                  const LengthSum* shortest = &derived_stay.body;
                  for (const Piece& piece : derived_stay.pieces)
                    if (piece.body.known() < shortest->known())
                      shortest = &piece.body;
                  if (shortest->known() > threshold::negligible) {
                    of_stay.pass({P::body_is, {shortest->known()}});
                    return;
                  }
                  const Stay& stay = rig[derived_stay.stay];
                  const Length pin_to_pin = derived_stay.pin_to_pin.known();
                  Diagnostic finding =
                      diagnose("negative-body", {{"stay", name},
                                                 {"hardware", length_text(pin_to_pin - shortest->known())},
                                                 {"pin-to-pin", length_text(pin_to_pin)},
                                                 {"amount", length_text(-shortest->known())}})
                          .at(stay.place, say(rig, {P::pin_to_pin_is, {pin_to_pin}}))
                          .about(name)
                          .build();
                  if (const StackItem* longest = longest_entry(rig, stay))
                    finding.others.push_back({longest->place, say(rig, label_of(rig, *longest))});
                  of_stay.find(std::move(finding));
                });
}

/// The estimate is what line is ordered by where the length is X.
void check_estimate_short(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  const auto estimate = fact_length(stay.particulars, fact_names.estimate);
                  if (!estimate)
                    return;
                  // X is the pins' distance and what the reading takes off it, which the estimate has not.
                  const Length hardware = derived_stay.pin_to_pin.known() - derived_stay.body.known();
                  const Length left = estimate->value - hardware;
                  if (left > threshold::negligible)
                    of_stay.pass({P::estimate_leaves, {estimate->value, left}});
                  else
                    of_stay.find(diagnose("estimate-short", {{"stay", name},
                                                             {"estimate", length_text(estimate->value)},
                                                             {"hardware", length_text(hardware)}})
                                     .at(estimate->provenance.place.value_or(stay.place))
                                     .about(name));
                });
}

/// The line beside an item of the stack, past what only sits on it; null when there is none.
const StackItem* line_beside(const Rig& rig, const Stay& stay, std::size_t item, bool below) {
  for (std::size_t at = item;;) {
    if (below ? at + 1 == stay.stack.size() : at == 0)
      return nullptr;
    at = below ? at + 1 : at - 1;
    const StackItem& next = stay.stack[at];
    if (next.kind == StackItem::Kind::line)
      return &next;
    if (rig[next.part].role != Part::Role::worn)
      return nullptr;
  }
}

std::optional<Diagnostic> wire_finding(const Rig& rig, const Stay& stay, std::size_t item,
                                       const std::string& name) {
  const StackItem& entry = stay.stack[item];
  if (entry.kind != StackItem::Kind::part || !entry.splice)
    return std::nullopt;
  for (const bool below : {true, false}) {
    const StackItem* line = line_beside(rig, stay, item, below);
    if (line == nullptr)
      continue;
    const LineMaterial& material = rig[line->material.value_or(stay.material)];
    if (material.kind == LineMaterial::Kind::rope)
      return std::nullopt;
    return diagnose("splice-on-wire", {{"stay", name},
                                       {"splice", rig[*entry.splice].name},
                                       {"part", rig[entry.part].name},
                                       {"line", material.name},
                                       {"kind", std::string(name_of(material.kind))}})
        .at(entry.place, said(P::ropes_splice))
        .and_at(material.place, say(rig, {P::line_is_a, {Words{std::string(name_of(material.kind))}}}))
        .about(name)
        .build();
  }
  return std::nullopt;
}

void check_splice_on_wire(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  for (std::size_t i = 0; i < stay.stack.size(); ++i)
                    if (auto finding = wire_finding(rig, stay, i, name))
                      of_stay.find(std::move(*finding));
                    else if (stay.stack[i].kind == StackItem::Kind::part && stay.stack[i].splice)
                      of_stay.pass({P::on_a_rope, {*stay.stack[i].splice, stay.stack[i].part}});
                });
}

std::optional<Diagnostic> upwards_finding(const Rig& rig, const Stay& stay, const std::string& name) {
  const PathStop& first = stay.path.front();
  const PathStop& last = stay.path.back();
  const Length rise = rig[last.point].position.z - rig[first.point].position.z;
  if (rise <= *rig.limits.length(Limit::path_rise))
    return std::nullopt;
  return diagnose("path-runs-upwards", {{"stay", name},
                                        {"first", rig[first.point].base},
                                        {"last", rig[last.point].base},
                                        {"amount", length_text(rise)}})
      .at(first.place, said(P::upper_by_path))
      .and_at(last.place, say(rig, {P::higher, {rise}}))
      .about(name)
      .build();
}

void check_path_runs_upwards(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  if (stay.path.size() < 2)
                    of_stay.not_checked({P::no_path});
                  else if (auto finding = upwards_finding(rig, stay, name))
                    of_stay.find(std::move(*finding));
                  else
                    of_stay.pass({P::is_above,
                                  {Words{rig[stay.path.front().point].base},
                                   Words{rig[stay.path.back().point].base}}});
                });
}

P by_route(LengthRoute route) {
  switch (route) {
  case LengthRoute::reading:
    return P::by_the_reading;
  case LengthRoute::stated:
    return P::as_stated;
  case LengthRoute::path:
    return P::through_the_points;
  case LengthRoute::unknown:
    break;
  }
  return P::way_unknown;
}

std::string labelled(const Rig& rig, LengthRoute route, Length length) {
  return say(rig, {by_route(route), {length}});
}

bool ways_far_apart(const Rig& rig, const DerivedStay& stay, const RouteComparison& other) {
  return other.speaks_of_now() && far_apart(rig, stay.pin_to_pin.known(), other.length);
}

/// A run of a reading that lies apart from the others: its slip takes the mean along with it.
const Sourced<Length>* run_apart(const Rig& rig, const Stay& stay) {
  const auto allowed = rig.limits.length(Limit::routes_apart);
  for (const Reading& reading : stay.readings) {
    const auto& runs = reading.lengths();
    if (!allowed || runs.size() < 2)
      continue;
    const Sourced<Length>& odd = odd_run(runs);
    if (odd.provenance.place && std::any_of(runs.begin(), runs.end(), [&](const Sourced<Length>& run) {
          return magnitude(run.value - odd.value) > *allowed + threshold::negligible;
        }))
      return &odd;
  }
  return nullptr;
}

Diagnostic route_finding(const Rig& rig, const DerivedStay& derived_stay, const Stay& stay,
                         const RouteComparison& other, const std::string& name, std::string_view slug) {
  const Length taken = derived_stay.pin_to_pin.known();
  const Length difference = other.difference < Length{} ? -other.difference : other.difference;
  const auto& place = derived_stay.pin_to_pin.terms.front().provenance.place;
  Diagnostic finding = diagnose(slug, {{"stay", name},
                                       {"taken", labelled(rig, derived_stay.route, taken)},
                                       {"other", labelled(rig, other.other, other.length)},
                                       {"difference", length_text(difference)}})
                           .at(place.value_or(stay.place), labelled(rig, derived_stay.route, taken))
                           .about(name)
                           .build();
  for (std::size_t i = 0; i < other.slips.size(); ++i)
    finding.why += say(rig, {i == 0 ? P::comes_out_if : P::or_if, {Remarks{{other.slips[i].words}}}});
  if (const Sourced<Length>* odd = run_apart(rig, stay))
    finding.others.push_back({*odd->provenance.place, say(rig, {P::run_apart, {odd->value}})});
  if (other.provenance.place)
    finding.others.push_back({*other.provenance.place, labelled(rig, other.other, other.length)});
  return finding;
}

void check_routes_differ(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const RouteComparison& other : stay.other_routes)
          if (other.expected_x)
            of_stay.not_checked(
                {P::x_expected, {*other.expected_x, Words{labelled(rig, other.other, other.length)}}});
          else if (other.is_assumed())
            of_stay.not_checked({P::other_way_assumed, {Words{labelled(rig, other.other, other.length)}}});
          else if (ways_far_apart(rig, stay, other))
            continue; // routes-far-apart tells it
          else if (ways_differ(rig, other))
            of_stay.find(route_finding(rig, stay, rig[stay.stay], other, name, "routes-differ"));
          else if (other.other != LengthRoute::reading)
            of_stay.pass({P::two_ways,
                          {Words{labelled(rig, stay.route, stay.pin_to_pin.known())},
                           Words{labelled(rig, other.other, other.length)}}});
        if (stay.other_routes.empty())
          of_stay.not_checked({P::one_way});
      });
}

void check_routes_far_apart(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const RouteComparison& other : stay.other_routes)
          if (!other.speaks_of_now() || other.is_assumed())
            continue; // routes-differ says why
          else if (ways_far_apart(rig, stay, other))
            of_stay.find(route_finding(rig, stay, rig[stay.stay], other, name, "routes-far-apart"));
          else
            of_stay.pass({P::two_ways,
                          {Words{labelled(rig, stay.route, stay.pin_to_pin.known())},
                           Words{labelled(rig, other.other, other.length)}}});
      });
}

/// A round length that is no shorter, as an estimate is written.
std::string estimate_text(Length length) {
  return format_fixed(std::ceil(length.metres() * 10.0 - 1e-6) / 10.0, 1) + " m";
}

/// The estimate is all that there is to see by whether a cord that was measured, or a tape, is the right
/// one where nothing else gives the length. Ways that are far apart are told by `routes-far-apart`.
void check_estimate_far(const Rig& rig, const Derived& derived, CheckReport& report) {
  const auto most = rig.limits.value(Limit::estimate_apart);
  if (!most)
    return;
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  const auto estimate = fact_length(stay.particulars, fact_names.estimate);
                  const LengthSum& pins = derived_stay.pin_to_pin;
                  // Line is ordered by the estimate while the length is X; points say about the same.
                  auto path = pins.unknown ? path_length(rig, stay) : std::nullopt;
                  if (path && path->unknown)
                    path.reset();
                  if (!estimate || (derived_stay.route == LengthRoute::unknown && !path) ||
                      (!pins.unknown &&
                       std::any_of(derived_stay.other_routes.begin(), derived_stay.other_routes.end(),
                                   [&](const RouteComparison& other) {
                                     return ways_far_apart(rig, derived_stay, other);
                                   })))
                    return;
                  if (pins.unknown && !path) {
                    of_stay.not_checked({P::its_length_is_x});
                    return;
                  }
                  const Length taken = path ? path->known() : pins.known();
                  const Length apart = magnitude(taken - estimate->value);
                  const std::string length =
                      labelled(rig, path ? LengthRoute::path : derived_stay.route, taken);
                  if (apart <= std::max(taken, estimate->value) * *most + threshold::negligible) {
                    of_stay.pass({P::near_estimate, {Words{length}, estimate->value}});
                    return;
                  }
                  const std::string text = estimate_text(taken);
                  const auto& place = (path ? *path : pins).terms.front().provenance.place;
                  auto finding = diagnose("estimate-far", {{"stay", name},
                                                           {"length", length},
                                                           {"estimate", length_text(estimate->value)},
                                                           {"apart", length_text(apart)}})
                                     .at(place.value_or(stay.place), length)
                                     .about(name);
                  if (const auto& stated = estimate->provenance.place)
                    finding = std::move(finding)
                                  .and_at(*stated, say(rig, {P::as_estimated, {estimate->value}}))
                                  .edit(*stated, text, say(rig, {P::write_estimate, {Words{text}}}));
                  of_stay.find(std::move(finding));
                });
}

/// By how much the two bodies of a pair may differ: as the boat says, else by the limits. Nothing when all
/// of that is switched off.
std::optional<Length> allowed_apart(const Rig& rig, Length body) {
  if (rig.boat.pair_tolerance)
    return rig.boat.pair_tolerance->value;
  const auto length = rig.limits.length(Limit::pair_apart);
  const auto share = rig.limits.value(Limit::pair_apart_share);
  if (!length && !share)
    return std::nullopt;
  return std::max(length.value_or(Length{}), body * share.value_or(0.0));
}

/// The terms of the two sides that differ most; nothing where each sum is made up otherwise.
std::optional<std::pair<const Term*, const Term*>> most_different(const LengthSum& port,
                                                                  const LengthSum& starboard) {
  std::optional<std::pair<const Term*, const Term*>> result;
  Length most = threshold::negligible;
  if (port.terms.size() != starboard.terms.size())
    return result;
  for (std::size_t i = 0; i < port.terms.size(); ++i) {
    const Term& one = port.terms[i];
    const Term& other = starboard.terms[i];
    if (one.kind != other.kind)
      return std::nullopt;
    if (const Length difference = magnitude(one.amount - other.amount); difference > most) {
      most = difference;
      result = std::pair(&one, &other);
    }
  }
  return result;
}

/// The end of the path whose place to port is least like the mirror image of that to starboard.
std::optional<std::pair<const Point*, const Point*>> least_mirrored(const Rig& rig, const Stay& port,
                                                                    const Stay& starboard) {
  std::optional<std::pair<const Point*, const Point*>> result;
  double most = threshold::negligible.metres();
  for (std::size_t i = 0; i < port.path.size() && i < starboard.path.size(); ++i) {
    const Point& a = rig[port.path[i].point];
    const Point& b = rig[starboard.path[i].point];
    const double off =
        std::hypot((a.position.x - b.position.x).metres(), (a.position.y + b.position.y).metres(),
                   (a.position.z - b.position.z).metres());
    if (off > most) {
      most = off;
      result = std::pair(&a, &b);
    }
  }
  return result;
}

/// Where the two sides differ most: a term of what was read or stated, else a place.
void point_at_difference(const Rig& rig, const DerivedStay& port, const DerivedStay& starboard,
                         Diagnostic& finding) {
  const auto add = [&](const std::optional<Span>& place, const std::string& words) {
    if (place)
      finding.others.push_back({*place, words});
  };
  if (port.route == LengthRoute::path && starboard.route == LengthRoute::path) {
    if (const auto points = least_mirrored(rig, rig[port.stay], rig[starboard.stay]))
      for (const Point* point : {points->first, points->second})
        if (point->overridden || point == points->first)
          add(point->provenance.place, said(P::differs_most));
  } else if (const auto terms = most_different(port.pin_to_pin, starboard.pin_to_pin)) {
    for (const Term* term : {terms->first, terms->second})
      add(term->provenance.place, said(P::differs_most));
  }
}

Diagnostic pair_finding(std::string_view slug, const Rig& rig, const DerivedStay& port_stay,
                        const DerivedStay& starboard_stay, Length bound) {
  const Stay& stay = rig[port_stay.stay];
  const Length port = port_stay.body.known();
  const Length starboard = starboard_stay.body.known();
  const bool port_longer = port > starboard;
  Diagnostic finding =
      diagnose(slug, {{"stay", stay.base},
                      {"longer", port_longer ? "port" : "starboard"},
                      {"shorter", port_longer ? "starboard" : "port"},
                      {"difference", length_text(port_longer ? port - starboard : starboard - port)},
                      {"longer-body", length_text(port_longer ? port : starboard)},
                      {"shorter-body", length_text(port_longer ? starboard : port)},
                      {"tolerance", length_text(bound)}})
          .at(stay.place, say(rig, {P::two_sides, {port, starboard}}))
          .about(stay.base)
          .build();
  if (rig.boat.pair_tolerance && rig.boat.pair_tolerance->provenance.place)
    finding.others.push_back(
        {*rig.boat.pair_tolerance->provenance.place, say(rig, {P::alike_within, {bound}})});
  point_at_difference(rig, port_stay, starboard_stay, finding);
  return finding;
}

/// Whether a pair is so far apart that a slip is likelier than a boat out of true.
bool pair_is_far(const Rig& rig, Length difference, Length body) {
  const auto share = rig.limits.value(Limit::pair_far_apart);
  return share && difference > body * *share + threshold::negligible;
}

/// The two checks on the bodies of a pair, of which that for a pair far apart speaks first.
template <Limit limit>
void check_pair_differs(const Rig& rig, const Derived& derived, CheckReport& report) {
  constexpr bool of_far = limit == Limit::pair_far_apart;
  for (const DerivedStay& port : derived.stays) {
    const Stay& stay = rig[port.stay];
    if (stay.side != Side::port)
      continue;
    const DerivedStay* starboard = other_side(rig, derived, port);
    if (starboard == nullptr)
      continue;
    // Two marks on two cords can not be compared in a file.
    if (port.body.unknown || starboard->body.unknown) {
      if (!of_far)
        report.not_checked(stay.base, {P::side_is_x});
      continue;
    }
    const Length to_port = port.body.known();
    const Length to_starboard = starboard->body.known();
    const auto bound = allowed_apart(rig, to_port);
    const Length difference = magnitude(to_port - to_starboard);
    const bool far = pair_is_far(rig, difference, to_port);
    if (of_far) {
      if (far)
        report.find(pair_finding(report.check(), rig, port, *starboard,
                                 to_port * *rig.limits.value(Limit::pair_far_apart)));
      else
        report.pass(stay.base, {P::two_sides, {to_port, to_starboard}});
      continue;
    }
    if (!bound || far)
      continue;
    if (difference > *bound + threshold::negligible)
      report.find(pair_finding(report.check(), rig, port, *starboard, *bound));
    else
      report.pass(stay.base, {P::two_sides, {to_port, to_starboard}});
  }
}

} // namespace

const CheckTable checks{
    CheckRow{"negative-body", check_negative_body},
    CheckRow{"estimate-short", check_estimate_short},
    CheckRow{"splice-on-wire", check_splice_on_wire},
    CheckRow{"path-runs-upwards", check_path_runs_upwards, {Limit::path_rise}},
    CheckRow{"routes-far-apart", check_routes_far_apart, {Limit::routes_far_apart}, true},
    CheckRow{"routes-differ", check_routes_differ, {Limit::routes_apart}},
    CheckRow{"estimate-far", check_estimate_far, {Limit::estimate_apart}},
    CheckRow{"pair-differs",
             check_pair_differs<Limit::pair_apart>,
             {Limit::pair_apart, Limit::pair_apart_share}},
    CheckRow{"pair-far-apart", check_pair_differs<Limit::pair_far_apart>, {Limit::pair_far_apart}},
};

} // namespace sheerpole::stay_lengths
