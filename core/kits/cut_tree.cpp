#include "kits/cut_tree.h"

namespace creasewright {

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

}  // namespace creasewright
