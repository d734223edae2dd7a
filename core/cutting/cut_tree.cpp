#include "cutting/cut_tree.h"

#include <algorithm>
#include <compare>

namespace creasewright {
namespace {

using Kind = CutNode::Kind;

void gather(const CutNode& node, bool upright, std::vector<const CutNode*>& parts) {
  if (node.kind != Kind::Cut || node.upright != upright) {
    parts.push_back(&node);
    return;
  }
  for (const CutNode& part : node.parts) gather(part, upright, parts);
}

Length along(const CutNode& node, bool upright) { return upright ? node.width : node.height; }

/// Orders parts by how they are cut, whatever their place; alike ones are equal.
std::strong_ordering order(const CutNode& a, const CutNode& b) {
  if (const auto kind = a.kind <=> b.kind; kind != 0) return kind;
  if (const auto width = a.width.nm() <=> b.width.nm(); width != 0) return width;
  if (const auto height = a.height.nm() <=> b.height.nm(); height != 0) return height;
  if (a.kind == Kind::Blank) return a.demand <=> b.demand;
  if (a.kind == Kind::Offcut) return std::strong_ordering::equal;
  if (const auto way = a.upright <=> b.upright; way != 0) return way;
  if (const auto at = a.at.nm() <=> b.at.nm(); at != 0) return at;
  for (std::size_t i = 0; i < a.parts.size(); ++i)
    if (const auto part = order(a.parts[i], b.parts[i]); part != 0) return part;
  return std::strong_ordering::equal;
}

CutNode movedBy(CutNode node, Length dx, Length dy) {
  node.x += dx;
  node.y += dy;
  for (CutNode& part : node.parts) part = movedBy(std::move(part), dx, dy);
  return node;
}

CutNode movedInto(const CutNode& part, const CutNode& frame) {
  return movedBy(part, frame.x - part.x, frame.y - part.y);
}

/// Cuts `frame` into the parts from `index` on, which fill it.
CutNode cutInto(const CutNode& frame, bool upright, const std::vector<CutNode>& parts,
                std::size_t index = 0) {
  if (index + 1 == parts.size()) return movedInto(parts[index], frame);
  CutNode node = cutAt(frame, upright, along(parts[index], upright));
  node.parts[0] = movedInto(parts[index], node.parts[0]);
  node.parts[1] = cutInto(node.parts[1], upright, parts, index + 1);
  return node;
}

CutNode offcut(const CutNode& frame) {
  CutNode node = frame;
  node.kind = Kind::Offcut;
  node.parts.clear();
  return node;
}

/// The parts of a cut rectangle, each tidied, without the offcuts; these are added up in `left`.
std::vector<CutNode> usefulParts(const CutNode& node, Length& left) {
  std::vector<CutNode> useful;
  for (const CutNode* part : partsAlong(node)) {
    CutNode tidy = tidied(*part);
    if (tidy.kind == Kind::Offcut)
      left += along(tidy, node.upright);
    else
      useful.push_back(std::move(tidy));
  }
  return useful;
}

/// Where nothing is left over, the last part needs no setting of its own if it is the only one of
/// its kind: of sorted parts the widest such.
void leaveOneLast(std::vector<CutNode>& parts) {
  const auto isAlone = [&](std::size_t i) {
    return (i == 0 || order(parts[i - 1], parts[i]) != 0) &&
           (i + 1 == parts.size() || order(parts[i], parts[i + 1]) != 0);
  };
  if (isAlone(parts.size() - 1)) return;
  for (std::size_t i = 0; i < parts.size(); ++i)
    if (isAlone(i)) {
      std::rotate(parts.begin() + static_cast<std::ptrdiff_t>(i),
                  parts.begin() + static_cast<std::ptrdiff_t>(i) + 1, parts.end());
      return;
    }
}

}  // namespace

CutNode cutAt(const CutNode& frame, bool upright, Length at) {
  CutNode node = frame;
  node.kind = CutNode::Kind::Cut;
  node.upright = upright;
  node.at = at;
  CutNode first = frame;
  CutNode second = frame;
  if (upright) {
    first.width = at;
    second.x = frame.x + at;
    second.width = frame.width - at;
  } else {
    first.height = at;
    second.y = frame.y + at;
    second.height = frame.height - at;
  }
  node.parts = {first, second};
  return node;
}

CutNode blankIn(const CutNode& frame, Length width, Length height, int item, bool turned) {
  if (width < frame.width) {
    CutNode node = cutAt(frame, true, width);
    node.parts[0] = blankIn(node.parts[0], width, height, item, turned);
    return node;
  }
  if (height < frame.height) {
    CutNode node = cutAt(frame, false, height);
    node.parts[0] = blankIn(node.parts[0], width, height, item, turned);
    return node;
  }
  CutNode node = frame;
  node.kind = CutNode::Kind::Blank;
  node.demand = item;
  node.turned = turned;
  return node;
}

void scale(CutNode& node, std::int64_t unit) {
  for (Length* length : {&node.x, &node.y, &node.width, &node.height, &node.at})
    *length = *length * unit;
  for (CutNode& part : node.parts) scale(part, unit);
}

void limit(CutNode& node, std::vector<int>& most) {
  if (node.kind == Kind::Blank) {
    const auto d = static_cast<std::size_t>(node.demand);
    if (most[d] > 0) {
      --most[d];
      return;
    }
    node.kind = Kind::Offcut;
    node.demand = -1;
    return;
  }
  for (CutNode& part : node.parts) limit(part, most);
}

std::vector<const CutNode*> partsAlong(const CutNode& node) {
  std::vector<const CutNode*> parts;
  gather(node, node.upright, parts);
  return parts;
}

bool cutAlike(const CutNode& a, const CutNode& b) { return order(a, b) == 0; }

CutNode tidied(const CutNode& node) {
  if (node.kind != Kind::Cut) return node;
  Length left;
  std::vector<CutNode> parts = usefulParts(node, left);
  if (parts.empty()) return offcut(node);
  std::ranges::stable_sort(parts, [&](const CutNode& a, const CutNode& b) {
    const Length wide = along(a, node.upright);
    const Length other = along(b, node.upright);
    return wide != other ? wide > other : order(a, b) < 0;
  });
  if (left == Length()) leaveOneLast(parts);
  if (left > Length()) {
    CutNode rest = offcut(node);
    (node.upright ? rest.width : rest.height) = left;
    parts.push_back(std::move(rest));
  }
  return cutInto(offcut(node), node.upright, parts);
}

}  // namespace creasewright
