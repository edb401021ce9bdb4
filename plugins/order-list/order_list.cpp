#include "plugins/order-list/order_list.hpp"

#include "backend/order/order_items.hpp"
#include "backend/page/page_flow.hpp"
#include "backend/page/paper_files.hpp"
#include "backend/paper_words.hpp"
#include "wording/papers/order_words.hpp"

#include <algorithm>
#include <utility>

namespace sheerpole {

namespace {

constexpr TextLook small{.size = 3.0, .bold = false, .indent = 0.0};

std::vector<std::string> waiting_lines(const CheckedRig& checked) {
  const std::string words = waiting_words(checked);
  return words.empty() ? std::vector<std::string>{} : std::vector{words};
}

/// Above the items of a group, which CSV has by its English name.
PhraseText heading_of(const std::string& group) {
  return group == "Lines"      ? say(OrderPhrase::lines)
         : group == "Hardware" ? say(OrderPhrase::hardware)
                               : say(OrderPhrase::small_parts);
}

/// The items of one group from one supplier.
void add_group(const std::vector<OrderItem>& items, const std::string& supplier, const std::string& group,
               PageFlow& page) {
  // A length that is X stands in words and takes more room.
  const bool in_words = std::any_of(items.begin(), items.end(), [&](const OrderItem& item) {
    return item.group == group && item.supplier == supplier && !item.open.empty();
  });
  FlowTable table{.columns = {{say(OrderPhrase::item), in_words ? 2.2 : 2.6},
                              {say(OrderPhrase::what), in_words ? 1.9 : 3.0},
                              {say(OrderPhrase::size), in_words ? 1.3 : 2.4},
                              {say(OrderPhrase::needed), in_words ? 2.7 : 1.1, true},
                              {say(OrderPhrase::in_hand), 1.1, true},
                              {say(OrderPhrase::to_order), in_words ? 2.9 : 1.2, true},
                              {say(OrderPhrase::their_no), in_words ? 1.0 : 1.4},
                              {say(OrderPhrase::here), 0.7}},
                  .size = 3.0};
  std::vector<std::string> notes;
  for (const OrderItem& item : items) {
    if (item.group != group || item.supplier != supplier)
      continue;
    table.rows.push_back({{.text = item.name},
                          {.text = item.what},
                          {.text = item.size},
                          {.text = needed_text(item)},
                          {.text = item.in_hand == 0 ? "" : amount_text(item, item.in_hand)},
                          {.text = to_order_text(item), .bold = true},
                          cell_to_write,
                          cell_to_tick});
    for (const std::string& note : item.notes)
      notes.push_back(item.name + ": " + note + ".");
  }
  if (table.rows.empty())
    return;
  page.heading(heading_of(group), 4.2);
  page.table(table);
  for (const std::string& note : notes)
    page.text(note, small);
}

bool orders_line(const std::vector<OrderItem>& items) {
  return std::any_of(items.begin(), items.end(), [](const OrderItem& item) {
    return item.in_metres && item.group == "Lines" && !item.nothing_to_order();
  });
}

std::string stays_text(const OrderItem& item) {
  return joined(item.stays, "; ",
                [&](const auto& stay) { return stay.first + " " + amount_text(item, stay.second); });
}

Table table_of(const std::vector<OrderItem>& items) {
  Table table{.title = say(OrderPhrase::order_list),
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
    table.rows.push_back({item.group, item.name, item.what, item.size, item.supplier, needed_text(item),
                          item.in_metres && item.in_hand == 0 ? "" : amount_text(item, item.in_hand),
                          to_order_text(item), stays_text(item), joined(item.notes, "; ")});
  return table;
}

/// The order to one supplier, without what is in hand.
Table order_to(const std::vector<OrderItem>& items, const std::string& supplier, std::string title) {
  Table table{.title = std::move(title),
              .columns = {{say(OrderPhrase::to_order), true},
                          {say(OrderPhrase::item)},
                          {say(OrderPhrase::size)},
                          {say(OrderPhrase::what)}}};
  for (const OrderItem& item : items) {
    if (item.supplier != supplier)
      continue;
    if (!item.nothing_to_order())
      table.rows.push_back({to_order_text(item), item.name, item.size, item.what});
    for (const std::string& note : item.notes)
      table.notes.push_back(item.name + ": " + note + ".");
  }
  if (table.rows.empty())
    table.notes.insert(table.notes.begin(), say(OrderPhrase::nothing_is_to_be_ordered));
  return table;
}

/// What is to be ordered and nothing else, as a message to whoever sells it.
std::string order_text(const CheckedRig& checked, const std::vector<OrderItem>& items,
                       const std::string& boat) {
  std::string text = say(OrderPhrase::order_list_of, boat);
  if (const std::string waiting = waiting_words(checked); !waiting.empty())
    text += say(OrderPhrase::draft_not_to_be_cut, waiting);
  if (const std::string states = states_of_pieces(checked); !states.empty())
    text += say(OrderPhrase::pieces_of_line, states);
  const std::vector<std::string> suppliers = suppliers_of(items);
  for (const std::string& supplier : suppliers) {
    const std::string title = !supplier.empty()      ? say(OrderPhrase::from, supplier)
                              : suppliers.size() > 1 ? say(OrderPhrase::supplier_not_stated)
                                                     : std::string();
    text += "\n" + render_text(order_to(items, supplier, title));
  }
  if (items.empty())
    text += say(OrderPhrase::rig_file_states_nothing_to);
  if (orders_line(items))
    text += "\n" + say(OrderPhrase::line_is_ordered_in_tenths) + "\n";
  return say(OrderPhrase::inch_sizes_and_metric_sizes, text, identity_words(checked));
}

} // namespace

std::vector<Drawing> order_pages(const CheckedRig& checked, const std::vector<OrderItem>& items,
                                 const std::string& boat, PaperSize size) {
  PageFlow page(size, {.name = say(OrderPhrase::order_list),
                       .about = identity_words(checked),
                       .draft = waiting_lines(checked)});
  page.text(say(OrderPhrase::order_list_capitals, boat), {.size = 7.0, .bold = true, .indent = 0.0});
  page.text(say(OrderPhrase::inch_size_and_metric_size), small);
  if (const std::string states = states_of_pieces(checked); !states.empty())
    page.text(say(OrderPhrase::pieces_of_line_begins, states), {.size = 3.4, .bold = true, .indent = 0.0});
  page.to_write(say(OrderPhrase::account_deliver_to_wanted_by));
  const std::vector<std::string> suppliers = suppliers_of(items);
  for (const std::string& supplier : suppliers) {
    // Where nobody names a supplier, or all name the same, nothing is said of it or it is said once.
    if (suppliers.size() > 1 || !supplier.empty())
      page.heading(
          supplier.empty() ? say(OrderPhrase::supplier_not_stated) : say(OrderPhrase::from, supplier), 5.2);
    for (const char* group : {"Lines", "Hardware", "Small parts"})
      add_group(items, supplier, group, page);
  }
  if (items.empty())
    page.text(say(OrderPhrase::rig_file_states_nothing_to_order));
  if (orders_line(items))
    page.text(say(OrderPhrase::line_is_ordered_in_tenths), small);
  return page.pages(say(OrderPhrase::order_list_of_begins, boat),
                    say(OrderPhrase::lines_hardware_and_small_parts));
}

BackendDescription OrderList::describe() const {
  return {.name = "order-list",
          .summary = say(OrderPhrase::what_is_to_be_bought),
          .outputs = {"order-list.txt", "order-list.html", "order-list.csv"},
          .papers = {"order-list.pdf"}};
}

OutputBundle OrderList::generate(const BackendRequest& request) const {
  const std::string boat = boat_title(request.checked);
  const std::vector<OrderItem> items = order_items(request.checked);
  OutputBundle bundle;
  bundle.files.push_back({"order-list.txt", order_text(request.checked, items, boat)});
  add_pages("order-list", say(OrderPhrase::order_list_of_begins, boat),
            order_pages(request.checked, items, boat, request.paper), bundle);
  bundle.files.push_back({"order-list.csv", render_csv(table_of(items))});
  return bundle;
}

} // namespace sheerpole
