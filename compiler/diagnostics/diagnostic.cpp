#include "diagnostics/diagnostic.hpp"

#include "base/internal_error.hpp"
#include "diagnostics/catalogue.hpp"

#include <utility>

namespace sheerpole {

namespace {

std::string fill(std::string_view text, const std::vector<Argument>& arguments) {
  std::string result;
  std::size_t i = 0;
  while (i < text.size()) {
    if (text[i] != '{') {
      result += text[i++];
      continue;
    }
    const std::size_t close = text.find('}', i);
    if (close == std::string_view::npos)
      internal_error("a catalogue text with an open brace");
    const std::string_view name = text.substr(i + 1, close - i - 1);
    bool found = false;
    for (const Argument& argument : arguments) {
      if (argument.name == name) {
        result += argument.value;
        found = true;
        break;
      }
    }
    if (!found)
      internal_error("a catalogue text whose placeholder has no argument");
    i = close + 1;
  }
  return result;
}

const CatalogueEntry& entry_of(std::string_view slug) {
  const CatalogueEntry* entry = find_entry(slug);
  if (entry == nullptr)
    internal_error("the finding " + std::string(slug) +
                   " is not in the catalogue: compiler/diagnostics/findings");
  return *entry;
}

std::string filled(std::string_view slug, std::string_view text, const std::vector<Argument>& arguments) {
  if (text.empty())
    internal_error("the finding " + std::string(slug) + " does not say what its check came to");
  return fill(text, arguments);
}

} // namespace

std::string passed(std::string_view slug, const std::vector<Argument>& arguments) {
  return filled(slug, entry_of(slug).passes, arguments);
}

std::string not_seen(std::string_view slug, const std::vector<Argument>& arguments) {
  return filled(slug, entry_of(slug).not_checked, arguments);
}

DiagnosticBuilder::DiagnosticBuilder(std::string_view slug, std::vector<Argument> arguments) {
  const CatalogueEntry& entry = entry_of(slug);
  diagnostic_.slug = slug;
  diagnostic_.severity = entry.severity;
  diagnostic_.message = fill(entry.message, arguments);
  diagnostic_.why = fill(entry.why, arguments);
}

DiagnosticBuilder DiagnosticBuilder::at(Span span, std::string label) && {
  diagnostic_.primary = Label{span, std::move(label)};
  return std::move(*this);
}

DiagnosticBuilder DiagnosticBuilder::and_at(Span span, std::string label) && {
  diagnostic_.others.push_back({span, std::move(label)});
  return std::move(*this);
}

DiagnosticBuilder DiagnosticBuilder::about(std::string subject) && {
  diagnostic_.subject = std::move(subject);
  return std::move(*this);
}

DiagnosticBuilder DiagnosticBuilder::edit(Span span, std::string replacement, std::string title) && {
  diagnostic_.edit = Edit{span, std::move(replacement), std::move(title), false};
  return std::move(*this);
}

DiagnosticBuilder DiagnosticBuilder::certain_edit(Span span, std::string replacement,
                                                  std::string title) && {
  diagnostic_.edit = Edit{span, std::move(replacement), std::move(title), true};
  return std::move(*this);
}

Diagnostic DiagnosticBuilder::build() && {
  return std::move(diagnostic_);
}

} // namespace sheerpole
