#include "service/findings.hpp"

#include "diagnostics/sink.hpp"
#include "service/mend.hpp"
#include "syntax/tidy.hpp"
#include "wording/service_words.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole::service {

namespace {

bool touch(Span a, Span b) {
  return a.source == b.source && a.begin <= b.end && b.begin <= a.end;
}

} // namespace

std::vector<FileFindings> findings_by_file(const OpenBoat& boat) {
  std::vector<FileFindings> result;
  const SourceSet& sources = *boat.compiled.sources;
  for (std::uint32_t i = 0; i < sources.size(); ++i)
    if (SourceId{i} == SourceId{0} || boat.tree(SourceId{i}) != nullptr)
      result.push_back({sources[SourceId{i}].name(), SourceId{i}, true, {}});
  if (result.empty())
    result.push_back({boat.root, SourceId{0}, false, {}});
  for (const Diagnostic& finding : boat.compiled.findings) {
    FileFindings* of = &result.front();
    for (FileFindings& each : result)
      if (finding.primary && each.source == finding.primary->span.source)
        of = &each;
    of->findings.push_back(&finding);
  }
  return result;
}

std::vector<Action> actions(const OpenBoat& boat, Span span) {
  std::vector<Action> result;
  for (const Diagnostic& finding : boat.compiled.findings) {
    if (!finding.edit)
      continue;
    const bool here =
        (finding.primary && touch(finding.primary->span, span)) || touch(finding.edit->span, span);
    const SourceText& text = boat.text(finding.edit->span.source);
    if (here && boat.tree(text.id()) != nullptr)
      result.push_back({finding.edit->title,
                        finding.edit->certain,
                        &finding,
                        {edit_of(text, finding.edit->span, finding.edit->replacement)}});
  }
  return result;
}

std::vector<Action> mend_all(const OpenBoat& boat, FileReader& reader) {
  const bool any =
      std::any_of(boat.compiled.findings.begin(), boat.compiled.findings.end(),
                  [](const Diagnostic& finding) { return finding.edit && finding.edit->certain; });
  if (!any)
    return {};
  const Mending mending = mend(boat.root, reader, [](const std::string&) { return true; });
  Action action{mend_all_that_is_certain(), true, nullptr, {}};
  for (const MendedFile& file : mending.files)
    if (const auto source = boat.source(file.name))
      action.edits.push_back(difference(file.name, boat.text(*source).file_bytes(), file.bytes));
  if (action.edits.empty())
    return {};
  return {std::move(action)};
}

std::optional<std::vector<TextEdit>> format(const SourceText& text) {
  DiagnosticSink not_said;
  const std::optional<std::string> tidied = tidy(text, not_said);
  if (!tidied)
    return std::nullopt;
  if (*tidied == text.bytes())
    return std::vector<TextEdit>{};
  const std::string mark = text.marked() ? text.file_bytes().substr(0, bytes_of_mark(text)) : "";
  return std::vector{difference(text.name(), text.file_bytes(), mark + *tidied)};
}

} // namespace sheerpole::service
