#include "calculate/bench/hoisted_fit.hpp"

#include "calculate/facts.hpp"
#include "calculate/length/body.hpp"
#include "model/fact_name.hpp"
#include "model/kind_words.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerpole {

namespace {

constexpr Length noise_of_height = Length::millimetres(0.001);
constexpr Length foot = Length::millimetres(304.8);

/// Of a slip that explains a difference what may be left. Choice of the project, no source: it is that of
/// the slips of readings.
constexpr Length unexplained = Length::millimetres(3.0);

/// Works out one stay.
class Hang {
public:
  Hang(const Rig& rig, StayId id, const std::vector<Piece>& pieces, const std::vector<TakeUp>& adjusters)
      : rig_(rig), id_(id), stay_(rig[id]), pieces_(pieces) {
    for (const TakeUp& adjuster : adjusters) {
      to_tighten_ += adjuster.to_tighten * stay_.stack[adjuster.item].count;
      to_slacken_ += adjuster.to_slacken * stay_.stack[adjuster.item].count;
    }
  }

  HoistedFit work_out() {
    fit_.gap = fact_length(stay_.particulars, fact_names.hoist_gap);
    fit_.right = rig_.limits.length(Limit::hang_apart).value_or(Length{});
    if (fit_.gap && fit_.gap->tolerance)
      fit_.right += *fit_.gap->tolerance;
    add_terms();
    add_bands();
    add_slips();
    if (fit_.without_gap)
      add_found();
    // What is recorded has a gap of its own.
    if (fit_.without_gap && fit_.gap && fit_.gap->value > *fit_.without_gap) {
      fit_.not_known = {HangPhrase::gap_too_long, {fit_.gap->value, *fit_.without_gap}};
      fit_.without_gap.reset();
    }
    return std::move(fit_);
  }

private:
  /// Hardware below the lowest line, splices and stretch of every line.
  void add_terms() {
    std::size_t last_line = 0;
    for (std::size_t i = 0; i < stay_.stack.size(); ++i)
      if (stay_.stack[i].kind == StackItem::Kind::line)
        last_line = i;
    for (std::size_t i = last_line + 1; i < stay_.stack.size(); ++i) {
      const StackItem& item = stay_.stack[i];
      const auto taken = taken_length(rig_, item);
      if (taken)
        hardware_ += *taken;
      else if (rig_[item.part].role != Part::Role::boat_fitting)
        fit_.not_known = {HangPhrase::hardware_not_known, {item.part}};
    }
    Length stretch;
    for (const Piece& piece : pieces_) {
      if (!piece.bench.dry_fit && fit_.not_known.empty())
        fit_.not_known = {HangPhrase::piece_not_known, {Words{piece.name}}};
      for (const Term& term : piece.cut.terms) {
        if (term.of_standing_part())
          stretch += term.amount;
        if (term.of_contraction())
          shrinks_ += term.amount;
      }
    }
    fit_.terms.push_back({HangPhrase::hardware_below, hardware_});
    if (fit_.gap)
      fit_.terms.push_back({fit_.gap->value < Length{} ? HangPhrase::gap_above_pin : HangPhrase::less_gap,
                            -fit_.gap->value});
    if (is_rope())
      fit_.terms.push_back({HangPhrase::still_to_shrink, -shrinks_});
    if (magnitude(stretch) > noise_of_height)
      fit_.terms.push_back({HangPhrase::stretch_to_come, -stretch});
    if (fit_.not_known.empty())
      fit_.without_gap = hardware_ - shrinks_ - stretch;
  }

  bool is_rope() const {
    return std::any_of(pieces_.begin(), pieces_.end(), [&](const Piece& piece) {
      return rig_[piece.material].kind == LineMaterial::Kind::rope;
    });
  }
  bool is_toggle(const StackItem& item) const {
    return item.kind == StackItem::Kind::part && rig_[item.part].kind == PartKind::toggle;
  }
  /// The toggles of the stack, from the deck up: the order in which they come out. Where the stack says of
  /// some that they may be taken out, the others may not.
  std::vector<Length> toggles() const {
    const bool said = std::any_of(stay_.stack.begin(), stay_.stack.end(),
                                  [&](const StackItem& item) { return is_toggle(item) && item.removable; });
    std::vector<Length> result;
    for (std::size_t i = stay_.stack.size(); i-- > 0;) {
      const StackItem& item = stay_.stack[i];
      if (!is_toggle(item) || (said && !item.removable))
        continue;
      if (const auto& length = rig_[item.part].length)
        result.insert(result.end(), static_cast<std::size_t>(std::max(item.count, 0)), length->value);
    }
    return result;
  }

