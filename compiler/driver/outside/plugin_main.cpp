#include "driver/outside/plugin_main.hpp"

#include "backend/json/json.hpp"
#include "backend/process/protocol.hpp"
#include "service/compile.hpp"

#include <exception>
#include <iostream>
#include <iterator>
#include <map>

namespace sheerpole {

namespace {

/// The files that a request carries. All of them may be read, and no others.
class SentFiles final : public FileReader {
public:
  explicit SentFiles(const Json& files) {
    for (const Json& file : files)
      texts_.emplace(file.at("name").get<std::string>(), file.at("text").get<std::string>());
  }

  Result<std::string, Failure> read(const std::string& path, std::size_t limit) override {
    const auto found = texts_.find(path);
    if (found == texts_.end())
      return Failure::not_found;
    if (found->second.size() > limit)
      return Failure::too_large;
    return found->second;
  }

  /// Where the files lay on the sender's disk has been looked at there.
  std::string real_path(const std::string&) override { return "."; }

private:
  std::map<std::string, std::string> texts_;
};

/// Whether `theirs` says all that `ours` says. A later compiler may add members to an object.
bool says_as_much(const Json& theirs, const Json& ours) {
  if (ours.is_object()) {
    if (!theirs.is_object())
      return false;
    for (const auto& [key, value] : ours.items())
      if (!theirs.contains(key) || !says_as_much(theirs[key], value))
        return false;
    return true;
  }
  if (!ours.is_array())
    return theirs == ours;
  if (!theirs.is_array() || theirs.size() != ours.size())
    return false;
  for (std::size_t i = 0; i < ours.size(); ++i)
    if (!says_as_much(theirs[i], ours[i]))
      return false;
  return true;
}

/// The request without what is said of pictures: no picture is sent, so here nothing is said of them.
Json without_pictures(Json request) {
  Json findings = Json::array();
  for (const Json& finding : request.at("findings"))
    if (finding.at("slug") != "photo-not-usable")
      findings.push_back(finding);
  request["findings"] = std::move(findings);
  return request;
}

OutputBundle generate(const Backend& backend, const Json& request, std::string& fault) {
  const Json& origin = request.at("origin");
  SentFiles files(origin.at("files"));
  const Compilation compilation =
      compile(origin.at("rig").get<std::string>(), files,
              {.settings = origin.at("settings").get<std::vector<std::string>>(),
               .folders = {},
               .shop = origin.at("shop").get<std::string>(),
               .photographs = false});
  if (!compilation.checked ||
      !says_as_much(without_pictures(request), request_json(*compilation.checked))) {
    fault = "this program is built with sheerpole " SHEERPOLE_VERSION
            " and comes to another rig than sheerpole " +
            request.at("compiler").get<std::string>() + ", which asks; build both from one version";
    return {};
  }
  const bool letter = request.at("paper").at("name") == name_of(PaperSize::letter);
  return backend.generate({.checked = *compilation.checked,
                           .fleet = {},
                           .paper = letter ? PaperSize::letter : PaperSize::a4,
                           .printed = false});
}

/// Empty when the request can not be answered; `fault` says why.
std::string answer(const Backend& backend, const Json& request, std::string& fault) {
  if (request.at("format") != request_format || request.at("version") != protocol_version) {
    fault = "this program speaks version " + std::to_string(protocol_version) + " of " +
            std::string(request_format) + " and no other";
    return {};
  }
  const auto verb = request.at("verb").get<std::string>();
  if (verb == "describe")
    return write_describe_reply(backend.describe());
  if (verb != "generate") {
    fault = "this program knows describe and generate, not " + verb;
    return {};
  }
  const OutputBundle bundle = generate(backend, request, fault);
  return fault.empty() ? write_generate_reply(bundle) : std::string();
}

} // namespace

int plugin_main(const Backend& backend, std::istream& in, std::ostream& out, std::ostream& errors) {
  const std::string text{std::istreambuf_iterator<char>(in), {}};
  std::string fault;
  std::string reply;
  try {
    reply = answer(backend, Json::parse(text), fault);
  } catch (const std::exception& error) {
    fault = error.what();
  }
  if (!fault.empty()) {
    errors << fault << '\n';
    return 1;
  }
  out << reply << std::flush;
  return out ? 0 : 1;
}

int plugin_main(const Backend& backend) {
  std::ios::sync_with_stdio(false);
  return plugin_main(backend, std::cin, std::cout, std::cerr);
}

} // namespace sheerpole
