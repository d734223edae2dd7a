#include "making/cut_marks.h"

#include <algorithm>
#include <cmath>

namespace creasewright {
namespace {

constexpr double kShortestCut = 6;  // mm
constexpr double kBesideScore = 1;  // mm

/// All cuts on one line.
struct CutLine {
  double at;
  std::vector<Span> spans;
};

std::vector<CutLine> cutsByLine(const LineView& view) {
  std::vector<CutLine> lines;
  for (const Segment& cut : view.cuts) {
    const Span span{std::min(cut.a.y, cut.b.y), std::max(cut.a.y, cut.b.y)};
    const auto found = std::ranges::find_if(
        lines, [&](const CutLine& line) { return std::abs(line.at - cut.a.x) <= kSameLine; });
    if (found == lines.end())
      lines.push_back({cut.a.x, {span}});
    else
      found->spans.push_back(span);
  }
  std::ranges::sort(lines, {}, &CutLine::at);
  for (CutLine& line : lines) line.spans = joined(std::move(line.spans));
  return lines;
}

bool worthMarking(const LineView& view, double at) {
  if (at < kBesideScore || at > view.width - kBesideScore) return false;
  return std::ranges::none_of(view.lines, [&](const ScoreLine& line) {
    return line.full && std::abs(line.at - at) <= kBesideScore;
  });
}

/// What a mark on the line must not run over: card, and scores for folding on the same line.
std::vector<Span> obstacles(const LineView& view, double at) {
  std::vector<Span> spans = view.card(at);
  for (const ScoreLine& line : view.lines) {
    if (std::abs(line.at - at) > kSameLine) continue;
    spans.insert(spans.end(), line.valleys.begin(), line.valleys.end());
    spans.insert(spans.end(), line.mountains.begin(), line.mountains.end());
  }
  return joined(std::move(spans));
}

void markLine(const LineView& view, const CutLine& line, const std::vector<double>& fullAcross,
              std::vector<ShortRun>& marks) {
  const std::vector<Span> inTheWay = obstacles(view, line.at);
  double fromStart = 0;
  double fromEnd = view.height;
  for (const Span& cut : line.spans) {
    if (cut.length() < kShortestCut) continue;
    if (lineNumber(fullAcross, cut.high, false) > 0 && !overlaps(inTheWay, 0, cut.high))
      fromStart = std::max(fromStart, cut.high);
    else if (lineNumber(fullAcross, cut.low, true) > 0 && !overlaps(inTheWay, cut.low, view.height))
      fromEnd = std::min(fromEnd, cut.low);
  }
  if (fromStart > 0) marks.push_back({line.at, fromStart, false, ScorePurpose::CutMark, true});
  if (fromEnd < view.height) marks.push_back({line.at, fromEnd, true, ScorePurpose::CutMark, true});
}

}  // namespace

int lineNumber(const std::vector<double>& fullAcross, double at, bool fromEnd) {
  for (std::size_t i = 0; i < fullAcross.size(); ++i)
    if (std::abs(fullAcross[i] - at) <= kSameLine)
      return static_cast<int>(fromEnd ? fullAcross.size() - i : i + 1);
  return 0;
}

std::vector<ShortRun> findCutMarks(const LineView& view, const std::vector<double>& fullAcross) {
  std::vector<ShortRun> marks;
  for (const CutLine& line : cutsByLine(view))
    if (worthMarking(view, line.at)) markLine(view, line, fullAcross, marks);
  return marks;
}

}  // namespace creasewright
