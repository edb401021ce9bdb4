#pragma once

#include "backend/card/card_unit.hpp"
#include "backend/page/paper_files.hpp"

#include <string>
#include <vector>

namespace sheerpole {

/// One thing to compare when goods come in.
struct GoodsRow {
  std::string what;   ///< "lower end, jaw: gap"
  std::string wanted; ///< as the file states it; empty: not stated, to be written down all the same
};

/// One line or part of the rig with everything to compare.
struct Goods {
  std::string name;
  std::string what; ///< construction or title
  bool line = false;
  bool turns = false; ///< it has a screw
  std::vector<GoodsRow> rows = {};
  std::vector<std::string> notes = {}; ///< what of the amount is not known
};

/// Lines first, then parts, each once for the whole rig, in the order in which the stays meet them. What
/// belongs to the boat is left out, and so is what is all in hand.
std::vector<Goods> goods(const CheckedRig& checked);

/// A dimension as it is measured with callipers: "10.3 mm", `0.406"`. The unit of the cards, but in
/// decimals and not rounded to their step.
std::string gauge_text(const CardUnit& unit, Length length);

/// Everything that comes in for the rig, line by line and part by part, with what is wanted and room for
/// what is found.
std::vector<Drawing> goods_pages(const CheckedRig& checked, const std::string& boat, PaperSize size);

/// What comes in is held against what the rig file asks for, before it is paid for or cut into.
struct ReceivingCard final : PagesBackend {
  ReceivingCard();
  std::vector<Drawing> pages(const BackendRequest& request, const std::string& boat) const override;
};

} // namespace sheerpole
