// The compiler as WebAssembly: texts by name, and questions in JSON. What JavaScript calls is core.js,
// which calls these functions; bytes are handed over where `sheerpole_room` says.

#include "driver/built_in_backends.hpp"
#include "service/answers.hpp"
#include "service/texts.hpp"

#include <cstddef>
#include <string>
#include <string_view>

namespace {

using namespace sheerpole;

/// What the program keeps from one call to the next.
struct Core {
  Backends backends = built_in_backends();
  service::Texts texts;
  service::Answers answers{texts, backends};
  std::string handed; ///< what JavaScript writes before a call: a name and behind it a text, or a request
  std::string answer;
};

Core& core() {
  static Core only;
  return only;
}

} // namespace

// Called by JavaScript, by these names.
extern "C" {

/// Where that many bytes may be written before one of the calls below.
char* sheerpole_room(std::size_t bytes) {
  core().handed.resize(bytes);
  return core().handed.data();
}

/// Puts the text that stands behind the first `name_bytes` bytes, its name.
void sheerpole_put(std::size_t name_bytes) {
  const std::string& handed = core().handed;
  core().texts.put(handed.substr(0, name_bytes), handed.substr(name_bytes));
}

void sheerpole_drop() {
  core().texts.drop(core().handed);
}

/// Answers a request; says how many bytes the answer has.
std::size_t sheerpole_ask() {
  core().answer = core().answers.answer(std::string_view(core().handed));
  return core().answer.size();
}

const char* sheerpole_answer() {
  return core().answer.data();
}
}
