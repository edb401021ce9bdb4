#include "calculate/facts.hpp"
#include "calculate/joints/crown.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"
#include "rules/by_side.hpp"
#include "rules/check_table.hpp"
#include "rules/geometry/spreader_tips.hpp"
#include "rules/stack_parts.hpp"
#include "units/quantity_text.hpp"
#include "wording/checks/any_check_phrases.hpp"
#include "wording/checks/securing_phrases.hpp"

#include <utility>

/// What a line bears on: edges, tips and thimbles.
namespace sheerpole::rope_bearing {

namespace {

using Common = AnyCheckPhrase;

using P = SecuringCheckPhrase;

/// An edge that a rope bears on.
struct Edge {
  std::string what; ///< "the tip of lower-spreader"
  const LineMaterial* rope = nullptr;
  std::optional<Length> radius; ///< nothing: not stated
  Span at;                      ///< in the stay
  std::optional<Span> stated;
};

class Edges {
public:
  Edges(const Rig& rig, const Stay& stay, const std::string& name, StayReport& report)
      : rig_(rig), stay_(stay), name_(name), report_(report) {}

  void tip(const Spreader& spreader, const LineMaterial& rope) {
    Edge edge{say(rig_, {P::tip_of, {Words{without_side(spreader.name)}}}), &rope, std::nullopt,
              stay_.place, std::nullopt};
    if (const auto radius = fact_length(spreader.particulars, fact_names.edge_radius)) {
      edge.radius = radius->value;
      edge.stated = radius->provenance.place;
    }
    look_at(edge);
  }

  void seat(const Joint& joint) {
    const End* above = upper_end(rig_, joint);
    const End* below = lower_end(rig_, joint);
    const End* seat = above != nullptr ? above : below;
    if (seat == nullptr || (above != nullptr && below != nullptr) || seat->type != EndType::rope_seat)
      return;
    const std::size_t part_item = above != nullptr ? joint.upper : joint.lower;
    const StackItem& line = stay_.stack[above != nullptr ? joint.lower : joint.upper];
    const LineMaterial& rope = rig_[line.material.value_or(stay_.material)];
    if (rope.kind != LineMaterial::Kind::rope)
      return;
    Edge edge{say(rig_, {P::edge_of, {stay_.stack[part_item].part}}), &rope, std::nullopt,
              stay_.stack[part_item].place, std::nullopt};
    if (const EndDimension* radius = seat->find(EndDimensionName::edge_radius)) {
      edge.radius = radius->length.value;
      edge.stated = radius->length.provenance.place;
    }
    look_at(edge);
  }

private:
  void look_at(const Edge& edge) {
    if (!edge.radius) {
      report_.not_checked({P::radius_not_stated, {Words{edge.what}}});
      return;
    }
    const Length least = edge.rope->diameter.value * rig_.limits.value(Limit::edge_radius).value_or(0.0);
    const Remark words(P::radius_under_rope, {Words{edge.what}, *edge.radius, edge.rope->diameter.value});
    if (*edge.radius > least - threshold::negligible) {
      report_.pass(words);
      return;
    }
    auto finding = diagnose("edge-sharp",
                            {{"stay", name_}, {"words", say(rig_, words)}, {"least", length_text(least)}})
                       .at(edge.at, said(P::rope_bears))
                       .about(name_);
    if (edge.stated)
      finding = std::move(finding).and_at(*edge.stated, said(P::the_radius));
    find_once(report_, std::move(finding));
  }

  const Rig& rig_;
  const Stay& stay_;
  const std::string& name_;
  StayReport& report_;
};

void check_edge_sharp(const Rig& rig, const Derived& derived, CheckReport& report) {
  const SpreaderTips tips(rig);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  Edges edges(rig, stay, name, of_stay);
                  const LineOverTips line = line_over_tips(rig, stay);
                  for (const Spreader* spreader : tips.under(stay))
                    if (line.not_known)
                      of_stay.not_checked({P::which_line, {Words{without_side(spreader->name)}}});
                    else if (line.rope != nullptr)
                      edges.tip(*spreader, *line.rope);
                  for (const Joint& joint : derived_stay.joints)
                    edges.seat(joint);
                });
}

