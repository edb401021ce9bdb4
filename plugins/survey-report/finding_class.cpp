#include "plugins/survey-report/finding_class.hpp"

#include <algorithm>

namespace sheerpole {

std::string_view name_of(FindingClass finding_class) {
  switch (finding_class) {
  case FindingClass::now:
    return "Now";
  case FindingClass::before_sailing:
    return "Before sailing";
  case FindingClass::within_a_year:
    return "Within a year";
  case FindingClass::note:
    break;
  }
  return "To be noted";
}

const std::vector<ClassRow>& class_rows() {
  using enum FindingClass;
  // Our own judgement, no source. Now: what lets go by itself, or was already said to be renewed. Within a
  // year: what is told by the calendar, or comes slowly.
  static const std::vector<ClassRow> rows{{"marked-renew", now},
                                          {"pin-not-secured", now},
                                          {"splice-not-locked", now},
                                          {"thread-engagement-low", now},
                                          {"stud-engaged-short", now},
                                          {"bury-short", now},
                                          {"lashing-weak", now},
                                          {"shared-pin-weak", now},
                                          {"line-old", within_a_year},
                                          {"hardware-old", within_a_year},
                                          {"take-up-low", within_a_year},
                                          {"adjuster-mostly-closed", within_a_year},
                                          {"creep-load-high", within_a_year},
                                          {"metals-differ", within_a_year},
                                          {"measured-wins", note},
                                          {"tape-sags", note},
                                          {"error-not-waived", note},
                                          {"foretriangle-differs", note}};
  return rows;
}

FindingClass class_of(const Diagnostic& finding) {
  if (finding.severity == Severity::note)
    return FindingClass::note;
  const auto& rows = class_rows();
  const auto found =
      std::find_if(rows.begin(), rows.end(), [&](const ClassRow& row) { return row.slug == finding.slug; });
  return found == rows.end() ? FindingClass::before_sailing : found->finding_class;
}

} // namespace sheerpole
