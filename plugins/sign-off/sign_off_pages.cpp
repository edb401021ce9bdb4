#include "plugins/sign-off/sign_off_pages.hpp"

namespace sheerpole {

namespace {

constexpr TextLook small{.size = 3.0, .bold = false, .indent = 0.0};

void add_head(std::string_view name, const std::string& boat, PageFlow& page) {
  page.text(std::string(name) + "   " + boat, {.size = 7.0, .bold = true, .indent = 0.0});
  page.space(1.0);
}

void add_signatures(PageFlow& page) {
  page.room_for(40.0);
  page.space(3.0);
  page.to_write("Not reached or not seen, and why:");
  page.to_write("");
  page.to_write("Looked at by, day:");
  page.to_write("Looked at a second time by, day:");
}

FlowCell tick() {
  return {.text = "", .bold = false, .tick = true, .rule = false};
}

std::string shown_place(const Fastening& fastening) {
  if (!fastening.height)
    return fastening.aloft ? "aloft" : "below";
  return format_fixed(fastening.height->metres(), 1) + " m, " + fastening.place;
}

} // namespace

std::vector<Drawing> sign_off_pages(const CheckedRig& checked, const std::string& boat, PaperSize size) {
  PageFlow page(size, {.name = "Sign-off, pins and threads", .about = boat, .draft = {}});
  add_head("SIGN-OFF", boat, page);
  page.text(
      "Every pin and thread from aloft to deck, by the height of its end of the stay above the waterline. "
      "Tick what you have seen with your own eyes; what you did not reach stays open. Masts come down "
      "for want of a pin that could wait.",
      small);
  page.notice(
      "Aloft: two lines, a harness, a second person on deck, and nobody below. Sharp ends of split pins "
      "cut hands and sails. Do not undo a pin of a loaded stay.",
      {.size = 3.4, .bold = true, .indent = 0.0});
  FlowTable table{.columns = {{"place", 2.2},
                              {"stay", 2.1},
                              {"joint", 3.0},
                              {"what", 1.9},
                              {"secured by", 2.1},
                              {"in", 0.6},
                              {"secured", 1.1},
                              {"again", 0.9}},
                  .rows = {},
                  .size = 2.9};
  for (const Fastening& one : pin_list(checked))
    table.rows.push_back({{.text = shown_place(one)},
                          {.text = one.stay},
                          {.text = one.joint},
                          {.text = one.what},
                          one.secured.empty()
                              ? FlowCell{.text = "", .bold = false, .tick = false, .rule = true}
                              : FlowCell{.text = one.secured},
                          tick(),
                          tick(),
                          tick()});
  if (table.rows.empty())
    page.text("The rig file states no jaw, no shackle and no screw. Write down what you find: every pin, "
              "seizing and "
              "knot by which a stay hangs.");
  else {
    page.table(table);
    page.text("A line in place of what secures it: the rig file does not say; write what you find. "
              "Seizings, knots "
              "and lashings are looked at as well; the list names pins and threads alone.",
              small);
  }
  add_signatures(page);
  return page.pages("Sign-off of " + boat, "Every pin and thread with boxes to tick.");
}

std::vector<Drawing> replacement_pages(const CheckedRig& checked, const std::string& boat, PaperSize size) {
  PageFlow page(size, {.name = "One stay at a time", .about = boat, .draft = {}});
  add_head("ONE STAY AT A TIME", boat, page);
  page.text(
      "Number the stays in the order in which you will replace them, and write what holds the mast while "
      "each is off. Go on to the next only when this one is pinned, secured and hand-tight. This sheet is "
      "no calculation of what the mast stands: a rigger decides the order on the boat.",
      small);
  page.notice(
      "A mast that has lost one stay stands by what you put in its place. Two halyards, made off and "
      "tight, before the pin comes out; nobody aloft on a mast whose stays are being changed; no boat "
      "passing close by. Never two stays at once.",
      {.size = 3.4, .bold = true, .indent = 0.0});
  FlowTable table{.columns = {{"order", 0.9},
                              {"stay", 2.6},
                              {"held meanwhile by", 3.2},
                              {"tight", 0.8},
                              {"old off", 0.9},
                              {"new on", 0.9},
                              {"pinned", 0.95},
                              {"secured", 1.05}},
                  .rows = {},
                  .size = 3.2};
  const FlowCell line{.text = "", .bold = false, .tick = false, .rule = true};
  for (const Stay& stay : checked.rig().stays)
    table.rows.push_back({line, {.text = stay.name}, line, tick(), tick(), tick(), tick(), tick()});
  if (table.rows.empty())
    page.text("The rig file states no stays.");
  else
    page.table(table);
  page.text(
      "Compare each old stay with the new one before it goes up: bearing to bearing, at the same pull.",
      small);
  page.text("Local codes and a licensed professional rigger come before this sheet.", small);
  add_signatures(page);
  return page.pages("Replacing the stays of " + boat, "One stay at a time, with boxes to tick.");
}

} // namespace sheerpole
