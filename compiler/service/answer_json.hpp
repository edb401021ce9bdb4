#pragma once

#include "backend/json/json.hpp"
#include "service/complete.hpp"
#include "service/declarations.hpp"
#include "service/findings.hpp"
#include "service/numbers.hpp"
#include "service/outline.hpp"
#include "service/papers.hpp"
#include "service/seal.hpp"
#include "service/trial.hpp"
#include "service/turns.hpp"

#include <vector>

// What the service found, as JSON. docs/service/answer.schema.json says what each looks like.
namespace sheerpole::service {

/// `{file, begin, end}`, each place in every way of counting: `{line, character, byte, unit}`.
Json place_json(const OpenBoat& boat, Span span);
Json edits_json(const OpenBoat& boat, const std::vector<TextEdit>& edits);
Json findings_json(const OpenBoat& boat);
Json proposals_json(const OpenBoat& boat, const Proposals& proposals);
Json outline_json(const OpenBoat& boat, const std::vector<OutlineItem>& items);
Json declarations_json(const OpenBoat& boat, const std::vector<WrittenDeclaration>& all);
Json actions_json(const OpenBoat& boat, const std::vector<Action>& actions);
Json numbers_json(const OpenBoat& boat, const std::vector<NumberEntry>& numbers);
/// Stay by stay: lengths, pieces with how far they are from the knife, adjusters.
Json stays_json(const CheckedRig& checked);
Json papers_json(const std::vector<BackendPapers>& papers, bool with_bytes);
Json trial_json(const Trial& trial);
Json seal_check_json(const SealCheck& check);
/// The rig with turns that nobody has made; `trial` is null when it does not stand without them.
Json turns_json(const OpenBoat& boat, const TunedRig& tuned, const TurnTrial* trial);
/// The kinds of rig of which a first file can be made, with their words and the numbers that they ask for.
Json starts_json();

} // namespace sheerpole::service
