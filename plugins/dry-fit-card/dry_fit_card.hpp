#pragma once

#include "backend/card/card_piece.hpp"
#include "backend/page/paper_files.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerpole {

/// The adjusters of a stay in one position, and the line that just hangs with them so.
struct FitRow {
  std::string position;  ///< "as set", "closed", "open"
  std::string adjusters; ///< "320 mm, 11.8 turns in"; of several each with its name
  std::optional<CardLength>
      of_bearings; ///< bearing to bearing of the line that is hung; nothing: not known
};

/// What the dry fit of one stay is held against. Points into the checked rig.
struct StayFit {
  const Rig* rig = nullptr;
  const DerivedStay* of_stay = nullptr;
  const Stay* stay = nullptr;
  std::vector<CardPiece> pieces;      ///< from aloft to deck
  std::size_t free_piece = 0;         ///< the one whose length follows from the pins
  std::vector<TakeUp> adjusters = {}; ///< as they stand when it hangs: adjusters_as_hung()
  std::vector<FitRow> rows = {};      ///< of the free piece; one row without an adjuster
  CardLength to_tighten;              ///< of all adjusters together, as printed
  CardLength to_slacken;
  std::vector<DraftReason> draft_reasons;

  const CardPiece& free() const { return pieces[free_piece]; }
  /// There are no marks to seize its eyes at.
  bool draft() const { return !draft_reasons.empty(); }
  /// It was hoisted, and how it hung is stated.
  bool hung() const { return of_stay->hoisted_fit && of_stay->hoisted_fit->latest() != nullptr; }
};

/// The stays in the order of the rig; those without a piece of line have no card.
std::vector<StayFit> stay_fits(const CheckedRig& checked);
std::vector<StayFit> stay_fits(const CheckedRig&&) = delete; ///< they point into it

/// The card of one stay: one page, more only when its stack is longer than a page.
std::vector<Drawing> fit_pages(const StayFit& fit, const std::string& boat, PaperSize size);

/// The card of the hoisted dry fit of one rope stay, eyes seized and nothing opened: how high the lower
/// bearing should hang above the pin at the deck, what to do when it does not, and which slip is likely.
/// One page, more only for a stay of many toggles. Empty for wire, whose terminals cannot be hoisted before
/// they are pressed.
std::vector<Drawing> hoisted_pages(const StayFit& fit, const std::string& boat, PaperSize size);

/// One page for each stay, to be taken aloft: what to hang, where the bearings should come, what to look at
/// and write down before anything is cut; for rope another for the hoisted dry fit (hoisted_pages()).
struct DryFitCard final : PagesBackend {
  DryFitCard();
  std::vector<Drawing> pages(const BackendRequest& request, const std::string& boat) const override;
};

/// The card of the hoisted dry fit of one rope stay, eyes seized and nothing opened: how high the lower
/// bearing should hang above the pin at the deck, what to do when it does not, and which slip is likely.
/// One page, more only for a stay of many toggles. Empty for wire, whose terminals cannot be hoisted before
/// they are pressed.
std::vector<Drawing> hoisted_pages(const StayFit& fit, const std::string& boat, PaperSize size);

} // namespace sheerpole
