#include "service/declarations.hpp"

namespace sheerpole::service {

namespace {

std::string sided(const Name& name, const Name& side) {
  return name.text + (side.missing() ? "" : "." + side.text);
}

WrittenDeclaration written(const SourceText& text, const Declaration& declaration) {
  WrittenDeclaration result{declaration.kind.text,
                            sided(declaration.name, declaration.side),
                            declaration.title ? declaration.title->text : "",
                            sided(declaration.of, declaration.of_side),
                            declaration.on.text,
                            declaration.span,
                            declaration.block.span};
  for (const Entry& entry : declaration.block.entries) {
    if (const auto* inner = std::get_if<Declaration>(&entry))
      result.inside.push_back(written(text, *inner));
    else if (const auto* property = std::get_if<Property>(&entry))
      result.properties.push_back({sided(property->name, property->side),
                                   property->title ? property->title->text : "",
                                   std::string(text.text(property->value.span)), property->value.span});
    else if (const auto* item = std::get_if<Item>(&entry)) {
      const Span behind{item->span.source, item->name.span.end, item->span.end};
      result.properties.push_back({item->name.text, "", std::string(text.text(behind)), item->span});
    }
  }
  return result;
}

} // namespace

std::vector<WrittenDeclaration> declarations(const OpenBoat& boat, std::string_view kind) {
  std::vector<WrittenDeclaration> result;
  for (const auto& tree : boat.compiled.trees)
    for (const Statement& statement : tree->statements)
      if (const auto* declaration = std::get_if<Declaration>(&statement);
          declaration != nullptr && (kind.empty() || declaration->kind.text == kind))
        result.push_back(written(boat.text(tree->source), *declaration));
  return result;
}

} // namespace sheerpole::service
