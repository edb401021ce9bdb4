#include "service/answers.hpp"

#include "service/answer_json.hpp"
#include "service/begin/begin_request.hpp"
#include "service/hover.hpp"
#include "service/inlay.hpp"
#include "service/occurrences.hpp"
#include "service/rename.hpp"
#include "service/tokens.hpp"
#include "wording/service_words.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>
#include <vector>

namespace sheerpole::service {

namespace {

/// More turns than any screw has, or millimetres than any lashing gives.
constexpr double most_turns = 1e4;

/// Why a request has no answer.
struct Refused {
  std::string words;
};

std::string text_of(const Json& request, const char* field) {
  if (!request.contains(field) || !request[field].is_string())
    throw Refused{field_is_missing(field)};
  return request[field].get<std::string>();
}

std::vector<std::string> texts_of(const Json& request, const char* field) {
  std::vector<std::string> result;
  if (!request.contains(field))
    return result;
  if (!request[field].is_array())
    throw Refused{field_is_missing(field)};
  for (const Json& each : request[field]) {
    if (!each.is_string())
      throw Refused{field_is_missing(field)};
    result.push_back(each.get<std::string>());
  }
  return result;
}

/// What is being answered.
struct Question {
  const Json& request;
  const OpenBoat& boat;
  FileReader& reader;
  const CompileOptions& options;
  BackendList backends;
  std::optional<TunedRig>& tuned; ///< of the boat; nothing when nobody has asked yet

