#pragma once

#include "drawing/drawing.h"
#include "net/net.h"

namespace creasewright {

/// The words of a net, each turned in the frame of its own panel: a net tells turns as it is laid
/// flat.
std::vector<Inscription> wordsOfPanels(const Net& net);

/// Words that are turned in the frame of their panel, as they are read on its outside: their plane
/// is that of the panel, which is drawn from the inside.
TextItem textOnPanel(const Inscription& words);

}  // namespace creasewright
