#include "calculate/strength/stay_chain.hpp"

#include "calculate/cut/line_ends.hpp"
#include "calculate/facts.hpp"
#include "calculate/length/length_sum.hpp"
#include "calculate/strength/fitting_strength.hpp"
#include "calculate/strength/rope_strength.hpp"
#include "calculate/strength/strength_phrases.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

Number megapascals(double pascals) {
  return {pascals / 1e6};
}

/// A diameter with where it is from.
struct Thickness {
  Length length;
  Provenance provenance;
};

class Chain {
public:
  Chain(const Rig& rig, StayId stay, const std::vector<Joint>& joints)
      : rig_(rig), stay_(rig[stay]), joints_(joints) {}

  StayChain run() {
    add_outer_pin(true);
    for (std::size_t i = 0; i < stay_.stack.size(); ++i) {
      if (stay_.stack[i].kind == StackItem::Kind::line)
        add_line(i);
      else if (rig_[stay_.stack[i].part].role != Part::Role::worn)
        add_part(i);
      if (const Joint* joint = joint_below(i))
        add_joint(*joint);
    }
    add_outer_pin(false);
    compare();
    return std::move(chain_);
  }

private:
  const Part& part_at(std::size_t item) const { return rig_[part_id(item)]; }
  const LineMaterial& line_at(std::size_t item) const { return rig_[line_id(item)]; }
  const Joint* joint_below(std::size_t item) {
    // Joints stand in the order of the stack.
    if (next_joint_ < joints_.size() && joints_[next_joint_].upper == item)
      return &joints_[next_joint_++];
    return nullptr;
  }

  MaterialId line_id(std::size_t item) const { return stay_.stack[item].material.value_or(stay_.material); }
  PartId part_id(std::size_t item) const { return stay_.stack[item].part; }
  static Remark named(RemarkArgument thing) { return {StrengthPhrase::named, {std::move(thing)}}; }

  ChainLink link_of(LinkKind kind, std::size_t item, Remark name) const {
    ChainLink link;
    link.kind = kind;
    link.item = item;
    link.name = std::move(name);
    if (stay_.stack[item].kind == StackItem::Kind::part)
      link.meant = fact_text(part_at(item).particulars, fact_names.weak_link);
    return link;
  }
  void add(ChainLink link) { chain_.links.push_back(std::move(link)); }

  void add_line(std::size_t item) {
    add_splice(item, WhichEnd::upper);
    const LineMaterial& material = line_at(item);
    ChainLink link = link_of(line_kind(item), item, named(line_id(item)));
    if (material.break_load) {
      link.break_load = material.break_load->value;
      link.how = StrengthPhrase::as_stated;
      link.provenance = material.break_load->provenance;
    } else {
      link.not_stated = {{StrengthPhrase::break_load, named(line_id(item))}};
    }
    add(std::move(link));
    add_splice(item, WhichEnd::lower);
  }

  LinkKind line_kind(std::size_t item) const {
    return line_id(item) == stay_.material ? LinkKind::line : LinkKind::other_line;
  }

  void add_splice(std::size_t item, WhichEnd where) {
    const LineMaterial& material = line_at(item);
    const LineEnd end = line_end(rig_, stay_, item, where);
    if (material.kind != LineMaterial::Kind::rope || end.bare())
      return;
    const bool aloft = where == WhichEnd::upper;
    const MaterialId line = line_id(item);
    if (!end.item->splice) {
      ChainLink link = link_of(line_kind(item), item,
                               {aloft ? StrengthPhrase::end_aloft : StrengthPhrase::end_below, {line}});
      link.not_stated = {{StrengthPhrase::splice,
                          {aloft ? StrengthPhrase::line_aloft : StrengthPhrase::line_below, {line}}}};
      add(std::move(link));
      return;
    }
    const SpliceId splice_id = *end.item->splice;
    const Splice& splice = rig_[splice_id];
    ChainLink link =
        link_of(line_kind(item), item,
                {aloft ? StrengthPhrase::splice_aloft : StrengthPhrase::splice_below, {line, splice_id}});
    const auto efficiency = fact_number(splice.particulars, fact_names.efficiency);
    if (!efficiency)
      link.not_stated.push_back({StrengthPhrase::efficiency, named(splice_id)});
    if (!material.break_load)
      link.not_stated.push_back({StrengthPhrase::break_load, named(line)});
    if (link.not_stated.empty()) {
      const double factors[] = {efficiency->value};
      link.break_load = reduced_break_load(material.break_load->value, factors);
      link.how = {StrengthPhrase::splice_share,
                  {material.break_load->value, Share{efficiency->value}, splice_id}};
      link.provenance = combine({&material.break_load->provenance, &efficiency->provenance});
    }
    add(std::move(link));
  }

