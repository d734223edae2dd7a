#pragma once

#include <QString>
#include <vector>

#include "document/build.h"
#include "pages/fold_letters.h"

namespace creasewright {

/// What a step calls the panels of its piece: by the letters of its figure, else by name.
class PanelNames {
 public:
  explicit PanelNames(const BuiltPiece& piece, std::vector<PanelLetter> letters = {})
      : piece_(piece), letters_(std::move(letters)) {}

  /// Without quotes.
  [[nodiscard]] QString of(int panel) const;
  /// In quotes. Several of one kind are told together, “corner tab” (all 4), only when they are all
  /// there are of it.
  [[nodiscard]] QString list(const std::vector<int>& panels) const;

 private:
  const BuiltPiece& piece_;
  std::vector<PanelLetter> letters_;
};

}  // namespace creasewright
