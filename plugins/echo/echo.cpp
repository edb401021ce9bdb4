#include "plugins/echo/echo.hpp"

#include "backend/json/json.hpp"
namespace sheerpole {

BackendDescription Echo::describe() const {
  return {.name = "echo",
          .summary = "the rig and all that was calculated, as a back end receives it",
          .outputs = {"echo.json"}};
}

OutputBundle Echo::generate(const BackendRequest& request) const {
  return {{{"echo.json", write_json(request_json(request.checked))}}};
}

} // namespace sheerpole
