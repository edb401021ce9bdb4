#include "model/provenance.hpp"

namespace sheerpole {

std::string_view name_of(SourceClass source_class) {
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
    return "no source given";
  }
  return "no source given";
}

} // namespace sheerpole
