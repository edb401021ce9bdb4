#include "plugins/proof-sheet/proof_sheet.hpp"

#include "backend/boat_title.hpp"
#include "backend/page/text_paper.hpp"
#include "plugins/proof-sheet/stay_proof.hpp"

namespace sheerpole {

BackendDescription ProofSheet::describe() const {
  return {.name = "proof-sheet",
          .summary =
              "each length as its sum with reading, person, conditions and source; how well it is known",
          .outputs = {"proof-sheet.txt"},
          .papers = {"proof-sheet.pdf"}};
}

OutputBundle ProofSheet::generate(const BackendRequest& request) const {
  const CheckedRig& checked = request.checked;
  TextPage page;
  const std::string& boat = checked.rig().boat.title;
  page.ends("PROOF SHEET   " + (boat.empty() ? std::string("(boat without a name)") : boat),
            checked.draft_reasons().empty() ? "" : "DRAFT");
  page.rule('=');
  page.blank();
  page.wrapped("",
               "How every length came about, so that it can be checked with a pencil. Each row is rounded "
               "to 0.1 mm; each total is the sum of its rows as printed. Sheerpole works out and reports; "
               "it does not judge a rig.");
  page.blank();
  if (checked.derived().stays.empty())
    page.line("There is nothing to prove: the rig has no stays.");
  for (const DerivedStay& stay : checked.derived().stays)
    print_stay_proof(checked, stay, page);
  OutputBundle bundle;
  bundle.files.push_back({"proof-sheet.txt", page.text()});
  if (request.printed)
    bundle.papers.push_back(text_paper_of_lengths(
        {.file = "proof-sheet.pdf", .name = "Proof sheet", .about = boat_title(checked)}, page.text(),
        request));
  return bundle;
}

} // namespace sheerpole
