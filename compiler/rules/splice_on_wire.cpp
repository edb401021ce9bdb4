#include "rules/by_side.hpp"
#include "rules/length_checks.hpp"

namespace sheerpole {

namespace {

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

std::optional<Diagnostic> finding_of(const Rig& rig, const Stay& stay, std::size_t item,
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
        .at(entry.place, "a rope's splice")
        .and_at(material.place, "the line is a " + std::string(name_of(material.kind)))
        .about(name)
        .build();
  }
  return std::nullopt;
}

} // namespace

void check_splice_on_wire(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(rig, derived, report,
                [&](const DerivedStay& derived_stay, const std::string& name, StayReport& of_stay) {
                  const Stay& stay = rig[derived_stay.stay];
                  for (std::size_t i = 0; i < stay.stack.size(); ++i)
                    if (auto finding = finding_of(rig, stay, i, name))
                      of_stay.find(std::move(*finding));
                    else if (stay.stack[i].kind == StackItem::Kind::part && stay.stack[i].splice)
                      of_stay.pass(rig[*stay.stack[i].splice].name + " at " + rig[stay.stack[i].part].name +
                                   " is on a rope");
                });
}

} // namespace sheerpole
