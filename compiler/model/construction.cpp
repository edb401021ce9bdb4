#include "model/construction.hpp"

#include "model/trade_words.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <utility>
#include <vector>

namespace sheerpole {

namespace {

std::optional<int> number_of(const std::string& word) {
  if (word.empty() || word.size() > 4 || word.find_first_not_of("0123456789") != std::string::npos)
    return std::nullopt;
  return std::stoi(word);
}

constexpr std::array<std::pair<std::string_view, Fibre>, 13> fibres{{
    {"hmpe", Fibre::hmpe},
    {"uhmwpe", Fibre::hmpe},
    {"aramid", Fibre::aramid},
    {"lcp", Fibre::liquid_crystal_polymer},
    {"polyester", Fibre::polyester},
    {"pes", Fibre::polyester},
    {"polyamide", Fibre::polyamide},
    {"nylon", Fibre::polyamide},
    {"polypropylene", Fibre::polypropylene},
    {"pbo", Fibre::pbo},
    {"stainless", Fibre::metal},
    {"steel", Fibre::metal},
    {"galvanised", Fibre::metal},
}};

bool is(const std::vector<std::string>& words, std::size_t at, std::string_view word) {
  return at < words.size() && words[at] == word;
}

/// Whether the words before a place turn it round: "not heat-set", "non heat set", "not yet heat-set". A
/// denial of something else, as in "no stretch, heat-set", turns nothing round.
bool is_denied(const std::vector<std::string>& words, std::size_t at) {
  static constexpr std::array<std::string_view, 9> denials{"not", "non", "never",  "without", "no",
                                                           "un",  "isn", "partly", "half"};
  static constexpr std::array<std::string_view, 5> between{"yet", "been", "any", "fully", "t"};
  const auto stands = [&](std::size_t place, const auto& list) {
    return place < words.size() && std::find(list.begin(), list.end(), words[place]) != list.end();
  };
  return stands(at - 1, denials) || (stands(at - 1, between) && stands(at - 2, denials));
}

/// "heat set", "heatset" at a place; how many words it takes, 0 when it is not there. Heat-treated may mean
/// another thing, so it does not count.
std::size_t heat_set_words(const std::vector<std::string>& words, std::size_t at) {
  if (words[at] == "heatset")
    return 1;
  return is(words, at, "heat") && is(words, at + 1, "set") ? 2 : 0;
}

void read_heat_set(const std::vector<std::string>& words, Construction& result) {
  for (std::size_t at = 0; at < words.size(); ++at) {
    const std::size_t taken = heat_set_words(words, at);
    if (taken == 0)
      continue;
    const std::size_t after = at + taken;
    const bool denied = is_denied(words, at) || is(words, after, "no") || is(words, after, "none");
    result.heat_set = !denied;
    if (denied)
      return; // one denial is enough: the doubtful reading is the longer rope
  }
}

void read_strands(const std::vector<std::string>& words, Construction& result) {
  for (std::size_t at = 0; at < words.size(); ++at) {
    const auto number = number_of(words[at]);
    if (!number)
      continue;
    if (is(words, at + 1, "x") && at + 2 < words.size() && number_of(words[at + 2])) {
      result.strands = number;
      result.wires_in_strand = number_of(words[at + 2]);
      result.lay = Lay::strand;
      return;
    }
    if (is(words, at + 1, "strand") || is(words, at + 1, "strands") || is(words, at + 1, "plait")) {
      result.strands = number;
      result.lay = *number <= 4 ? Lay::laid : Lay::braided;
      return;
    }
  }
  constexpr std::array<std::pair<std::string_view, int>, 3> counts{
      {{"three", 3}, {"eight", 8}, {"twelve", 12}}};
  for (std::size_t at = 0; at < words.size(); ++at)
    for (const auto& [word, number] : counts)
      if (words[at] == word && (is(words, at + 1, "strand") || is(words, at + 1, "plait"))) {
        result.strands = number;
        result.lay = number <= 4 ? Lay::laid : Lay::braided;
      }
}

void read_lay(const std::vector<std::string>& words, Construction& result) {
  bool cored = false;
  for (std::size_t at = 0; at < words.size(); ++at) {
    const std::string& word = words[at];
    const bool braid = word == "braid" || word == "braided";
    if (braid && (is(words, at - 1, "double") || is(words, at - 1, "covered")))
      result.lay = Lay::double_braid;
    else if (braid && result.lay == Lay::unknown)
      result.lay = Lay::braided;
    else if (word == "parallel")
      result.lay = Lay::parallel;
    else if (word == "laid" || word == "twisted")
      result.lay = Lay::laid;
    else if (word == "rod" || word == "solid")
      result.lay = Lay::solid;
    else if (word == "chain" || word == "links" || word == "link")
      result.lay = Lay::links;
    else if (word == "cored" || word == "core" || word == "cover" || word == "covered")
      cored = !is_denied(words, at);
    else if (word == "hollow")
      result.hollow = !is_denied(words, at);
  }
  if (result.hollow)
    return;
  if (result.lay == Lay::laid || result.lay == Lay::solid || result.lay == Lay::strand ||
      result.lay == Lay::links || result.lay == Lay::double_braid || result.lay == Lay::parallel || cored)
    result.hollow = false;
  else if (result.lay == Lay::braided && result.strands && *result.strands >= 8)
    result.hollow = true;
}

} // namespace

Construction read_construction(std::string_view text) {
  Construction result;
  result.text = text;
  const std::vector<std::string> words = words_in_text(text);
  for (const std::string& word : words)
    for (const auto& [name, fibre] : fibres)
      if (word == name)
        result.fibre = fibre;
  read_heat_set(words, result);
  read_strands(words, result);
  read_lay(words, result);
  return result;
}

bool is_same_construction(const Construction& a, const Construction& b) {
  const auto sorted_words = [](const Construction& one) {
    std::vector<std::string> words = words_in_text(one.text);
    std::sort(words.begin(), words.end());
    return words;
  };
  return sorted_words(a) == sorted_words(b);
}

} // namespace sheerpole