  void add_part(std::size_t item) {
    const Part& part = part_at(item);
    const bool lashed = part.kind == PartKind::lashing;
    if (lashed)
      add_lashing(item);
    const auto stated = fact_force(part.particulars, fact_names.break_load);
    // A soft eye is the rope itself, and the cord of a lashing is looked at as such.
    if (!stated && (lashed || part.kind == PartKind::soft_eye))
      return;
    ChainLink link = link_of(LinkKind::part, item, named(part_id(item)));
    if (stated) {
      link.break_load = stated->value;
      link.how = StrengthPhrase::as_stated;
      link.provenance = stated->provenance;
    } else {
      link.not_stated = {{StrengthPhrase::break_load, named(part_id(item))}};
    }
    add(std::move(link));
  }

  void add_lashing(std::size_t item) {
    const Part& part = part_at(item);
    const std::optional<int>& passes = stay_.stack[item].passes;
    ChainLink link = link_of(LinkKind::lashing, item, {StrengthPhrase::cord_of, {part_id(item)}});
    std::optional<MaterialId> cord_id;
    if (const Particular* by_name = find_fact(part.particulars, fact_names.cord);
        by_name != nullptr && !by_name->names.empty())
      for (std::size_t i = 0; i < rig_.materials.size(); ++i)
        if (rig_.materials[i].name == by_name->names.front())
          cord_id = MaterialId{static_cast<std::uint32_t>(i)};
    const LineMaterial* cord = cord_id ? &rig_[*cord_id] : nullptr;
    const Remark lashing = named(part_id(item));
    const auto knot = fact_number(part.particulars, fact_names.knot_factor);
    const auto legs = rig_.limits.value(Limit::lashing_legs);
    if (cord == nullptr)
      link.not_stated.push_back({StrengthPhrase::cord, lashing});
    else if (!cord->break_load)
      link.not_stated.push_back({StrengthPhrase::break_load, named(*cord_id)});
    if (!passes)
      link.not_stated.push_back({StrengthPhrase::passes, lashing});
    if (!knot)
      link.not_stated.push_back({StrengthPhrase::knot_factor, lashing});
    if (!legs)
      link.not_stated.push_back({StrengthPhrase::lashing_legs, StrengthPhrase::the_limits});
    if (link.not_stated.empty()) {
      if (const auto one_leg = lashing_strength_by_legs(cord->break_load->value, *passes, knot->value))
        link.break_load = *legs * *one_leg;
      link.how = {StrengthPhrase::lashing_sum,
                  {Remarks{{{*passes == 1 ? StrengthPhrase::one_pass : StrengthPhrase::several_passes,
                             {Count{*passes}}}}},
                   Remarks{{{*legs == 1.0 ? StrengthPhrase::one_leg : StrengthPhrase::several_legs,
                             {Number{*legs}}}}},
                   cord->break_load->value, *cord_id, Share{knot->value}}};
      link.provenance = combine({&cord->break_load->provenance, &knot->provenance});
    }
    add(std::move(link));
  }

  void add_joint(const Joint& joint) {
    const auto pin = pin_of(rig_, joint);
    if (!pin || (pin->jaw == nullptr && !pin->own))
      return; // the break load of a shackle speaks for its pin
    const End* above = upper_end(rig_, joint);
    const End* below = lower_end(rig_, joint);
    add_pin(*pin);
    if (below != nullptr && below->type == EndType::eye)
      add_hole(joint, joint.lower, *below, *pin);
    if (above != nullptr && above->type == EndType::eye)
      add_hole(joint, joint.upper, *above, *pin);
  }

  /// The pin by which a stack whose fittings on the boat are not named hangs on them.
  void add_outer_pin(bool aloft) {
    if (joints_.empty())
      return;
    const auto outer = outer_end(rig_, stay_, joints_, aloft ? WhichEnd::upper : WhichEnd::lower);
    if (outer && outer->pin)
      add_pin(*outer->pin);
  }

  /// What is worn in a joint: a pin, a bush; nothing when there is none.
  std::optional<PartId> worn_in(const Joint& joint, PartKind kind) const {
    for (std::size_t i = joint.upper + 1; i < joint.lower; ++i)
      if (stay_.stack[i].kind == StackItem::Kind::part && part_at(i).kind == kind)
        return part_id(i);
    return std::nullopt;
  }

