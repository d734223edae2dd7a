#include "pages/sheets_figure.h"

#include <algorithm>

#include "pages/number_mark.h"
#include "pages/pale_paper.h"

namespace creasewright {
namespace {

constexpr double kSheetGap = 3;  // mm on the page
constexpr double kLetter = 2;    // mm, radius

struct Row {
  std::vector<const BuiltPiece*> sheets;
  double width = 0;
  double height = 0;
};

/// `perRow` sheets in each row, in their order.
std::vector<Row> inRows(const BuiltDesign& built, const std::vector<int>& pieces,
                        std::size_t perRow) {
  std::vector<Row> rows;
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    if (i % perRow == 0) rows.emplace_back();
    const BuiltPiece& piece = built.pieces.at(static_cast<std::size_t>(pieces[i]));
    Row& row = rows.back();
    row.sheets.push_back(&piece);
    row.width += piece.flat.width;
    row.height = std::max(row.height, piece.flat.height);
  }
  return rows;
}

/// How far rows shrink to fill the room, the gaps between sheets as they are.
double scaleOf(const std::vector<Row>& rows, const FigureRoom& room) {
  double height = 0;
  double scale = 1;
  for (const Row& row : rows) {
    const double gaps = kSheetGap * static_cast<double>(row.sheets.size() - 1);
    scale = std::min(scale, (room.width - 2 - gaps) / row.width);
    height += row.height;
  }
  const double gaps = kSheetGap * static_cast<double>(rows.size() - 1);
  return std::min(scale, (room.height - 2 - gaps) / height);
}

void addSheet(Drawing& out, const BuiltPiece& piece, Point at, double scale, char letter) {
  const double w = piece.flat.width * scale;
  const double h = piece.flat.height * scale;
  const std::vector<Polygon> rings{{at, at + Point{w, 0}, at + Point{w, h}, at + Point{0, h}}};
  out.paths.push_back({.role = Role::Face,
                       .rings = rings,
                       .closed = true,
                       .filled = true,
                       .colour = paleColour(piece)});
  out.paths.push_back({.role = Role::Edge, .rings = rings, .closed = true});
  addPanelLetter(out, letter, at + Point{w / 2, h / 2}, std::min({kLetter, w / 2, h / 2}));
}

}  // namespace

Drawing sheetsFigure(const BuiltDesign& built, const std::vector<int>& pieces,
                     const FigureRoom& room) {
  std::vector<Row> rows;
  double scale = 0;
  for (std::size_t perRow = 1; perRow <= pieces.size(); ++perRow) {
    std::vector<Row> tried = inRows(built, pieces, perRow);
    const double fits = scaleOf(tried, room);
    if (fits <= scale) continue;
    scale = fits;
    rows = std::move(tried);
  }
  Drawing out;
  out.height = 2 + kSheetGap * static_cast<double>(rows.size() - 1);
  for (const Row& row : rows) {
    out.height += row.height * scale;
    out.width = std::max(
        out.width, 2 + row.width * scale + kSheetGap * static_cast<double>(row.sheets.size() - 1));
  }
  char letter = 'a';
  double top = out.height - 1;
  for (const Row& row : rows) {
    double left = 1;
    for (const BuiltPiece* sheet : row.sheets) {
      addSheet(out, *sheet, {left, top - sheet->flat.height * scale}, scale, letter++);
      left += sheet->flat.width * scale + kSheetGap;
    }
    top -= row.height * scale + kSheetGap;
  }
  return out;
}

}  // namespace creasewright
