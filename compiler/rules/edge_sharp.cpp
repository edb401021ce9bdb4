#include "calculate/facts.hpp"
#include "rules/by_side.hpp"
#include "rules/securing_checks.hpp"
#include "rules/spreader_tips.hpp"
#include "rules/stack_parts.hpp"
#include "rules/thresholds.hpp"
#include "units/quantity_text.hpp"

#include <utility>

namespace sheerpole {

namespace {

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
    Edge edge{"the tip of " + base_name(spreader), &rope, std::nullopt, stay_.place, std::nullopt};
    if (const auto radius = fact_length(spreader.particulars, "edge-radius")) {
      edge.radius = radius->value;
      edge.stated = radius->provenance.place;
    }
    look_at(edge);
  }

  void seat(const Joint& joint) {
    const End* above = upper_end(rig_, joint);
    const End* below = lower_end(rig_, joint);
    const End* seat = above != nullptr ? above : below;
    if (seat == nullptr || (above != nullptr && below != nullptr) || seat->type != "rope-seat")
      return;
    const std::size_t part_item = above != nullptr ? joint.upper : joint.lower;
    const StackItem& line = stay_.stack[above != nullptr ? joint.lower : joint.upper];
    const LineMaterial& rope = rig_[line.material.value_or(stay_.material)];
    if (rope.kind != LineMaterial::Kind::rope)
      return;
    Edge edge{"the edge of " + rig_[stay_.stack[part_item].part].name, &rope, std::nullopt,
              stay_.stack[part_item].place, std::nullopt};
    if (const EndDimension* radius = seat->find("edge-radius")) {
      edge.radius = radius->length.value;
      edge.stated = radius->length.provenance.place;
    }
    look_at(edge);
  }

private:
  void look_at(const Edge& edge) {
    if (!edge.radius) {
      report_.not_checked("edge-radius of " + edge.what + " is not stated");
      return;
    }
    const Length least = edge.rope->diameter.value * rig_.limits.value(Limit::edge_radius).value_or(0.0);
    const std::string words = edge.what + " has a radius of " + length_text(*edge.radius) +
                              " under rope of " + length_text(edge.rope->diameter.value);
    if (*edge.radius > least - threshold::negligible) {
      report_.pass(words);
      return;
    }
    auto finding =
        diagnose("edge-sharp", {{"stay", name_}, {"words", words}, {"least", length_text(least)}})
            .at(edge.at, "its rope bears on it")
            .about(name_);
    if (edge.stated)
      finding = std::move(finding).and_at(*edge.stated, "the radius");
    find_once(report_, std::move(finding));
  }

  const Rig& rig_;
  const Stay& stay_;
  const std::string& name_;
  StayReport& report_;
};

} // namespace

void check_edge_sharp(const Rig& rig, const Derived& derived, CheckReport& report) {
  const SpreaderTips tips(rig);
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  Edges edges(rig, stay, name, of_stay);
                  const LineOverTips line = line_over_tips(rig, stay);
                  for (const Spreader* spreader : tips.under(stay))
                    if (line.not_known)
                      of_stay.not_checked("which of its lines goes over " + base_name(*spreader) +
                                          " is not stated");
                    else if (line.rope != nullptr)
                      edges.tip(*spreader, *line.rope);
                  for (const Joint& joint : derived_stay.joints)
                    edges.seat(joint);
                });
}

} // namespace sheerpole
