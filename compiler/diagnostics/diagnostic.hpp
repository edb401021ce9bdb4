#pragma once

#include "diagnostics/severity.hpp"
#include "source/span.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace sheerpole {

/// A place in a file and what is to be seen there.
struct Label {
  Span span;
  std::string text;
};

/// One suggested change of the text: replace the bytes of `span` by `replacement`.
///
/// An edit is certain when all of this holds: the text has one reading only, the edit writes that very
/// reading in the spelling that is taken, and no number, unit or name comes out of it that did not stand
/// there. A typographic quote or a `;` at the end of a line is of that sort. Everything from which a cut
/// could come out otherwise is a guess, however likely: a unit that is missing, a name that is near
/// another, where a brace belongs. `sheerpole mend` makes the certain edits without asking.
struct Edit {
  Span span;
  std::string replacement;
  std::string title; ///< what the change does, in words: "write 12 mm"
  bool certain = false;
};

/// What a file says of a rule of its own, in the place of a catalogue entry.
struct OwnRule {
  std::string title; ///< in a few words
  std::string help;  ///< why, and what to do
  Severity severity = Severity::note;
};

/// One finding about a rig file or the rig that it describes. Its words come from the catalogue, or from
/// the file when it is by a rule of its own.
struct Diagnostic {
  std::string slug;
  Severity severity = Severity::error;
  std::string message;          ///< what was seen, one sentence
  std::string why;              ///< why it matters on the boat; may be empty
  std::string subject;          ///< what it is about: "cap-shroud.port"; may be empty
  std::string waived = {};      ///< until when, by whom and why it is left standing; empty when it is not
  std::optional<Label> primary; ///< empty only when no file could be read
  std::vector<Label> others;    ///< the second place where two disagree
  std::optional<Edit> edit;
  std::optional<OwnRule> own_rule = {}; ///< of a finding by a rule of the file's own
};

/// One placeholder of a catalogue text and its value: {"unit", "mmm"} fills {unit}.
struct Argument {
  std::string_view name;
  std::string value;
};

/// The words with which the check of this finding passes, and those for what it could not look at, as they
/// stand beside the finding. A slug or text that is not there, or a placeholder without an argument, is a
/// fault of the compiler.
std::string passed(std::string_view slug, const std::vector<Argument>& arguments = {});
std::string not_seen(std::string_view slug, const std::vector<Argument>& arguments = {});

/// Builds a finding from its catalogue entry. A slug that is not in the catalogue, or a placeholder without
/// an argument, is a fault of the compiler.
class DiagnosticBuilder {
public:
  DiagnosticBuilder(std::string_view slug, std::vector<Argument> arguments);
  // By value, so that `builder = std::move(builder).at(place)` is no move onto itself.
  DiagnosticBuilder at(Span span, std::string label = {}) &&;
  DiagnosticBuilder and_at(Span span, std::string label) &&;
  DiagnosticBuilder about(std::string subject) &&;
  /// An edit that is offered as a guess.
  DiagnosticBuilder edit(Span span, std::string replacement, std::string title) &&;
  /// An edit that may be made without asking; see Edit for what that takes.
  DiagnosticBuilder certain_edit(Span span, std::string replacement, std::string title) &&;
  Diagnostic build() &&;

private:
  Diagnostic diagnostic_;
};

inline DiagnosticBuilder diagnose(std::string_view slug, std::vector<Argument> arguments = {}) {
  return DiagnosticBuilder(slug, std::move(arguments));
}

} // namespace sheerpole
