#pragma once

#include "calculate/derived.hpp"
#include "diagnostics/check_result.hpp"
#include "diagnostics/diagnostic.hpp"
#include "limits/limit.hpp"
#include "model/piece_state.hpp"
#include "source/photograph.hpp"
#include "source/source_set.hpp"

#include <cstddef>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace sheerpole {

/// Why a number may not be cut to yet.
struct DraftReason {
  std::string subject; ///< piece or stay: `cap-shroud.port`
  std::string reason;  ///< "contraction of splice demo-eye is assumed"
  std::string mend;    ///< what to do about it; may be empty
};

/// The only thing that a back end sees. It exists only when no error stands.
class CheckedRig {
public:
  /// Empty when `findings` holds an error. `rig` and `derived` are not null and no longer changed by
  /// anyone; no results: no check was run.
  static std::optional<CheckedRig>
  make(std::shared_ptr<const SourceSet> sources, std::shared_ptr<const Rig> rig,
       std::shared_ptr<const Derived> derived, std::vector<Diagnostic> findings,
       std::shared_ptr<const CheckResults> results = {}, std::vector<LimitUse> limit_uses = {},
       std::shared_ptr<const std::vector<Photograph>> photographs = {});

  const SourceSet& sources() const { return *sources_; }
  const Rig& rig() const { return *rig_; }
  const Derived& derived() const { return *derived_; }
  const std::vector<Diagnostic>& findings() const { return findings_; }

  /// Pictures that the inspection log names and that could be read, in the order of the files.
  const std::vector<Photograph>& photographs() const { return *photographs_; }

  /// What every check came to about every thing, check by check.
  const std::vector<CheckResult>& results() const { return results_->all; }

  /// Which check goes by which threshold, in the order of the thresholds.
  const std::vector<LimitUse>& limit_uses() const { return limit_uses_; }

  /// The first eight signs of the SHA-256 of the rig: of its files, one behind the other in the order in
  /// which they are read, and of what the command line sets. What `sha256sum` says of the file of a rig
  /// that uses no other. Worked out when it is first asked for, since a check has no paper to put it on;
  /// may be asked for by several threads.
  const std::string& digest() const;

  /// Empty: nothing here is a draft.
  const std::vector<DraftReason>& draft_reasons() const { return draft_reasons_; }
  /// The reasons that concern one piece.
  std::vector<DraftReason> draft_reasons(const Piece& piece) const;
  /// The same with each length as `length_words` writes it, for a paper that has one unit.
  std::vector<DraftReason> draft_reasons(const Piece& piece,
                                         const std::function<std::string(Length)>& length_words) const;

  /// Nothing is cut to it yet though it is no DRAFT: it was measured once, or another measurement gives
  /// something else, and the files do not say that once will do (`second-measure: off`).
  bool measure_again(const Piece& piece) const;
  /// What keeps the piece from the knife: why it is a DRAFT, else why it is to be measured again. Where it
  /// is not empty no paper shows the cut as a number.
  std::vector<DraftReason> held_by(const Piece& piece) const;

  /// How far the piece is from the knife. A piece that nobody has measured is `not_measured` whatever else
  /// it lacks. Where it may be cut from the drawing it stays `not_measured` as well, and is `not_yet` while
  /// something else is missing; a line with a length of its own is chosen and
  /// not measured, so it is ready when nothing of it is a draft.
  /// What two measurements give differently is `measured_once`, as if the second had not been made.
  PieceState state(const Piece& piece) const;
  /// Why the piece may be cut though nobody has measured it; nothing where it was measured or may not be.
  std::optional<std::string> from_drawing(const Piece& piece) const;

private:
  CheckedRig() = default;
  struct Digest {
    std::once_flag once;
    std::string signs;
  };

  /// Those of all pieces of the stay of a piece.
  std::span<const DraftReason> reasons_of_stay(const Piece& piece) const;

  std::shared_ptr<const SourceSet> sources_;
  std::shared_ptr<const Rig> rig_;
  std::shared_ptr<const Derived> derived_;
  std::vector<Diagnostic> findings_;
  std::shared_ptr<const CheckResults> results_;
  std::vector<LimitUse> limit_uses_;
  std::shared_ptr<const std::vector<Photograph>> photographs_;
  std::vector<DraftReason> draft_reasons_; ///< in the order of the stays
  std::vector<std::size_t> first_of_stay_; ///< where those of each stay begin, and where the last ones end
  std::shared_ptr<Digest> digest_;         ///< of this rig and its copies
};

} // namespace sheerpole
