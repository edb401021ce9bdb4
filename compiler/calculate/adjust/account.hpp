#pragma once

#include "calculate/adjust/first_fit.hpp"
#include "calculate/adjust/take_up.hpp"
#include "calculate/cut/piece.hpp"
#include "calculate/uncertainty/uncertainty.hpp"
#include "model/rig.hpp"

#include <cstdint>
#include <optional>
#include <vector>

namespace sheerpole {

/// What is said about the account of an adjuster, its take-up and what fits.
enum class AdjusterPhrase : std::uint16_t {
  days,
  one_year,
  years,
  as_written,
  bedding_in,
  cut_off_already,
  bedding_not_stated,
  length_unknown,
  share_of_body,
  creep_in,
  coldest_day,
  warmest_day,
  line_and_path,
  uncertainty_of_length,
  no_bound,
  by_propagation,
  at_first_fit,
  until_set,
  until_set_not_known,
  first_fit_no_room,
  first_fit_mend,
  each,
  no_adjuster,
  came_out_longer,
  came_out_shorter,
  on_record
};
constexpr PhraseSubject subject_of(AdjusterPhrase) {
  return PhraseSubject::adjuster;
}

/// One draw on the account of a stay's adjusters.
struct AccountEntry {
  Remark name;                 ///< "bedding-in", "creep in 1 year", "coldest day, -10 degC"
  Length tightens = {};        ///< the adjuster has to take up so much
  Length slackens = {};        ///< or has to give out so much
  bool dated = false;          ///< creep: of several dates one counts
  bool of_temperature = false; ///< of several the worse counts
  bool of_record = false;      ///< of the piece as it came out; counts at the first fit too
  bool until_set = false;      ///< counts at the first fit alone: the splices give it back as they set
  Remark how = {};
  Remark not_checked = {}; ///< not empty: why it is not known; it counts as nothing
};
/// What is left at a date.
struct AccountLeft {
  Remark after;      ///< "1 year"
  Length to_tighten; ///< less than nothing: the adjuster is not long enough
  Length to_slacken;
  bool complete = true; ///< every entry is known
};

struct Account {
  Length to_tighten; ///< of all adjusters together, as set
  Length to_slacken;
  std::vector<AccountEntry> entries; ///< empty when the stay has no adjuster
  std::vector<AccountLeft> left;     ///< one a date
  /// At the first fit, before splices have set and before anything has bedded in or crept; of a stay that
  /// goes by the rule equals-first-creep.
  std::optional<AccountLeft> at_first_fit = {};
};

/// How a piece that is on record came out.
struct CameOut {
  Length longer; ///< than it was to be; below nothing it is shorter
  Words when;    ///< "made 2026-04-01"
};

/// The account of a stay's adjusters: what they can still take up and give out after bedding-in, creep by
/// date, the coldest and the warmest day and the uncertainty of the length. Dates and temperatures are
/// those of the take-up record; without it one year, -10 degC and +40 degC. All adjusters of the stay count
/// together. What can not be known is listed as not checked and counts as nothing, and the account says so.
/// A piece that came out longer than it was to be has its adjuster set shorter by as much from the first.
/// Source: arithmetic.
Account account(const Rig& rig, const Stay& stay, const std::vector<Piece>& pieces,
                const std::vector<TakeUp>& adjusters, const std::optional<Uncertainty>& uncertainty,
                const std::optional<FirstFit>& first = {}, const std::optional<CameOut>& came_out = {});

} // namespace sheerpole
