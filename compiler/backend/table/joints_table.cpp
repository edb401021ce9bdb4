#include "backend/table/rig_tables.hpp"
#include "backend/tenths.hpp"
#include "wording/say.hpp"

namespace sheerpole {

namespace {

std::string_view words(JointResult result) {
  switch (result) {
  case JointResult::pass:
    return "pass";
  case JointResult::finding:
    return "finding";
  case JointResult::not_checked:
    return "not checked";
  }
  return "not checked";
}

} // namespace

Table joints_table(const CheckedRig& checked) {
  Table table{.title = "Joints: what was compared where two things meet",
              .columns = {{"stay"}, {"joint"}, {"compared"}, {"play mm", true}, {"result"}, {"what"}},
              .rows = {},
              .notes = {}};
  const Rig& rig = checked.rig();
  std::size_t pass = 0;
  std::size_t found = 0;
  std::size_t unknown = 0;
  for (const DerivedStay& stay : checked.derived().stays)
    for (const Joint& joint : stay.joints)
      for (const JointCheck& check : joint.checks) {
        (check.result == JointResult::pass      ? pass
         : check.result == JointResult::finding ? found
                                                : unknown) += 1;
        table.rows.push_back({rig[stay.stay].name, say(rig, joint.name),
                              std::string(slug_of(check.finding)),
                              check.play ? format_tenths(Tenths::of(*check.play)) : std::string(),
                              std::string(words(check.result)), say(rig, check.words)});
      }
  table.notes.push_back(std::to_string(pass) + " pass, " + std::to_string(found) + " findings, " +
                        std::to_string(unknown) + " not checked.");
  table.notes.push_back(
      "Not checked: a dimension is not stated, which is no pass. A play below nothing is what is lacking.");
  return table;
}

} // namespace sheerpole