bool is_line(const Stay& stay, std::size_t item) {
  return stay.stack[item].kind == StackItem::Kind::line;
}

void look_at_thimble(const Rig& rig, const Stay& stay, const std::string& name, const Joint& joint,
                     StayReport& report) {
  if (is_line(stay, joint.upper) == is_line(stay, joint.lower))
    return;
  const std::size_t line_item = is_line(stay, joint.upper) ? joint.upper : joint.lower;
  const std::size_t part_item = line_item == joint.upper ? joint.lower : joint.upper;
  const LineMaterial& line = rig[stay.stack[line_item].material.value_or(stay.material)];
  const Part& part = rig[stay.stack[part_item].part];
  const std::string made_for = fact_text(part.particulars, fact_names.made_for);
  if (made_for.empty()) {
    if (part.kind == PartKind::thimble)
      report.not_checked({Common::of_something,
                          {Remarks{{joint.name}},
                           Remarks{{{Common::of_not_stated, {Words{"made-for"}, Words{part.name}}}}}}});
    return;
  }
  const bool rope = line.kind == LineMaterial::Kind::rope;
  const std::string kind(name_of(line.kind));
  if (made_for == (rope ? "wire" : "rope"))
    find_once(report, diagnose("thimble-for-wire", {{"stay", name},
                                                    {"line", line.name},
                                                    {"kind", kind},
                                                    {"part", part.name},
                                                    {"made-for", made_for}})
                          .at(stay.stack[part_item].place, say(rig, {P::made_for, {Words{made_for}}}))
                          .about(name));
  else
    report.pass({P::on_a_part_made_for, {Remarks{{joint.name}}, Words{kind}, Words{made_for}}});
}

void check_thimble_for_wire(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const Joint& joint : stay.joints)
                    look_at_thimble(rig, rig[stay.stay], name, joint, of_stay);
                });
}

/// A cover in the stack is worn on the line and counts for every tip.
std::string cover_of(const Rig& rig, const Stay& stay) {
  for (const StackItem& item : stay.stack)
    if (item.kind == StackItem::Kind::part && rig[item.part].kind == PartKind::cover)
      return rig[item.part].name;
  return "";
}

void look_at_tip(const Rig& rig, const Stay& stay, const std::string& name, const Spreader& spreader,
                 const LineMaterial& rope, StayReport& report) {
  const std::string at = say(rig, {P::at_the_tip_of, {Words{without_side(spreader.name)}}});
  const Stated gear = stated_fact(spreader.particulars, fact_names.chafe_gear).how;
  const std::string cover = cover_of(rig, stay);
  if (!cover.empty() || gear.answer == Answer::stated) {
    report.pass({Common::of_something, {Words{at}, Words{cover.empty() ? gear.text : cover}}});
  } else if (gear.answer == Answer::unstated) {
    report.not_checked({Common::of_not_stated, {Words{"chafe-gear"}, Words{without_side(spreader.name)}}});
  } else {
    auto finding = diagnose("no-chafe-gear", {{"stay", name}, {"line", rope.name}, {"where", at}})
                       .at(stay.place)
                       .about(name);
    if (const auto place = place_of(spreader.particulars, fact_names.chafe_gear))
      finding = std::move(finding).and_at(*place, "none");
    report.find(std::move(finding));
  }
}

void check_no_chafe_gear(const Rig& rig, const Derived& derived, CheckReport& report) {
  const SpreaderTips tips(rig);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  const LineOverTips line = line_over_tips(rig, stay);
                  for (const Spreader* spreader : tips.under(stay))
                    if (line.not_known)
                      of_stay.not_checked({P::which_line, {Words{without_side(spreader->name)}}});
                    else if (line.rope != nullptr)
                      look_at_tip(rig, stay, name, *spreader, *line.rope, of_stay);
                });
}

