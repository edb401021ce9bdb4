#include "names/lay_over.hpp"

#include <algorithm>

namespace sheerpole {

namespace {

bool has_block(const ResolvedDeclaration& declaration, Category category) {
  return std::any_of(declaration.blocks.begin(), declaration.blocks.end(),
                     [&](const ResolvedDeclaration& block) { return block.kind->category == category; });
}

} // namespace

void lay_over(ResolvedDeclaration& base, const ResolvedDeclaration& over) {
  for (const ResolvedProperty& property : over.properties) {
    const auto same = std::find_if(base.properties.begin(), base.properties.end(), [&](const auto& each) {
      return each.row != nullptr && each.row == property.row;
    });
    if (same == base.properties.end())
      base.properties.push_back(property);
    else
      *same = property;
  }
  if (has_block(over, Category::stack))
    std::erase_if(base.blocks, [](const ResolvedDeclaration& block) {
      return block.kind->category == Category::stack || block.kind->category == Category::changes;
    });
  base.blocks.insert(base.blocks.end(), over.blocks.begin(), over.blocks.end());
  base.incomplete = base.incomplete || over.incomplete;
}

} // namespace sheerpole
