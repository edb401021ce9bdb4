#include "driver/version.hpp"

#include "backend/process/protocol.hpp"

#include <built_from.hpp>

namespace sheerpole {

std::string_view built_from_commit() {
  return SHEERPOLE_BUILT_FROM;
}

std::string version_words() {
  return "sheerpole " SHEERPOLE_VERSION "\nlanguage 1\nJSON " + std::to_string(protocol_version) +
         "\ncommit " + std::string(built_from_commit()) + "\n";
}

} // namespace sheerpole
