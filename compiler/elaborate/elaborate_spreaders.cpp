#include "elaborate/elaboration.hpp"

namespace sheerpole {

void elaborate_spreaders(Elaboration& elaboration) {
  for (const ResolvedDeclaration& declaration : elaboration.tree.declarations) {
    if (declaration.kind->category != Category::spreader || !elaboration.has_required(declaration))
      continue;
    const Expression& root = declaration.find("root")->syntax->value.expression();
    const Expression& tip = declaration.find("tip")->syntax->value.expression();
    const std::string name = elaboration.name_of(declaration);
    for (const Side side : sides_of(elaboration, declaration, {Side::port, Side::starboard})) {
      const auto root_id = elaboration.point_on(root, side, name);
      const auto tip_id = elaboration.point_on(tip, side, name);
      if (!root_id || !tip_id)
        continue;
      elaboration.rig.spreaders.push_back(
          {.name = name + "." + std::string(name_of(side)),
           .title = declaration.syntax->title ? declaration.syntax->title->text : "",
           .side = side,
           .root = *root_id,
           .tip = *tip_id,
           .place = elaboration.place_of(declaration)});
    }
  }
}

} // namespace sheerpole