  SourceId file() const {
    const std::string name = request.contains("file") ? text_of(request, "file") : boat.root;
    if (const auto source = boat.source(name))
      return *source;
    throw Refused{file_is_not_of_the_boat(name)};
  }
  /// A place in the file, counted in any of the ways that answers have.
  std::uint32_t place(const Json& from, const char* field) const {
    const Json at = from.contains(field) ? from[field] : Json();
    const auto number = [&](const char* key) -> std::optional<std::size_t> {
      if (!at.is_object() || !at.contains(key) || !at[key].is_number_integer() || at[key] < 0)
        return std::nullopt;
      return at[key].get<std::size_t>();
    };
    const SourceText& text = boat.text(file());
    const TextPlaces& places = boat.places(text.id());
    if (const auto byte = number("byte"))
      return offset_of(text, places.at_byte(*byte).byte);
    if (const auto unit = number("unit"))
      return offset_of(text, places.at_unit(*unit).byte);
    const auto line = number("line");
    const auto character = number("character");
    if (line && character)
      return offset_of(text, places.at_line(*line, *character).byte);
    throw Refused{field_is_missing(field)};
  }
  std::uint32_t at() const { return place(request, "at"); }
  Json places(const std::vector<Span>& spans) const {
    Json result = Json::array();
    for (const Span span : spans)
      result.push_back(place_json(boat, span));
    return result;
  }
};

Json ask_findings(const Question& question) {
  return findings_json(question.boat);
}

Json ask_complete(const Question& question) {
  return proposals_json(question.boat, complete(question.boat, question.file(), question.at()));
}

Json ask_hover(const Question& question) {
  const auto found = hover(question.boat, question.file(), question.at());
  if (!found)
    return nullptr;
  return {{"place", place_json(question.boat, found->span)},
          {"code", found->code},
          {"lines", found->lines},
          {"markdown", markdown(*found)}};
}

Json ask_definition(const Question& question) {
  const auto found = definition(question.boat, question.file(), question.at());
  return found && question.boat.tree(found->to.source) != nullptr ? place_json(question.boat, found->to)
                                                                  : Json();
}

Json ask_references(const Question& question) {
  return question.places(references(question.boat, question.file(), question.at(), true));
}

Json ask_rename(const Question& question) {
  const Renaming renaming = rename(question.boat, question.reader, question.options, question.file(),
                                   question.at(), text_of(question.request, "new_name"));
  return {{"edits", edits_json(question.boat, renaming.edits)}, {"refused", renaming.refused}};
}

Json ask_format(const Question& question) {
  const auto edits = format(question.boat.text(question.file()));
  return edits ? edits_json(question.boat, *edits) : Json();
}

Json ask_symbols(const Question& question) {
  return outline_json(question.boat, outline(question.boat, question.file()));
}

Json ask_fold(const Question& question) {
  constexpr std::array<std::string_view, 3> sorts{"block", "comment", "uses"};
  Json result = Json::array();
  for (const Fold& fold : folds(question.boat.text(question.file())))
    result.push_back({{"first_line", fold.first},
                      {"last_line", fold.last},
                      {"sort", sorts[static_cast<std::size_t>(fold.sort)]}});
  return result;
}

Json ask_inlay(const Question& question) {
  Json result = Json::array();
  for (const Inlay& inlay : inlays(question.boat, question.file()))
    result.push_back({{"behind", place_json(question.boat, inlay.behind)}, {"words", inlay.words}});
  return result;
}

Json ask_actions(const Question& question) {
  if (!question.request.contains("range"))
    return actions_json(question.boat, mend_all(question.boat, question.reader));
  const Json& range = question.request["range"];
  if (!range.is_object())
    throw Refused{field_is_missing("range")};
  return actions_json(question.boat,
                      actions(question.boat, {question.file(), question.place(range, "begin"),
                                              question.place(range, "end")}));
}

Json ask_tokens(const Question& question) {
  Json result = Json::array();
  for (const Token& token : tokens(question.boat, question.file())) {
    const TextRange range = question.boat.range(token.span);
    result.push_back({{"byte", range.begin.byte},
                      {"bytes", token.span.end - token.span.begin},
                      {"unit", range.begin.unit},
                      {"units", range.end.unit - range.begin.unit},
                      {"sort", lsp_name(token.sort)},
                      {"declared_here", token.declared_here}});
  }
  return result;
}

Json ask_numbers(const Question& question) {
  return numbers_json(question.boat, numbers(question.boat));
}

Json ask_declarations(const Question& question) {
  const std::string kind = question.request.contains("kind") ? text_of(question.request, "kind") : "";
  return declarations_json(question.boat, declarations(question.boat, kind));
}

Json ask_stays(const Question& question) {
  return question.boat.compiled.checked ? stays_json(*question.boat.compiled.checked) : Json();
}

/// The names of the papers, or with `only` the papers of these back ends themselves.
Json ask_papers(const Question& question) {
  if (!question.boat.compiled.checked)
    return nullptr;
  const std::vector<std::string> only = texts_of(question.request, "only");
  const bool letter = question.request.contains("paper") && text_of(question.request, "paper") == "letter";
  return papers_json(papers(*question.boat.compiled.checked, question.backends, only,
                            letter ? PaperSize::letter : PaperSize::a4),
                     !only.empty());
}

Json ask_set(const Question& question) {
  return trial_json(try_settings(question.boat, question.reader, question.options,
                                 texts_of(question.request, "settings")));
}

/// What a sealed folder says of the boat's texts, and of her papers as they are made again here.
Json ask_verify(const Question& question) {
  const SealedTexts texts{text_of(question.request, "sums"), text_of(question.request, "facts"),
                          text_of(question.request, "words")};
  return seal_check_json(check_seal(question.boat, question.reader, question.options, question.backends,
                                    texts, texts_of(question.request, "only")));
}

/// Turns by stay; numbers that are none of a screw are refused.
TurnsByStay turns_of(const Json& request) {
  TurnsByStay result;
  if (!request.contains("turns"))
    return result;
  if (!request["turns"].is_object())
    throw Refused{field_is_missing("turns")};
  for (const auto& [stay, turns] : request["turns"].items()) {
    if (!turns.is_number() || !(std::abs(turns.get<double>()) <= most_turns))
      throw Refused{field_is_missing("turns")};
    result[stay] = turns.get<double>();
  }
  return result;
}

Json ask_turns(const Question& question) {
  const TurnsByStay turns = turns_of(question.request);
  if (!question.boat.compiled.checked)
    return nullptr;
  if (!question.tuned)
    question.tuned = tuned_rig(*question.boat.compiled.rig, *question.boat.compiled.derived);
  if (!question.tuned->stands())
    return turns_json(question.boat, *question.tuned, nullptr);
  const TurnTrial trial = try_turns(question.boat, *question.tuned, turns);
  return turns_json(question.boat, *question.tuned, &trial);
}

struct Asked {
  std::string_view name;
  Json (*answer)(const Question& question);
  bool for_papers = false; ///< all is worked out, not only what checks read
};

Json ask_starts(const Json&) {
  return starts_json();
}

Json ask_begin(const Json& request) {
  BeginRequest begin{text_of(request, "rig"), text_of(request, "line"), text_of(request, "measured"),
                     text_of(request, "name"), text_of(request, "unit")};
  if (request.contains("numbers")) {
    if (!request["numbers"].is_object())
      throw Refused{field_is_missing("numbers")};
    for (const auto& [name, text] : request["numbers"].items())
      begin.numbers[name] = text_of(request["numbers"], name.c_str());
  }
  const auto begun = begin_file(begin);
  if (!begun.ok())
    throw Refused{begun.error()};
  return {{"file", begun.value().file}, {"text", begun.value().text}};
}

/// What is asked before there is a boat.
struct AskedOfNone {
  std::string_view name;
  Json (*answer)(const Json& request);
};

constexpr std::array asked_of_none{AskedOfNone{"starts", ask_starts}, AskedOfNone{"begin", ask_begin}};

constexpr std::array all_asked{Asked{"findings", ask_findings},
                               Asked{"complete", ask_complete},
                               Asked{"hover", ask_hover},
                               Asked{"definition", ask_definition},
                               Asked{"references", ask_references},
                               Asked{"rename", ask_rename},
                               Asked{"format", ask_format},
                               Asked{"symbols", ask_symbols},
                               Asked{"fold", ask_fold},
                               Asked{"inlay", ask_inlay},
                               Asked{"actions", ask_actions},
                               Asked{"tokens", ask_tokens},
                               Asked{"numbers", ask_numbers},
                               Asked{"declarations", ask_declarations},
                               Asked{"stays", ask_stays},
                               Asked{"papers", ask_papers, true},
                               Asked{"set", ask_set},
                               Asked{"verify", ask_verify},
                               Asked{"turns", ask_turns}};

const Asked* find_asked(std::string_view name) {
  const auto found = std::find_if(all_asked.begin(), all_asked.end(),
                                  [&](const Asked& each) { return each.name == name; });
  return found == all_asked.end() ? nullptr : &*found;
}

CompileOptions options_of(const Json& request, const Asked& asked, KeptTrees& kept) {
  CompileOptions options;
  options.folders = texts_of(request, "folders");
  if (request.contains("as_of"))
    options.as_of = text_of(request, "as_of");
  if (request.contains("shop"))
    options.shop = text_of(request, "shop");
  options.threads = 1;
  options.wanted = asked.for_papers ? Wanted::words : Wanted::counts;
  options.kept = &kept;
  return options;
}

Json answer_json(const std::string& name, Json answer) {
  return {{"version", 1}, {"answers", name}, {"answer", std::move(answer)}};
}

Json error_json(const std::string& message) {
  return {{"version", 1}, {"answers", "error"}, {"message", message}};
}

} // namespace

bool Answers::is_unchanged() const {
  const SourceSet& sources = *boat_->compiled.sources;
  for (std::uint32_t i = 0; i < sources.size(); ++i) {
    const SourceText& text = sources[SourceId{i}];
    if (text.id() != SourceId{0} && boat_->tree(text.id()) == nullptr)
      continue;
    const auto now = reader_.read(text.name(), largest_source_bytes);
    if (!now.ok() || now.value() != text.file_bytes())
      return false;
  }
  // What could not be read may be there now.
  return sources.size() > 0 && !boat_->compiled.has_errors;
}

const OpenBoat& Answers::boat_of(const Json& request) {
  const Asked& asked = *find_asked(request["ask"].get<std::string>());
  const std::string root = text_of(request, "boat");
  const CompileOptions options = options_of(request, asked, kept_);
  Json how = {root, options.folders, options.as_of, options.shop, asked.for_papers};
  std::string key = how.dump(-1, ' ', false, Json::error_handler_t::replace);
  if (!boat_ || asked_ != key || !is_unchanged()) {
    boat_ = read_boat(root, reader_, options);
    asked_ = std::move(key);
    tuned_.reset();
  }
  return *boat_;
}

Json Answers::answer(const Json& request) {
  try {
    if (!request.is_object())
      throw Refused{request_is_no_object()};
    if (!request.contains("version") || request["version"] != 1)
      throw Refused{
          version_not_known(request.contains("version")
                                ? request["version"].dump(-1, ' ', false, Json::error_handler_t::replace)
                                : "")};
    const std::string name = text_of(request, "ask");
    for (const AskedOfNone& each : asked_of_none)
      if (each.name == name)
        return answer_json(name, each.answer(request));
    const Asked* asked = find_asked(name);
    if (asked == nullptr)
      throw Refused{nothing_of_this_name_is_asked(name)};
    const OpenBoat& boat = boat_of(request);
    const CompileOptions options = options_of(request, *asked, kept_);
    return answer_json(name, asked->answer({request, boat, reader_, options, backends_, tuned_}));
  } catch (const Refused& refused) {
    return error_json(refused.words);
  }
}

std::string Answers::answer(std::string_view request) {
  const Json asked = Json::parse(request, nullptr, false);
  return answer(asked).dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace sheerpole::service
