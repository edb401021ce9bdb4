#include "plugins/echo/echo.hpp"

#include "backend/json/json.hpp"
#include "wording/papers/index_words.hpp"
namespace sheerpole {

BackendDescription Echo::describe() const {
  return {.name = "echo", .summary = say(IndexPhrase::rig_and_all_that_was), .outputs = {"echo.json"}};
}

OutputBundle Echo::generate(const BackendRequest& request) const {
  return {{{"echo.json", write_json(request_json(request.checked))}}};
}

} // namespace sheerpole
