#include "plugins/cut-list/cut_list.hpp"

#include "backend/page/paper_files.hpp"
#include "backend/paper_words.hpp"
#include "wording/length_words.hpp"
#include "wording/papers/cut_list_words.hpp"
#include "wording/say.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

/// Lengths are compared in the file's own numbers; a billionth of a metre is the noise of their sums.
constexpr double noise_metres = 1e-9;

bool within(Length a, Length b, Length tolerance) {
  const Length difference = a < b ? b - a : a - b;
  return difference.metres() <= tolerance.metres() + noise_metres;
}

bool same_end(const PieceEnd& a, const PieceEnd& b) {
  return a.part == b.part && a.splice == b.splice;
}

bool is_pair(const ListedPiece& a, const ListedPiece& b, Length tolerance) {
  const bool twins = a.stay->base == b.stay->base && a.stay->side != b.stay->side &&
                     a.stay->side != Side::centre && b.stay->side != Side::centre &&
                     a.piece->number == b.piece->number && a.piece->of == b.piece->of;
  return twins && a.piece->material == b.piece->material && a.has_length() && b.has_length() &&
         same_end(a.piece->upper, b.piece->upper) && same_end(a.piece->lower, b.piece->lower) &&
         within(a.piece->body.known(), b.piece->body.known(), tolerance) &&
         within(a.piece->cut.known(), b.piece->cut.known(), tolerance);
}

bool same_row(const Rig& rig, const SumRow& a, const SumRow& b) {
  return a.amount == b.amount && term_name(rig, *a.term) == term_name(rig, *b.term) &&
         say(rig, a.term->how) == say(rig, b.term->how) &&
         source_words(a.term->provenance) == source_words(b.term->provenance);
}

bool same_section(const Rig& rig, const SumSection& a, const SumSection& b) {
  const auto same = [&](const SumRow& one, const SumRow& other) { return same_row(rig, one, other); };
  return a.kind == b.kind && std::equal(a.rows.begin(), a.rows.end(), b.rows.begin(), b.rows.end(), same);
}

bool same_sum(const Rig& rig, const PieceSum& a, const PieceSum& b) {
  return std::equal(
      a.sections.begin(), a.sections.end(), b.sections.begin(), b.sections.end(),
      [&](const SumSection& one, const SumSection& other) { return same_section(rig, one, other); });
}

/// Both print the same worst case and 95 % range.
bool same_range(const ListedPiece& a, const ListedPiece& b) {
  const Uncertainty* first = range_of(a);
  const Uncertainty* second = range_of(b);
  if (first == nullptr || second == nullptr)
    return first == second;
  const auto same = [](Length one, Length other) { return Tenths::of(one) == Tenths::of(other); };
  return same(first->expanded, second->expanded) && same(first->worst_low, second->worst_low) &&
         same(first->worst_high, second->worst_high);
}

} // namespace

bool CutListBlock::draft() const {
  return std::any_of(pieces.begin(), pieces.end(), [](const ListedPiece& piece) { return piece.draft(); });
}

bool CutListBlock::may_be_cut() const {
  return std::all_of(pieces.begin(), pieces.end(),
                     [](const ListedPiece& piece) { return piece.may_be_cut(); });
}

std::vector<CutListBlock> cut_list_blocks(const CheckedRig& checked) {
  const Rig& rig = checked.rig();
  std::vector<CutListBlock> blocks;
  for (const DerivedStay& derived : checked.derived().stays)
    for (const Piece& piece : derived.pieces) {
      ListedPiece listed{&derived,
                         &rig[derived.stay],
                         &piece,
                         piece_sum(rig, derived, piece),
                         checked.draft_reasons(piece),
                         state_line(checked, piece),
                         state_stamp(checked, piece),
                         checked.held_by(piece)};
      CutListBlock* twin = nullptr;
      if (rig.boat.pair_tolerance)
        for (CutListBlock& block : blocks)
          if (block.pieces.size() == 1 &&
              is_pair(block.pieces.front(), listed, rig.boat.pair_tolerance->value))
            twin = &block;
      if (twin == nullptr)
        twin = &blocks.emplace_back();
      else
        twin->same_rows =
            same_sum(rig, twin->pieces.front().sum, listed.sum) && same_range(twin->pieces.front(), listed);
      twin->pieces.push_back(std::move(listed));
    }
  return blocks;
}

std::optional<WholeLinks> links_of(const Rig& rig, const ListedPiece& listed) {
  return listed.has_length() ? whole_links(rig[listed.piece->material], listed.piece->cut.known())
                             : std::nullopt;
}

bool has_own_length(const ListedPiece& listed) {
  int number = 0;
  for (const StackItem& item : listed.stay->stack)
    if (item.kind == StackItem::Kind::line && ++number == listed.piece->number)
      return item.line_length.has_value();
  return false;
}

const Uncertainty* range_of(const ListedPiece& listed) {
  return listed.derived->uncertainty && !has_own_length(listed) ? &*listed.derived->uncertainty : nullptr;
}

std::vector<LineTotal> line_totals(const CheckedRig& checked, const std::vector<CutListBlock>& blocks) {
  std::vector<LineTotal> totals;
  for (const LineMaterial& line : checked.rig().materials) {
    LineTotal total{.line = &line, .length = {}, .not_summed = {}};
    for (const CutListBlock& block : blocks)
      for (const ListedPiece& listed : block.pieces) {
        if (&checked.rig()[listed.piece->material] != &line)
          continue;
        if (listed.has_length()) {
          ++total.pieces;
          total.drafts += listed.draft() ? 1 : 0;
          total.held += listed.may_be_cut() ? 0 : 1;
          total.length += listed.sum.cut();
        } else {
          total.not_summed.push_back(&listed);
        }
      }
    if (total.pieces > 0 || !total.not_summed.empty())
      totals.push_back(std::move(total));
  }
  return totals;
}

BackendDescription CutList::describe() const {
  return {.name = "cut-list",
          .summary = say(CutListPhrase::every_piece_to_cut_with),
          .outputs = {"cut-list.txt", "cut-list.csv", "cut-list.json"},
          .papers = {"cut-list.pdf"}};
}

OutputBundle CutList::generate(const BackendRequest& request) const {
  const std::vector<CutListBlock> blocks = cut_list_blocks(request.checked);
  const std::string text = cut_list_text(request.checked, blocks);
  const std::string identity = identity_words(request.checked);
  OutputBundle bundle;
  bundle.files = {{"cut-list.txt", with_foot(text, say(CutListPhrase::cut_list, identity))},
                  {"cut-list.csv", cut_list_csv(request.checked, blocks)},
                  {"cut-list.json", cut_list_json(request.checked, blocks)}};
  // The first page names what is a draft, and so does each piece that is one: the others may be cut.
  if (request.printed)
    bundle.papers.push_back(text_paper({.file = "cut-list.pdf",
                                        .name = say(CutListPhrase::cut_list_begins),
                                        .boat = boat_title(request.checked),
                                        .about = identity},
                                       text, request.paper));
  return bundle;
}

} // namespace sheerpole
