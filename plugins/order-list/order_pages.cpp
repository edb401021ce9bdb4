#include "plugins/order-list/order_pages.hpp"

namespace sheerpole {

namespace {

constexpr TextLook small{.size = 3.0, .bold = false, .indent = 0.0};

std::vector<std::string> draft_lines(const CheckedRig& checked) {
  if (checked.draft_reasons().empty())
    return {};
  return {"Lengths of line here rest on numbers that are assumed or missing; the cut list names them"};
}

/// The items of one group from one supplier.
void add_group(const std::vector<OrderItem>& items, const std::string& supplier, const std::string& group,
               PageFlow& page) {
  FlowTable table{.columns = {{"item", 2.6},
                              {"what", 3.0},
                              {"size", 2.4},
                              {"needed", 1.1, true},
                              {"in hand", 1.1, true},
                              {"to order", 1.2, true},
                              {"their no.", 1.4},
                              {"here", 0.7}},
                  .rows = {},
                  .size = 3.0};
  std::vector<std::string> notes;
  for (const OrderItem& item : items) {
    if (item.group != group || item.supplier != supplier)
      continue;
    table.rows.push_back({{.text = item.name},
                          {.text = item.what},
                          {.text = item.size},
                          {.text = amount_text(item, item.needed)},
                          {.text = item.in_hand == 0 ? "" : amount_text(item, item.in_hand)},
                          {.text = amount_text(item, item.to_order()), .bold = true},
                          {.text = "", .bold = false, .tick = false, .rule = true},
                          {.text = "", .bold = false, .tick = true, .rule = false}});
    for (const std::string& note : item.notes)
      notes.push_back(item.name + ": " + note + ".");
  }
  if (table.rows.empty())
    return;
  page.heading(group, 4.2);
  page.table(table);
  for (const std::string& note : notes)
    page.text(note, small);
}

} // namespace

std::vector<Drawing> order_pages(const CheckedRig& checked, const std::vector<OrderItem>& items,
                                 const std::string& boat, PaperSize size) {
  PageFlow page(size, {.name = "Order list", .about = boat, .draft = draft_lines(checked)});
  page.text("ORDER LIST   " + boat, {.size = 7.0, .bold = true, .indent = 0.0});
  page.text(
      "An inch size and a metric size that look alike are two things: 5/16 in is not 8 mm. What belongs to "
      "the boat, tangs and chainplates, is not ordered here; measure it, do not copy it from old parts.",
      small);
  page.to_write("Account, deliver to, wanted by:");
  const std::vector<std::string> suppliers = suppliers_of(items);
  for (const std::string& supplier : suppliers) {
    // Where nobody names a supplier, or all name the same, nothing is said of it or it is said once.
    if (suppliers.size() > 1 || !supplier.empty())
      page.heading(supplier.empty() ? "Supplier not stated" : "From " + supplier, 5.2);
    for (const char* group : {"Lines", "Hardware", "Small parts"})
      add_group(items, supplier, group, page);
  }
  if (items.empty())
    page.text("The rig file states nothing to order.");
  return page.pages("Order list of " + boat, "Lines, hardware and small parts to buy.");
}

} // namespace sheerpole
