#include "rules/by_side.hpp"
#include "rules/length_checks.hpp"

namespace sheerpole {

namespace {

/// The piece by the name that the finding gives its stay: `backstay-leg 1 of 2` for both sides.
std::string name_of(const Piece& piece, const std::string& stay) {
  if (piece.of == 1)
    return stay;
  return stay + " " + std::to_string(piece.number) + " of " + std::to_string(piece.of);
}

std::string all_missing(const Piece& piece) {
  std::string text;
  for (std::size_t i = 0; i < piece.missing.size(); ++i) {
    if (i > 0)
      text += i + 1 == piece.missing.size() ? " and " : ", ";
    text += piece.missing[i].what;
  }
  return text;
}

} // namespace

void check_cut_is_draft(const Rig& rig, const Derived& derived, CheckReport& report) {
  look_at_stays(
      rig, derived, report, [&](const DerivedStay& stay, const std::string& name, StayReport& of_stay) {
        for (const Piece& piece : stay.pieces) {
          const std::string subject = name_of(piece, name);
          if (piece.missing.empty()) {
            of_stay.pass(piece.of == 1
                             ? "its cut has every input"
                             : "piece " + std::to_string(piece.number) + ": its cut has every input");
            continue;
          }
          Diagnostic finding = diagnose("cut-is-draft", {{"piece", subject}, {"what", all_missing(piece)}})
                                   .at(rig[stay.stay].place, "its cut length lacks an input")
                                   .about(subject)
                                   .build();
          for (const MissingInput& input : piece.missing)
            finding.others.push_back({input.place, input.mend});
          of_stay.find(std::move(finding));
        }
      });
}

} // namespace sheerpole