  static std::optional<Thickness> thickness_of(const JointPin& pin) {
    if (!pin.size)
      return std::nullopt;
    return Thickness{pin.size->length.value, pin.size->length.provenance};
  }

  void add_pin(const JointPin& pin) {
    const PartId owner_id = part_id(pin.item);
    const Part& owner = rig_[owner_id];
    ChainLink link = link_of(LinkKind::pin, pin.item,
                             {pin.own ? StrengthPhrase::named : StrengthPhrase::pin_of, {owner_id}});
    auto stated = fact_force(owner.particulars, fact_names.pin_break_load);
    if (!stated && pin.own)
      stated = fact_force(owner.particulars, fact_names.break_load);
    const auto thickness = thickness_of(pin);
    const auto stress = fact_number(owner.particulars, fact_names.pin_stress);
    if (stated) {
      link.break_load = stated->value;
      link.how = StrengthPhrase::as_stated_in_double_shear;
      link.provenance = stated->provenance;
    } else if (thickness && stress) {
      link.break_load = pin_shear_strength(thickness->length, stress->value);
      link.how = {StrengthPhrase::double_shear, {thickness->length, megapascals(stress->value)}};
      link.provenance = combine({&stress->provenance, &thickness->provenance});
    }
    if (!link.break_load) {
      link.how = {};
      if (!stress)
        link.not_stated.push_back({StrengthPhrase::pin_strength, named(owner_id)});
      else
        link.not_stated.push_back({StrengthPhrase::pin, {StrengthPhrase::jaw_of, {owner_id}}});
    }
    add(std::move(link));
  }

  void add_hole(const Joint& joint, std::size_t item, const End& eye, const JointPin& by) {
    const Part& part = part_at(item);
    ChainLink link = link_of(LinkKind::hole, item, {StrengthPhrase::hole_of, {part_id(item)}});
    const auto stress = fact_number(part.particulars, fact_names.bearing_stress);
    const EndDimension* plate = eye.find(EndDimensionName::thickness);
    const EndDimension* hole = eye.find(EndDimensionName::hole);
    auto pin = thickness_of(by);
    if (worn_in(joint, PartKind::bush) && hole != nullptr)
      pin = Thickness{hole->length.value, hole->length.provenance};
    if (!stress)
      link.not_stated.push_back({StrengthPhrase::bearing_stress, named(part_id(item))});
    if (plate == nullptr)
      link.not_stated.push_back({StrengthPhrase::thickness, named(part_id(item))});
    if (!pin)
      link.not_stated.push_back({StrengthPhrase::pin, {StrengthPhrase::jaw_at, {part_id(item)}}});
    link.counted = stress.has_value();
    if (link.not_stated.empty()) {
      link.break_load = bearing_strength(pin->length, plate->length.value, stress->value, 1.0);
      link.how = {StrengthPhrase::bearing_sum,
                  {pin->length, plate->length.value, megapascals(stress->value)}};
      link.provenance = combine({&stress->provenance, &plate->length.provenance, &pin->provenance});
    }
    // A plate of no thickness is no plate that anybody has measured.
    if (!link.break_load && link.not_stated.empty())
      link.not_stated.push_back({StrengthPhrase::thickness, named(part_id(item))});
    add(std::move(link));
  }

  /// The weakest known of the links that are counted, of the stay's own line alone or of all.
  std::optional<std::size_t> weakest_of(bool line_alone, std::vector<std::size_t>& unknown) const {
    std::vector<std::size_t> looked_at;
    std::vector<std::optional<Force>> loads;
    for (std::size_t i = 0; i < chain_.links.size(); ++i)
      if (chain_.links[i].counted && (!line_alone || chain_.links[i].kind == LinkKind::line)) {
        looked_at.push_back(i);
        loads.push_back(chain_.links[i].break_load);
      }
    const auto found = weakest_link(loads);
    if (!found)
      return std::nullopt;
    for (const std::size_t i : found->unknown)
      unknown.push_back(looked_at[i]);
    return found->weakest_known ? std::optional(looked_at[*found->weakest_known]) : std::nullopt;
  }

  void compare() {
    std::vector<std::size_t> unknown_line;
    chain_.line = weakest_of(true, unknown_line);
    chain_.weakest = weakest_of(false, chain_.unknown);
  }

  const Rig& rig_;
  const Stay& stay_;
  const std::vector<Joint>& joints_;
  std::size_t next_joint_ = 0;
  StayChain chain_;
};

} // namespace

StayChain stay_chain(const Rig& rig, StayId stay, const std::vector<Joint>& joints) {
  return Chain(rig, stay, joints).run();
}

} // namespace sheerpole
