#include "results/checked_rig.hpp"

#include "base/byte_text.hpp"
#include "calculate/adjust/piece_history.hpp"
#include "wording/length_phrases.hpp"
#include "wording/length_words.hpp"
#include "wording/say.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

/// The assumed values that a number rests on. A number that is itself assumed and names nothing goes by its
/// own name.
std::vector<std::string> assumptions_of(const Provenance& provenance, const std::string& name) {
  if (provenance.assumptions.empty() && provenance.source_class == SourceClass::assumed)
    return {name};
  return provenance.assumptions;
}

void add_once(std::vector<DraftReason>& reasons, DraftReason reason) {
  const bool known = std::any_of(reasons.begin(), reasons.end(), [&](const DraftReason& earlier) {
    return earlier.subject == reason.subject && earlier.reason == reason.reason;
  });
  if (!known)
    reasons.push_back(std::move(reason));
}

void add_assumptions(const Rig& rig, const Piece& piece, const Provenance& provenance,
                     const std::string& name, DraftPhrase mend, std::vector<DraftReason>& reasons) {
  for (const std::string& assumption : assumptions_of(provenance, name))
    add_once(reasons, {piece.name, say(rig, {DraftPhrase::is_assumed, {Words{assumption}}}), said(mend)});
}

/// A contraction of heat-set rope can be left to its first creep. What the bury itself rests on has been
/// said before: its term stands in front.
DraftPhrase mend_of(const Rig& rig, const Piece& piece, const Term& term) {
  const bool contraction =
      term.kind == TermKind::contraction || term.kind == TermKind::contraction_of_spare;
  return contraction && rig[piece.material].construction.heat_set ? DraftPhrase::measure_or_rule
                                                                  : DraftPhrase::measure_it;
}

/// Whether the length of the piece follows from the pins, and is not one of its own.
bool hangs_on_pins(const Rig& rig, const Piece& piece) {
  const Stay& stay = rig[piece.stay];
  const std::vector<std::size_t> lines = lines_of(stay);
  const auto at = static_cast<std::size_t>(piece.number - 1);
  return at >= lines.size() || !stay.stack[lines[at]].line_length;
}

/// Why a piece that was read in place is to be measured again.
DraftReason not_settled(const Measurement& measurement, const Piece& piece) {
  if (measurement.confirmed)
    return {piece.name, said(DraftPhrase::ways_differ), said(DraftPhrase::find_out_which)};
  return {piece.name, said(DraftPhrase::measured_once), said(DraftPhrase::measure_again)};
}

/// What the measuring of its stay leaves open.
void add_measuring(const Rig& rig, const DerivedStay& stay, const Piece& piece,
                   std::vector<DraftReason>& reasons) {
  if (!hangs_on_pins(rig, piece))
    return;
  const Measurement& measurement = stay.measurement;
  if (!measurement.in_place() && !measurement.from_drawing)
    add_once(reasons,
             {piece.name, said(DraftPhrase::nothing_read_in_place), said(DraftPhrase::read_it_in_place)});
  if (stay.readings.contradiction() != nullptr)
    add_once(reasons, {piece.name, said(DraftPhrase::readings_contradict), said(DraftPhrase::say_which)});
  if (measurement.in_place() && !measurement.settled() &&
      rig.limits.second_measure() == SecondMeasure::draft)
    add_once(reasons, not_settled(measurement, piece));
}

constexpr std::size_t signs_of_digest = 8;

std::string digest_of(const SourceSet& sources, const Rig& rig) {
  std::string all;
  for (std::uint32_t i = 0; i < sources.size(); ++i)
    all += sources[SourceId{i}].file_bytes();
  // Lengths restated for a shop are other lengths of the same files.
  const auto shop =
      std::find_if(rig.differences.begin(), rig.differences.end(), [](const Difference& difference) {
        return difference.origin == Difference::Origin::shop;
      });
  if (shop != rig.differences.end())
    all += shop->origin_name;
  // So are those of the boat as she was before a layer.
  if (rig.edition.held)
    all += rig.edition.layer;
  return sha256(all).substr(0, signs_of_digest);
}

using LengthWords = std::function<std::string(Length)>;

/// Everything that keeps a piece from being cut. Lengths as `length_words` writes them; empty: as in any
/// sentence.
std::vector<DraftReason> reasons_of(const Rig& rig, const DerivedStay& stay, const Piece& piece,
                                    const LengthWords& length_words) {
  std::vector<DraftReason> reasons;
  for (const std::string& trial : rig[stay.stay].trials)
    reasons.push_back({piece.name, say(rig, {DraftPhrase::set_on_command_line, {Words{trial}}}),
                       said(DraftPhrase::write_it_down)});
  add_measuring(rig, stay, piece, reasons);
  const auto spoken = [&](const Remark& remark) { return say(rig, remark, length_words); };
  for (const MissingInput& missing : piece.missing)
    add_once(reasons, {piece.name, spoken({DraftPhrase::is_missing, {Remarks{{missing.what}}}}),
                       spoken(missing.mend)});
  for (const MissingInput& blocked : piece.blocked)
    add_once(reasons, {piece.name, spoken(blocked.what), spoken(blocked.mend)});
  if (piece.in_hand && piece.in_hand->too_short())
    add_once(reasons, {piece.name, spoken({DraftPhrase::in_hand_short, {-piece.in_hand->over}}),
                       said(DraftPhrase::take_another_piece)});
  // The body's own terms first: the cut holds the body as one term, with all that it rests on.
  for (const LengthSum* sum : {&piece.body, &piece.cut}) {
    if (sum->unknown)
      add_assumptions(rig, piece, sum->unknown_source, said(DraftPhrase::the_length_x),
                      DraftPhrase::measure_it, reasons);
    for (const Term& term : sum->terms)
      add_assumptions(rig, piece, term.provenance, term_name(rig, term), mend_of(rig, piece, term),
                      reasons);
  }
  return reasons;
}

} // namespace

