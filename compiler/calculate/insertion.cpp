#include "calculate/insertion.hpp"

namespace sheerpole {

EndUse insertion(const LineEnd& end) {
  EndUse use;
  if (end.bare())
    return use;
  use.end.part = end.part->name;
  use.end.title = end.part->title;
  const End* socket = end.of_type("wire-socket");
  const EndDimension* depth = socket == nullptr ? nullptr : socket->find("inserted");
  if (depth == nullptr) {
    use.missing.push_back({"insertion depth of " + end.part->name,
                           "state `" + std::string(end.where == Where::aloft ? "lower" : "upper") +
                               ": wire-socket (inserted: … mm)` in " + end.part->name +
                               ", from its maker or with a depth gauge",
                           socket != nullptr && socket->place ? *socket->place : end.part->place});
    return use;
  }
  use.laid.inserted = depth->length.value;
  use.terms.push_back(
      {"inserted " + std::string(name_of(end.where)), depth->length.value, "", depth->length.provenance});
  return use;
}

} // namespace sheerpole
