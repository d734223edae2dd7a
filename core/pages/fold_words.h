#pragma once

#include <span>
#include <vector>

#include "drawing/drawing.h"
#include "folding/surfaces/scene.h"
#include "pages/panel_look.h"

namespace creasewright {

/// Adds the words of a net whose panels begin at `first` in a larger one, each turned in the frame
/// of its own panel.
void addWords(const Net& net, int first, std::vector<Inscription>& words);

/// What is seen of words on the outside of folded panels, in picture coordinates: each lies in the
/// plane of its panel, cut off exactly where other card hides it, with the white plate under it
/// where the paper has one. `words` are turned in the frames of their panels.
Drawing wordsSeen(const FoldPicture& picture, std::span<const PanelLook> looks,
                  std::span<const Inscription> words);

}  // namespace creasewright
