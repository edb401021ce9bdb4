#include "backend/diagram/views/view_labels.hpp"

#include "backend/diagram/sheet.hpp"
#include "backend/diagram/views/view_drawing.hpp"
#include "backend/diagram/views/view_frame.hpp"
#include "backend/drawing/label_text.hpp"
#include "backend/drawing/svg_writer.hpp"
#include "wording/model_words.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace sheerpole {

namespace {

constexpr double widest_label = 30.0; // then it is set in two lines

// Two columns of names down the longest side of an A0 sheet hold about as many; a boat has some tens.
constexpr std::size_t most_names = 400;

struct Candidate {
  LabelRequest request;
  Side side = Side::centre;
  double across = 0.0; ///< of its middle, which decides its column
};

struct NamedMark {
  std::string text;
  std::string id;
  PaperPoint at;
  Side side = Side::centre;
};

LabelRequest request_for(const std::string& text, PaperPoint site, double size, bool bold, std::string id) {
  return {wrap_label(text, size, widest_label, bold), site, size, bold, bold, std::move(id)};
}

/// One mark for each point, one for a pair that coincides.
std::vector<NamedMark> named_marks(const Rig& rig, const ViewFrame& frame) {
  std::vector<NamedMark> marks;
  for (const Point& point : rig.points) {
    const PaperPoint at = frame.at(point.position);
    const bool twin_is_here =
        point.twin && near_each_other(at, frame.at(rig[*point.twin].position), coincident);
    const bool named_before =
        twin_is_here && std::any_of(marks.begin(), marks.end(), [&](const NamedMark& mark) {
          return mark.text == point.base && near_each_other(mark.at, at, coincident);
        });
    if (named_before)
      continue;
    const bool column_tells_side = frame.kind != ViewKind::side;
    marks.push_back(
        {twin_is_here || column_tells_side ? point.base : point.name, point.name, at, point.side});
  }
  return marks;
}

/// Marks of one side that fall together share a label, because no leader could tell them apart.
std::vector<NamedMark> merged(const std::vector<NamedMark>& marks) {
  constexpr double one_mark = 0.4;
  std::vector<NamedMark> result;
  for (const NamedMark& mark : marks) {
    const auto same = std::find_if(result.begin(), result.end(), [&](const NamedMark& other) {
      return other.side == mark.side && near_each_other(other.at, mark.at, one_mark);
    });
    if (same == result.end())
      result.push_back(mark);
    else
      same->text += ", " + mark.text;
  }
  return result;
}

/// True where a reader could not see which of the marks a leader means.
bool in_a_crowd(const std::vector<NamedMark>& marks, const NamedMark& mark) {
  constexpr double close = 2.0;
  constexpr int crowd = 6; // itself and five more
  return std::count_if(marks.begin(), marks.end(), [&](const NamedMark& other) {
           return near_each_other(other.at, mark.at, close);
         }) >= crowd;
}

std::vector<Candidate> without_port_twins(std::vector<Candidate> candidates, ViewLabels& labels) {
  std::vector<Candidate> kept;
  for (const Candidate& candidate : candidates) {
    const bool said =
        candidate.side == Side::port &&
        std::any_of(candidates.begin(), candidates.end(), [&](const Candidate& other) {
          return other.side == Side::starboard && other.request.lines == candidate.request.lines;
        });
    if (said)
      labels.port_left_out = true;
    else
      kept.push_back(candidate);
  }
  return kept;
}

void put_by_side(std::vector<Candidate> candidates, ViewLabels& labels) {
  std::vector<LabelRequest> amidships;
  for (Candidate& candidate : candidates)
    (candidate.side == Side::port        ? labels.left
     : candidate.side == Side::starboard ? labels.right
                                         : amidships)
        .push_back(std::move(candidate.request));
  // Where port labels were left out the left column is to be as narrow as can be.
  for (LabelRequest& request : amidships)
    (!labels.port_left_out && labels.left.size() < labels.right.size() ? labels.left : labels.right)
        .push_back(std::move(request));
}

void put_by_distance(std::vector<Candidate> candidates, double middle, ViewLabels& labels) {
  std::stable_sort(candidates.begin(), candidates.end(),
                   [](const Candidate& a, const Candidate& b) { return a.across < b.across; });
  const std::size_t most = (candidates.size() * 3 + 4) / 5;
  const auto nearer_left = static_cast<std::size_t>(
      std::count_if(candidates.begin(), candidates.end(),
                    [middle](const Candidate& candidate) { return candidate.across < middle; }));
  const std::size_t left = std::clamp(nearer_left, candidates.size() - most, most);
  for (std::size_t i = 0; i < candidates.size(); ++i)
    (i < left ? labels.left : labels.right).push_back(std::move(candidates[i].request));
}

} // namespace

ViewLabels view_labels(const Rig& rig, const ViewFrame& frame, const ViewExtent& extent, bool both_sides,
                       LabelSites sites) {
  ViewLabels labels;
  const std::string view = id_of(frame);
  // The last of its column: what is amidships goes by how many labels of the rig stand on each side.
  const auto finished = [&] {
    if (frame.kind != ViewKind::deck)
      labels.left.push_back(request_for("waterline", waterline_end(frame, extent, true), small_text_size,
                                        false, view + "-label-waterline"));
    return labels;
  };
  if (rig.stays.size() + rig.points.size() > most_names) {
    labels.too_many = true;
    return finished();
  }
  std::vector<Candidate> candidates;

  const std::vector<DrawnStay> stays = drawn_stays(rig, frame);
  for (std::size_t i = 0; i < stays.size(); ++i) {
    const Stay& stay = *stays[i].stay;
    std::string text = frame.mast.empty() ? titled(rig, stay) : shown_name(stay);
    if (frame.kind == ViewKind::side && stay.side != Side::centre && !stays[i].both_sides)
      text += fmt::format(", {}", name_of(stay.side));
    const PaperPoint middle = middle_of(stays[i]);
    candidates.push_back({request_for(text, sites == LabelSites::exact ? label_site(stays, i) : middle,
                                      stay_text_size, true, view + "-label-stay-" + element_id(stay.name)),
                          stays[i].both_sides ? Side::centre : stay.side, middle.x});
  }

  std::vector<NamedMark> marks = named_marks(rig, frame);
  if (frame.kind == ViewKind::deck) {
    const std::vector<NamedMark> all = marks;
    std::erase_if(marks, [&](const NamedMark& mark) { return in_a_crowd(all, mark); });
    labels.crowded = marks.size() < all.size();
  }
  for (const NamedMark& mark : merged(marks))
    candidates.push_back({request_for(mark.text, mark.at, small_text_size, false,
                                      view + "-label-point-" + element_id(mark.id)),
                          mark.side, mark.at.x});

  const double middle = frame.origin.x + (extent.left + extent.right) / 2 * frame.millimetres_per_metre;
  if (frame.kind == ViewKind::side)
    put_by_distance(std::move(candidates), middle, labels);
  else
    put_by_side(both_sides ? std::move(candidates) : without_port_twins(std::move(candidates), labels),
                labels);
  return finished();
}

} // namespace sheerpole
