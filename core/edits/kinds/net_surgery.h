#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "geometry/transform.h"
#include "net/piece.h"

namespace creasewright {

/// A place that maps panel numbers to others; -1 for a panel that goes.
using PanelNumbers = std::vector<int>;

/// Gives the panels of a net other numbers: panels that go take with them all folds, joints, cuts,
/// texts and marks that name them. Parents must stay before their children.
void renumberPanels(Net& net, const PanelNumbers& to);

/// Folds in which nothing is folded any more, but was in `before`, are taken out of the order.
void dropEmptyStages(Net& net, const Net& before);

/// A fold stage called `code` before all others, or after them: the one that is there already, or a
/// new one. Its number.
int stageAtStart(Net& net, std::string_view code);
int stageAtEnd(Net& net, std::string_view code);

/// `wanted`, or with a number after it where the net has a panel of that name.
std::string freePanelId(const Net& net, const std::string& wanted);

/// The panel and all that hang on it.
std::vector<int> withAllBeyond(const Net& net, int panel);

/// Whether what a piece is needed for names a panel: its room for the product, and what holds
/// pieces together.
bool isNeeded(const Piece& piece, const std::vector<Piece>& all, const std::string& panel);

Polyline placedBy(const Transform& frame, const Polyline& points);
Segment placedBy(const Transform& frame, const Segment& line);

/// What lies on a panel, but for its outline, moves to panel `to` by `frame` where `side` is
/// positive (of points in the frame of the panel it leaves): openings, slits, texts, marks, and the
/// folds of children. False where something lies on both sides.
bool moveContents(Net& net, int from, int to, const Transform& frame,
                  const std::function<double(Point)>& side);

}  // namespace creasewright