  void add_bands() {
    const std::vector<Length> out = toggles();
    Length high = std::max(fit_.right, to_slacken_);
    const auto add = [&](std::optional<Length> from, std::optional<Length> to, HangMend mend,
                         int count = 0) {
      fit_.bands.push_back({from, to, mend, count});
    };
    if (!out.empty()) {
      const Length more = *std::max_element(out.begin(), out.end());
      add(high + more, std::nullopt, HangMend::lay_out_longer);
      add(high, high + more, HangMend::toggle_more);
    } else {
      add(high, std::nullopt, HangMend::lay_out_longer);
    }
    if (to_slacken_ > fit_.right)
      add(fit_.right, to_slacken_, HangMend::give_out);
    add(-fit_.right, fit_.right, HangMend::right);
    if (to_tighten_ > fit_.right)
      add(-to_tighten_, -fit_.right, HangMend::take_up);
    Length low = -std::max(fit_.right, to_tighten_);
    for (std::size_t i = 0; i < out.size(); ++i) {
      add(low - out[i], low, HangMend::toggles_out, static_cast<int>(i + 1));
      low -= out[i];
    }
    add(std::nullopt, low, HangMend::lay_out_shorter);
  }

  void slip(Length off, Remark words) {
    off = magnitude(off);
    if (off <= fit_.right + noise_of_height)
      return; // cannot be told from hanging right
    const bool known = std::any_of(fit_.slips.begin(), fit_.slips.end(), [&](const HangSlip& one) {
      return one.words == words && magnitude(one.off - off) < noise_of_height;
    });
    if (!known)
      fit_.slips.push_back({off, std::move(words)});
  }

  void add_slips() {
    bool inches = fit_.gap && in_inches(fit_.gap->provenance.written);
    for (const StackItem& item : stay_.stack) {
      if (item.kind != StackItem::Kind::part)
        continue;
      const auto& length = rig_[item.part].length;
      if (rig_[item.part].role == Part::Role::fixed && length) {
        slip(length->value, {HangPhrase::part_slip, {item.part}});
        inches = inches || in_inches(length->provenance.written);
      }
    }
    if (fit_.gap)
      slip(fit_.gap->value, HangPhrase::gap_slip);
    for (const Reading& reading : stay_.readings)
      for (const auto* offset : {&reading.offset, &reading.hoist_offset})
        if (*offset)
          slip((*offset)->value, HangPhrase::offset_slip);
    for (const Piece& piece : pieces_)
      for (const Term& term : piece.cut.terms) {
        if (term.kind == TermKind::eye_allowance)
          slip(term.amount, HangPhrase::eye_slip);
        if (term.kind == TermKind::contraction)
          slip(term.amount, HangPhrase::contraction_slip);
      }
    slip(shrinks_, HangPhrase::contractions_slip);
    slip(hardware_, HangPhrase::hardware_slip);
    if (inches) {
      slip(hardware_ * (1.4 / 25.4), HangPhrase::inch_as_24);
      slip(hardware_ * (0.4 / 25.4), HangPhrase::inch_as_25);
      slip(foot, HangPhrase::foot_slip);
    } else {
      slip(Length::millimetres(100.0), HangPhrase::decimetre_slip);
      slip(Length::metres(1.0), HangPhrase::metre_slip);
    }
    std::stable_sort(fit_.slips.begin(), fit_.slips.end(),
                     [](const HangSlip& a, const HangSlip& b) { return a.off < b.off; });
  }

  static bool in_inches(const std::string& written) {
    return written.find("in") != std::string::npos || written.find("ft") != std::string::npos ||
           written.find('"') != std::string::npos || written.find('\'') != std::string::npos;
  }

