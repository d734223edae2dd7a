#include "pages/machine_sheets.h"

#include <algorithm>

#include "drawing/arrange.h"
#include "drawing/net_drawing.h"

namespace creasewright {

std::optional<std::vector<Drawing>> machineSheets(const BuiltDesign& design,
                                                  const std::string& piece, const PartSize& sheet) {
  std::vector<Drawing> parts;
  for (const BuiltPiece& built : design.pieces) {
    if (!piece.empty() && built.name != piece) continue;
    const Drawing net = drawNetLines(built.net, built.flat, {}, {.sheet = false, .waste = false});
    parts.insert(parts.end(), static_cast<std::size_t>(std::max(1, built.count)), net);
  }
  std::vector<PartSize> sizes;
  for (const Drawing& part : parts) sizes.push_back({part.width, part.height});
  const Bounds room{{kMachineGap, kMachineGap},
                    {sheet.width - kMachineGap, sheet.height - kMachineGap}};
  const std::optional<PartPacking> packing = packParts(sizes, {}, room, kMachineGap);
  if (!packing) return std::nullopt;
  std::vector<Drawing> sheets(packing->newPages, Drawing{sheet.width, sheet.height, {}, {}});
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const PackedPart& at = packing->parts[i];
    Drawing part = at.turned ? turnedLeft(parts[i]) : parts[i];
    append(sheets[at.page], moved(std::move(part), at.box.low));
  }
  return sheets;
}

}  // namespace creasewright
