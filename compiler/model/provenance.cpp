#include "model/provenance.hpp"

namespace sheerpole {

std::string_view word_of(SourceClass source_class) {
  switch (source_class) {
  case SourceClass::measured:
    return "measured";
  case SourceClass::drawn:
    return "drawn";
  case SourceClass::maker:
    return "maker";
  case SourceClass::standard:
    return "standard";
  case SourceClass::practice:
    return "practice";
  case SourceClass::assumed:
    return "assumed";
  case SourceClass::computed:
    return "computed";
  case SourceClass::unstated:
    break;
  }
  return {};
}

} // namespace sheerpole
