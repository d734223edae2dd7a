#pragma once

#include <optional>
#include <string>
#include <vector>

#include "cli/grammar.h"
#include "document/design.h"
#include "making/score_hand.h"

namespace creasewright {

/// The arguments that bring photos into a design.
struct PhotoOptions {
  std::string finished;               ///< PICTURE
  std::vector<std::string> steps;     ///< N=PICTURE
  std::vector<std::string> captions;  ///< box=WORDS or N=WORDS
  std::vector<std::string> removed;   ///< box or N

  [[nodiscard]] bool any() const {
    return !finished.empty() || !steps.empty() || !captions.empty() || !removed.empty();
  }
  /// The files that are read.
  [[nodiscard]] std::vector<std::string> pictures() const;
};

/// --photo, --step-photo, --caption.
void addPhotos(Grammar& grammar, PhotoOptions& into);
/// --remove.
void addPhotoRemoval(Grammar& grammar, PhotoOptions& into);

/// The design with the photos, steps counted as its guide for `hand` counts them. Nothing: the
/// problem is told.
std::optional<Design> withPhotos(Design design, const PhotoOptions& options, Hand hand);

}  // namespace creasewright
