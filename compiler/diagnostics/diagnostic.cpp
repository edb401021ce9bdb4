#include "diagnostics/diagnostic.hpp"

#include "base/internal_error.hpp"
#include "base/translator.hpp"
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

/// What the catalogue says, in the language that is spoken; `text` is the number of the text in its entry.
enum class EntryText : std::uint16_t { message, why, passes, not_checked };
std::string said(const CatalogueEntry& entry, EntryText text, const std::vector<Argument>& arguments) {
  const std::string_view texts[] = {entry.message, entry.why, entry.passes, entry.not_checked};
  const auto number = static_cast<std::uint16_t>(text);
  const Translator* other = spoken_language();
  return fill(other == nullptr ? texts[number] : other->phrase(entry.slug, number, texts[number]),
              arguments);
}

const CatalogueEntry& entry_of(std::string_view slug) {
  const CatalogueEntry* entry = find_entry(slug);
  if (entry == nullptr)
    internal_error("the finding " + std::string(slug) +
                   " is not in the catalogue: compiler/diagnostics/findings");
  return *entry;
}

std::string came_to(std::string_view slug, EntryText text, const std::vector<Argument>& arguments) {
  std::string words = said(entry_of(slug), text, arguments);
  if (words.empty())
    internal_error("the finding " + std::string(slug) + " does not say what its check came to");
  return words;
}

} // namespace

std::string passed(std::string_view slug, const std::vector<Argument>& arguments) {
  return came_to(slug, EntryText::passes, arguments);
}

std::string not_seen(std::string_view slug, const std::vector<Argument>& arguments) {
  return came_to(slug, EntryText::not_checked, arguments);
}

DiagnosticBuilder::DiagnosticBuilder(std::string_view slug, std::vector<Argument> arguments) {
  const CatalogueEntry& entry = entry_of(slug);
  diagnostic_.slug = slug;
  diagnostic_.severity = entry.severity;
  diagnostic_.message = said(entry, EntryText::message, arguments);
  diagnostic_.why = said(entry, EntryText::why, arguments);
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
