#include "backend/process/request.hpp"

#include "backend/process/protocol.hpp"

namespace sheerpole {

namespace {

Json head(std::string_view verb, const std::string& compiler_version) {
  return {{"format", request_format},
          {"version", protocol_version},
          {"verb", verb},
          {"compiler", compiler_version}};
}

std::string one_line(const Json& json) {
  return json.dump(-1, ' ', false, Json::error_handler_t::replace) + "\n";
}

Json paper_json(PaperSize size) {
  const PaperExtent extent = paper_of(size);
  return {{"name", name_of(size)}, {"width_mm", extent.width}, {"height_mm", extent.height}};
}

Json origin_json(const RigOrigin& origin) {
  Json files = Json::array();
  for (const RigText& file : origin.files)
    files.push_back({{"name", file.name}, {"text", file.text}});
  return {{"rig", origin.rig},
          {"files", std::move(files)},
          {"settings", origin.settings},
          {"shop", origin.shop}};
}

} // namespace

std::string describe_request(const std::string& compiler_version) {
  return one_line(head("describe", compiler_version));
}

std::string generate_request(const BackendRequest& request, const RigOrigin& origin,
                             const std::string& compiler_version) {
  Json json = head("generate", compiler_version);
  json["paper"] = paper_json(request.paper);
  Json all = request_json(request.checked);
  for (auto& [key, value] : all.items())
    if (!json.contains(key))
      json[key] = std::move(value);
  json["origin"] = origin_json(origin);
  return one_line(json);
}

} // namespace sheerpole