std::optional<CheckedRig>
CheckedRig::make(std::shared_ptr<const SourceSet> sources, std::shared_ptr<const Rig> rig,
                 std::shared_ptr<const Derived> derived, std::vector<Diagnostic> findings,
                 std::shared_ptr<const CheckResults> results, std::vector<LimitUse> limit_uses,
                 std::shared_ptr<const std::vector<Photograph>> photographs) {
  const auto is_error = [](const Diagnostic& finding) { return finding.severity == Severity::error; };
  if (std::any_of(findings.begin(), findings.end(), is_error))
    return std::nullopt;
  CheckedRig checked;
  checked.sources_ = std::move(sources);
  checked.rig_ = std::move(rig);
  checked.derived_ = std::move(derived);
  checked.findings_ = std::move(findings);
  checked.results_ = results ? std::move(results) : std::make_shared<const CheckResults>();
  checked.limit_uses_ = std::move(limit_uses);
  checked.photographs_ =
      photographs ? std::move(photographs) : std::make_shared<const std::vector<Photograph>>();
  checked.digest_ = std::make_shared<Digest>();
  for (const DerivedStay& stay : checked.derived_->stays) {
    checked.first_of_stay_.push_back(checked.draft_reasons_.size());
    for (const Piece& piece : stay.pieces)
      for (DraftReason& reason : reasons_of(*checked.rig_, stay, piece, {}))
        checked.draft_reasons_.push_back(std::move(reason));
  }
  checked.first_of_stay_.push_back(checked.draft_reasons_.size());
  return checked;
}

const std::string& CheckedRig::digest() const {
  std::call_once(digest_->once, [&] { digest_->signs = digest_of(*sources_, *rig_); });
  return digest_->signs;
}

std::span<const DraftReason> CheckedRig::reasons_of_stay(const Piece& piece) const {
  const std::size_t stay = piece.stay.index();
  const std::size_t first = first_of_stay_[stay];
  return std::span(draft_reasons_).subspan(first, first_of_stay_[stay + 1] - first);
}

std::vector<DraftReason> CheckedRig::draft_reasons(const Piece& piece) const {
  const std::span<const DraftReason> all = reasons_of_stay(piece);
  std::vector<DraftReason> reasons;
  std::copy_if(all.begin(), all.end(), std::back_inserter(reasons),
               [&](const DraftReason& reason) { return reason.subject == piece.name; });
  return reasons;
}

std::vector<DraftReason> CheckedRig::draft_reasons(const Piece& piece,
                                                   const LengthWords& length_words) const {
  return reasons_of(*rig_, derived_->stays[piece.stay.index()], piece, length_words);
}

PieceState CheckedRig::state(const Piece& piece) const {
  if (is_on_record(*rig_, piece))
    return PieceState::on_record;
  const std::span<const DraftReason> all = reasons_of_stay(piece);
  const bool draft = std::any_of(all.begin(), all.end(),
                                 [&](const DraftReason& reason) { return reason.subject == piece.name; });
  if (!hangs_on_pins(*rig_, piece))
    return draft ? PieceState::not_yet : PieceState::ready;
  const Measurement& measurement = derived_->stays[piece.stay.index()].measurement;
  if (!measurement.in_place())
    return measurement.from_drawing && draft ? PieceState::not_yet : PieceState::not_measured;
  if (draft)
    return PieceState::not_yet;
  if (!measurement.settled())
    return PieceState::measured_once;
  return measurement.ways_differ() ? PieceState::ways_differ : PieceState::ready;
}

bool CheckedRig::measure_again(const Piece& piece) const {
  return state(piece) == PieceState::measured_once && rig_->limits.second_measure() != SecondMeasure::off;
}

std::vector<DraftReason> CheckedRig::held_by(const Piece& piece) const {
  std::vector<DraftReason> reasons = draft_reasons(piece);
  if (reasons.empty() && measure_again(piece))
    reasons.push_back(not_settled(derived_->stays[piece.stay.index()].measurement, piece));
  return reasons;
}

std::optional<std::string> CheckedRig::from_drawing(const Piece& piece) const {
  return hangs_on_pins(*rig_, piece) ? derived_->stays[piece.stay.index()].measurement.from_drawing
                                     : std::nullopt;
}

} // namespace sheerpole