  void add_found() {
    for (const Record& record : rig_.records) {
      if (record.kind != RecordKind::dry_fit ||
          std::find(record.stays.begin(), record.stays.end(), id_) == record.stays.end())
        continue;
      const auto hung = fact_length(record.facts, fact_names.hung_at);
      auto gap = fact_length(record.facts, fact_names.hoist_gap);
      if (!gap)
        gap = fit_.gap;
      if (!hung || !gap)
        continue; // the check says that the gap is not stated
      FoundHang found;
      found.date = fact_text(record.facts, fact_names.date);
      found.by = fact_text(record.facts, fact_names.by);
      found.place = record.place;
      found.hung = hung->value;
      found.should_hang = *fit_.without_gap - gap->value;
      found.high = found.hung - found.should_hang;
      found.band = band_of(found.high);
      found.slips = slips_of(found);
      fit_.found.push_back(std::move(found));
    }
    std::stable_sort(fit_.found.begin(), fit_.found.end(),
                     [](const FoundHang& a, const FoundHang& b) { return a.date < b.date; });
  }

  /// The band that holds it; where two meet the one nearer to right.
  HangBand band_of(Length high) const {
    const HangBand* found = nullptr;
    for (const HangBand& band : fit_.bands) {
      if ((band.from && high < *band.from - noise_of_height) ||
          (band.to && high > *band.to + noise_of_height))
        continue;
      const auto from_right = [](const HangBand& one) {
        return std::abs(static_cast<int>(one.mend) - static_cast<int>(HangMend::right)) * 100 + one.toggles;
      };
      if (found == nullptr || from_right(band) < from_right(*found))
        found = &band;
    }
    return *found; // they leave no gap
  }

  std::vector<HangSlip> slips_of(const FoundHang& found) const {
    if (found.band.mend == HangMend::right)
      return {};
    const Length off = magnitude(found.high);
    std::vector<HangSlip> near;
    for (const HangSlip& slip : fit_.slips)
      if (magnitude(slip.off - off) <= std::max(unexplained, fit_.right))
        near.push_back(slip);
    std::stable_sort(near.begin(), near.end(), [&](const HangSlip& a, const HangSlip& b) {
      return magnitude(a.off - off) < magnitude(b.off - off);
    });
    if (near.size() > 2)
      near.resize(2);
    return near;
  }

  const Rig& rig_;
  StayId id_;
  const Stay& stay_;
  const std::vector<Piece>& pieces_;
  Length to_tighten_;
  Length to_slacken_;
  Length hardware_;
  Length shrinks_;
  HoistedFit fit_;
};

} // namespace

std::optional<HoistedFit> hoisted_fit(const Rig& rig, StayId stay, const std::vector<Piece>& pieces,
                                      const std::vector<TakeUp>& adjusters) {
  if (pieces.empty())
    return std::nullopt;
  return Hang(rig, stay, pieces, adjusters).work_out();
}

Remark words_of(const HangBand& band) {
  switch (band.mend) {
  case HangMend::lay_out_longer:
    return HangPhrase::lay_out_longer;
  case HangMend::toggle_more:
    return HangPhrase::one_toggle_more;
  case HangMend::give_out:
    return HangPhrase::screw_gives_out;
  case HangMend::right:
    return HangPhrase::hangs_right;
  case HangMend::take_up:
    return HangPhrase::screw_takes_up;
  case HangMend::toggles_out:
    return band.toggles == 1 ? Remark(HangPhrase::one_toggle_out)
                             : Remark(HangPhrase::toggles_out, {Count{band.toggles}});
  case HangMend::lay_out_shorter:
    return HangPhrase::lay_out_shorter;
  }
  return {};
}

void block_by_dry_fit(const Rig& rig, StayId stay, const HoistedFit& fit, std::vector<Piece>& pieces) {
  const FoundHang* found = fit.latest();
  if (found == nullptr || found->releases())
    return;
  const std::vector<std::size_t> lines = lines_of(rig[stay]);
  for (std::size_t i = 0; i < pieces.size() && i < lines.size(); ++i)
    if (!rig[stay].stack[lines[i]].line_length)
      pieces[i].blocked.push_back({{found->high > Length{} ? HangPhrase::hung_high : HangPhrase::hung_low,
                                    {found->hung, found->should_hang, magnitude(found->high)}},
                                   words_of(found->band),
                                   found->place});
}

} // namespace sheerpole
