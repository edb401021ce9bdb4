#include "calculate/contraction.hpp"

#include "calculate/computed_provenance.hpp"
#include "calculate/length_text.hpp"

namespace sheerpole {

namespace {

/// The source class is that of the fraction: the buried length is as stated and only scales it.
Term share_of(const Sourced<double>& share, std::string name, Length whole, double sign, const Term& base) {
  Term term{std::move(name), whole * (sign * share.value),
            percent_text(share.value) + " of " + length_text(whole), share.provenance};
  add_assumptions(term.provenance.assumptions, base.provenance.assumptions);
  return term;
}

} // namespace

std::vector<Term> contraction_terms(const Splice& splice, const Term& bury, const Term* spare_bury,
                                    Where where) {
  const std::string end = " " + std::string(name_of(where));
  std::vector<Term> terms{share_of(*splice.contraction, "contraction" + end, bury.amount, 1.0, bury)};
  Term all = terms.front();
  if (spare_bury != nullptr) {
    terms.push_back(share_of(*splice.contraction, "contraction over the spare bury" + end,
                             spare_bury->amount, 1.0, *spare_bury));
    all.amount += terms.back().amount;
    add_assumptions(all.provenance.assumptions, terms.back().provenance.assumptions);
  }
  if (splice.recovered)
    terms.push_back(share_of(*splice.recovered, "contraction given back" + end, all.amount, -1.0, all));
  return terms;
}

} // namespace sheerpole
