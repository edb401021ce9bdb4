#include "plugins/order-list/order_list.hpp"

#include "backend/order/order_items.hpp"
#include "backend/page/html.hpp"
#include "backend/page/page_flow.hpp"
#include "backend/paper_words.hpp"

#include <utility>

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
                          cell_to_write,
                          cell_to_tick});
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

std::string stays_text(const OrderItem& item) {
  return joined(item.stays, "; ",
                [&](const auto& stay) { return stay.first + " " + amount_text(item, stay.second); });
}

Table table_of(const std::vector<OrderItem>& items) {
  Table table{.title = "Order list",
              .columns = {{"group"},
                          {"item"},
                          {"what"},
                          {"size"},
                          {"supplier"},
                          {"needed", true},
                          {"in hand", true},
                          {"to order", true},
                          {"stays"},
                          {"note"}}};
  for (const OrderItem& item : items)
    table.rows.push_back({item.group, item.name, item.what, item.size, item.supplier,
                          amount_text(item, item.needed), amount_text(item, item.in_hand),
                          amount_text(item, item.to_order()), stays_text(item), joined(item.notes, "; ")});
  return table;
}

/// The order to one supplier, without what is in hand.
Table order_to(const std::vector<OrderItem>& items, const std::string& supplier, std::string title) {
  Table table{.title = std::move(title), .columns = {{"to order", true}, {"item"}, {"size"}, {"what"}}};
  for (const OrderItem& item : items) {
    if (item.supplier != supplier)
      continue;
    if (item.to_order() > 0)
      table.rows.push_back({amount_text(item, item.to_order()), item.name, item.size, item.what});
    for (const std::string& note : item.notes)
      table.notes.push_back(item.name + ": " + note + ".");
  }
  if (table.rows.empty())
    table.notes.insert(table.notes.begin(), "Nothing is to be ordered.");
  return table;
}

/// What is to be ordered and nothing else, as a message to whoever sells it.
std::string order_text(const CheckedRig& checked, const std::vector<OrderItem>& items,
                       const std::string& boat) {
  std::string text = "Order list of " + boat + "\n";
  if (!checked.draft_reasons().empty())
    text +=
        "DRAFT: lengths of line rest on numbers that are assumed or missing; the cut list names them.\n";
  const std::vector<std::string> suppliers = suppliers_of(items);
  for (const std::string& supplier : suppliers) {
    const std::string title = !supplier.empty()      ? "From " + supplier
                              : suppliers.size() > 1 ? "Supplier not stated"
                                                     : std::string();
    text += "\n" + render_text(order_to(items, supplier, title));
  }
  if (items.empty())
    text += "\nThe rig file states nothing to order.\n";
  return text + "\nInch sizes and metric sizes that look alike are two things: 5/16 in is not 8 mm.\n";
}

} // namespace

std::vector<Drawing> order_pages(const CheckedRig& checked, const std::vector<OrderItem>& items,
                                 const std::string& boat, PaperSize size) {
  PageFlow page(size,
                {.name = "Order list", .about = boat_and_revision(checked), .draft = draft_lines(checked)});
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

BackendDescription OrderList::describe() const {
  return {.name = "order-list",
          .summary = "what is to be bought: lines, hardware and small parts, less what is in hand",
          .outputs = {"order-list.txt", "order-list.html", "order-list.csv"},
          .papers = {"order-list.pdf"}};
}

OutputBundle OrderList::generate(const BackendRequest& request) const {
  const std::string boat = boat_title(request.checked);
  const std::vector<OrderItem> items = order_items(request.checked);
  std::vector<Drawing> pages = order_pages(request.checked, items, boat, request.paper);
  OutputBundle bundle;
  bundle.files.push_back({"order-list.txt", order_text(request.checked, items, boat)});
  bundle.files.push_back({"order-list.html", html_of_pages("Order list of " + boat, pages)});
  bundle.files.push_back({"order-list.csv", render_csv(table_of(items))});
  bundle.papers.push_back({"order-list.pdf", "Order list of " + boat, std::move(pages)});
  return bundle;
}

} // namespace sheerpole
