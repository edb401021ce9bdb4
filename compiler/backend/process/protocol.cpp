#include "backend/process/protocol.hpp"

#include "backend/json/json.hpp"
#include "backend/process/file_name.hpp"
#include "backend/process/outside_json.hpp"
#include "base/byte_text.hpp"

#include <optional>
#include <utility>

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

Result<nlohmann::json, ReplyFault> read(std::string_view text, std::string_view schema) {
  using Kind = ReplyFault::Kind;
  auto json = read_json(text);
  if (!json.ok())
    return ReplyFault{Kind::not_json, {}, json.error()};
  // Another version may be built otherwise in every way, so its number is looked at first.
  if (json.value().is_object() && json.value().contains("version"))
    if (const auto& version = json.value()["version"]; version.is_number() && version != protocol_version)
      return ReplyFault{Kind::other_version, {}, version.dump()};
  if (auto fault = schema_fault(json.value(), schema))
    return ReplyFault{Kind::not_as_agreed, std::move(fault->where), std::move(fault->what)};
  return std::move(json.value());
}

std::vector<std::string> names(const nlohmann::json& json, const char* key) {
  return json.contains(key) ? json[key].get<std::vector<std::string>>() : std::vector<std::string>();
}

/// The bytes without what JSON can not hold, when they are UTF-8.
std::optional<Json> as_text(const std::string& bytes) {
  try {
    Json text = bytes;
    text.dump(); // refuses what is not UTF-8
    return text;
  } catch (const Json::type_error&) {
    return std::nullopt;
  }
}

Json reply_head() {
  return {{"format", reply_format}, {"version", protocol_version}};
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

Result<BackendDescription, ReplyFault> read_describe_reply(std::string_view text) {
  const auto json = read(text, describe_reply_schema);
  if (!json.ok())
    return json.error();
  BackendDescription description{.name = json.value()["name"].get<std::string>(),
                                 .summary = json.value()["summary"].get<std::string>(),
                                 .outputs = names(json.value(), "outputs"),
                                 .sometimes = names(json.value(), "sometimes")};
  for (const auto* files : {&description.outputs, &description.sometimes})
    for (const std::string& file : *files)
      if (std::string fault = fault_of_file_name(file); !fault.empty())
        return ReplyFault{ReplyFault::Kind::file_name, file, std::move(fault)};
  return description;
}

Result<OutputBundle, ReplyFault> read_generate_reply(std::string_view text) {
  auto json = read(text, generate_reply_schema);
  if (!json.ok())
    return json.error();
  OutputBundle bundle;
  std::size_t number = 0;
  for (auto& file : json.value()["files"]) {
    std::string name = file["name"].get<std::string>();
    if (std::string fault = fault_of_file_name(name); !fault.empty())
      return ReplyFault{ReplyFault::Kind::file_name, std::move(name), std::move(fault)};
    std::optional<std::string> bytes;
    if (file.contains("text"))
      bytes = std::move(file["text"].get_ref<std::string&>());
    else
      bytes = from_base64(file["base64"].get_ref<const std::string&>());
    if (!bytes)
      return ReplyFault{ReplyFault::Kind::not_as_agreed, "files[" + std::to_string(number) + "].base64",
                        "it is not base 64 with padding"};
    bundle.files.push_back({std::move(name), std::move(*bytes)});
    ++number;
  }
  return bundle;
}

std::string write_describe_reply(const BackendDescription& description) {
  Json json = reply_head();
  json["name"] = description.name;
  json["summary"] = description.summary;
  json["outputs"] = description.outputs;
  json["sometimes"] = description.sometimes;
  return json.dump() + "\n";
}

std::string write_generate_reply(const OutputBundle& bundle) {
  Json json = reply_head();
  json["files"] = Json::array();
  for (const OutputFile& file : bundle.files) {
    if (auto text = as_text(file.bytes))
      json["files"].push_back({{"name", file.name}, {"text", std::move(*text)}});
    else
      json["files"].push_back({{"name", file.name}, {"base64", to_base64(file.bytes)}});
  }
  return json.dump() + "\n";
}

} // namespace sheerpole
