#include "rules/joint_findings.hpp"

#include "rules/by_side.hpp"

#include <algorithm>

namespace sheerpole {

void report_joint_findings(const Rig& rig, const Derived& derived, std::string_view slug,
                           DiagnosticSink& sink) {
  report_by_side(rig, derived, sink, [&](const DerivedStay& derived_stay, const std::string& name) {
    const Stay& stay = rig[derived_stay.stay];
    std::vector<Diagnostic> found;
    for (const Joint& joint : derived_stay.joints)
      for (const JointCheck& check : joint.checks) {
        if (check.slug != slug || check.result != JointResult::finding)
          continue;
        Diagnostic finding = diagnose(slug, {{"stay", name}, {"joint", joint.name}, {"words", check.words}})
                                 .at(stay.stack[joint.lower].place, "this one")
                                 .and_at(stay.stack[joint.upper].place, "under this one")
                                 .about(name)
                                 .build();
        const bool said = std::any_of(found.begin(), found.end(), [&](const Diagnostic& earlier) {
          return earlier.message == finding.message;
        });
        if (!said)
          found.push_back(std::move(finding));
      }
    return found;
  });
}

} // namespace sheerpole
