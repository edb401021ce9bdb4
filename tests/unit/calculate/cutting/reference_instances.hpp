#pragma once

#include "calculate/cutting/plan_cutting.hpp"

#include <nlohmann/json.hpp>

#include <array>
#include <cstdint>
#include <fstream>
#include <string>
#include <vector>

namespace sheerpole::test {

/// An order of tests/reference/cutting and its optimum; where they come from is said in NOTE.md there.
struct ReferenceInstance {
  std::string name;
  CuttingOrder order;
  std::int64_t optimum_mm = 0; ///< total length of the stocks begun
};

/// folder: tests/reference.
inline nlohmann::json reference_json(const std::string& folder, const std::string& file) {
  std::ifstream stream(folder + "/cutting/" + file);
  return nlohmann::json::parse(stream);
}

/// The bin-packing instances: a bin is a stock of its capacity, of which there are as many as are needed.
inline std::vector<ReferenceInstance> one_stock_length(const std::string& folder) {
  std::vector<ReferenceInstance> instances;
  for (const auto& json : reference_json(folder, "falkenauer-u250-t60.json")) {
    ReferenceInstance& instance = instances.emplace_back();
    instance.name = json.at("name").get<std::string>();
    const auto capacity = json.at("capacity").get<std::int64_t>();
    CuttingStock& stock = instance.order.stocks.emplace_back();
    stock.name = "bin";
    stock.length_mm = capacity;
    for (const auto& item : json.at("items"))
      instance.order.pieces.push_back(
          {"size " + item.at(0).dump(), item.at(0).get<std::int64_t>(), item.at(1).get<std::int64_t>()});
    instance.optimum_mm = capacity * json.at("optimum").get<std::int64_t>();
  }
  return instances;
}

/// Stocks of several lengths, limited in number.
inline std::vector<ReferenceInstance> several_stock_lengths(const std::string& folder) {
  std::vector<ReferenceInstance> instances;
  for (const auto& json : reference_json(folder, "several-stock-lengths.json")) {
    ReferenceInstance& instance = instances.emplace_back();
    instance.name = json.at("id").get<std::string>();
    for (const auto& [length, cost, available] :
         json.at("stock").get<std::vector<std::array<std::int64_t, 3>>>()) {
      CuttingStock& stock = instance.order.stocks.emplace_back();
      stock.name = std::to_string(length);
      stock.length_mm = length;
      stock.cost_mm = cost;
      stock.available = available;
    }
    const auto demand = json.at("demand").get<std::vector<std::int64_t>>();
    for (const auto& length : json.at("lengths").get<std::vector<std::int64_t>>())
      instance.order.pieces.push_back(
          {"piece of " + std::to_string(length), length, demand.at(instance.order.pieces.size())});
    instance.optimum_mm = json.at("opt_total_stock_length").get<std::int64_t>();
  }
  return instances;
}

} // namespace sheerpole::test
