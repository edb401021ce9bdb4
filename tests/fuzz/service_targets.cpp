#include "backend/json/json.hpp"
#include "driver/editor/language_server.hpp"
#include "driver/editor/message_stream.hpp"
#include "fuzz/targets.hpp"
#include "service/answers.hpp"
#include "service/texts.hpp"

#include <string>

namespace sheerpole::fuzz {

namespace {

constexpr const char* all_that_is_asked[] = {"findings", "complete", "hover",   "definition", "references",
                                             "rename",   "format",   "symbols", "fold",       "inlay",
                                             "actions",  "tokens",   "numbers", "stays",      "set"};

/// A place of the text that follows from the text, so that the same input is the same try.
std::size_t some_place(const std::string& text) {
  std::size_t sum = 0;
  for (const char c : text)
    sum = sum * 31 + static_cast<unsigned char>(c);
  return sum % (text.size() + 2);
}

} // namespace

int try_service(const std::uint8_t* data, std::size_t size) {
  const std::string text(reinterpret_cast<const char*>(data), size);
  service::Texts texts;
  texts.put("boat.rig", text);
  service::Answers answers(texts, {});
  const std::size_t place = some_place(text);
  for (const char* asked : all_that_is_asked) {
    const Json request = {{"version", 1},
                          {"ask", asked},
                          {"boat", "boat.rig"},
                          {"at", {{"byte", place}}},
                          {"range", {{"begin", {{"unit", place}}}, {"end", {{"byte", place + 10}}}}},
                          {"new_name", "other-name"},
                          {"settings", Json::array()}};
    const Json answered = answers.answer(request);
    // Of a file that is no text there is nothing to be asked but its findings.
    promise(answered["answers"] == asked || first_invalid_utf8(text) != std::string_view::npos,
            "a request that is right was not answered");
  }
  return 0;
}

int try_editor(const std::uint8_t* data, std::size_t size) {
  editor::MessageStream stream;
  editor::LanguageServer server({}, [](const editor::Json& message) {
    promise(message["jsonrpc"] == "2.0" && (message.contains("method") || message.contains("id")),
            "what is said is no message");
  });
  stream.feed({reinterpret_cast<const char*>(data), size});
  while (const auto arrived = stream.next()) {
    if (arrived->fault.empty())
      server.take(arrived->content);
    else
      server.take_fault(arrived->fault);
    if (server.exit_code())
      return 0;
  }
  server.publish();
  promise(!server.has_to_publish(), "findings that were sent are still to be sent");
  return 0;
}

} // namespace sheerpole::fuzz
