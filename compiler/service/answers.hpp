#pragma once

#include "backend/json/json.hpp"
#include "calculate/tune/tuned_rig.hpp"
#include "service/open_boat.hpp"
#include "service/papers.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace sheerpole::service {

/// Answers requests in JSON, version 1: docs/service/request.schema.json and answer.schema.json say what
/// they look like. Texts come through the reader; what was read is kept until one of them is another.
///
/// Whatever is asked, there is an answer: one of the kind "error" says what was wrong with the request.
class Answers {
public:
  Answers(FileReader& reader, BackendList backends) : reader_(reader), backends_(backends) {}

  Json answer(const Json& request);
  /// The same of a text; a text that is no JSON is answered too.
  std::string answer(std::string_view request);

private:
  const OpenBoat& boat_of(const Json& request);
  bool is_unchanged() const;

  FileReader& reader_;
  BackendList backends_;
  KeptTrees kept_;
  std::optional<OpenBoat> boat_;  ///< the one that was asked about last
  std::string asked_;             ///< and how
  std::optional<TunedRig> tuned_; ///< how it stands, once somebody asked for turns
};

} // namespace sheerpole::service