/// The thimble of no length at this joint; null when there is none.
const Part* thimble_without_length(const Rig& rig, const Stay& stay, const Joint& joint) {
  for (const std::size_t item : {joint.upper, joint.lower})
    if (stay.stack[item].kind == StackItem::Kind::part) {
      const Part& part = rig[stay.stack[item].part];
      if (part.kind == PartKind::thimble && part.length &&
          magnitude(part.length->value) < threshold::negligible)
        return &part;
    }
  return nullptr;
}

void look_at_bearing(const Rig& rig, const Stay& stay, const std::string& name, const Joint& joint,
                     StayReport& report) {
  const Part* thimble = thimble_without_length(rig, stay, joint);
  if (thimble == nullptr || upper_end(rig, joint) == nullptr || lower_end(rig, joint) == nullptr)
    return;
  const JointCheck* pin = pin_in_hole(joint);
  if (pin == nullptr) {
    report.not_checked({P::bore_not_stated, {Remarks{{joint.name}}, Words{thimble->name}}});
    return;
  }
  if (*pin->play < -threshold::negligible)
    return; // it does not go in, which is said by its own finding
  if (*pin->play < threshold::negligible) {
    report.pass({Common::of_something, {Remarks{{joint.name}}, Remarks{{pin->words}}}});
    return;
  }
  find_once(report, diagnose("bearing-offset-zero", {{"stay", name},
                                                     {"joint", say(rig, joint.name)},
                                                     {"part", thimble->name},
                                                     {"words", say(rig, pin->words)},
                                                     {"offset", length_text(*pin->play / 2.0)}})
                        .at(thimble->length->provenance.place.value_or(thimble->place), said(P::its_length))
                        .and_at(stay.stack[joint.lower].place, said(P::this_joint))
                        .about(name));
}

void check_bearing_offset_zero(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const Joint& joint : stay.joints)
                    look_at_bearing(rig, rig[stay.stay], name, joint, of_stay);
                });
}

P unknown_words(CrownUnknown unknown) {
  switch (unknown) {
  case CrownUnknown::length_not_measured:
    return P::length_not_measured;
  case CrownUnknown::seat_not_stated:
    return P::seat_not_stated;
  case CrownUnknown::bore_not_stated:
  case CrownUnknown::none:
    break;
  }
  return P::bore_not_stated;
}

/// Its piece is not to be cut then, which calculate says.
void look_at_crown(const Rig& rig, const Stay& stay, const std::string& name, const Joint& joint,
                   StayReport& report) {
  const auto crown = crown_at(rig, stay, joint);
  if (!crown)
    return;
  const Part& part = rig[crown->part];
  if (!crown->beyond) {
    report.not_checked({unknown_words(crown->unknown), {Remarks{{joint.name}}, Words{part.name}}});
    return;
  }
  const Remark words(P::crown_beyond_pin, {Words{part.name}, *crown->beyond, crown->length.value});
  if (!crown->on_the_wrong_side()) {
    report.pass(words);
    return;
  }
  const std::string length = length_text(Length() - *crown->beyond);
  const auto& place = crown->length.provenance.place;
  auto finding =
      diagnose("crown-beyond-pin",
               {{"stay", name}, {"words", say(rig, words)}, {"short", length_text(crown->short_by())}})
          .at(place.value_or(part.place), said(P::its_length))
          .and_at(stay.stack[joint.lower].place, said(P::this_joint))
          .about(name);
  if (place)
    finding =
        std::move(finding).edit(*place, length, say(rig, {P::write_negative_length, {Words{length}}}));
  find_once(report, std::move(finding));
}

void check_crown_beyond_pin(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
                  for (const Joint& joint : stay.joints)
                    look_at_crown(rig, rig[stay.stay], name, joint, of_stay);
                });
}

} // namespace

const CheckTable checks{
    CheckRow{"edge-sharp", check_edge_sharp, {Limit::edge_radius}},
    CheckRow{"thimble-for-wire", check_thimble_for_wire},
    CheckRow{"no-chafe-gear", check_no_chafe_gear},
    CheckRow{"bearing-offset-zero", check_bearing_offset_zero},
    CheckRow{"crown-beyond-pin", check_crown_beyond_pin},
};

} // namespace sheerpole::rope_bearing
