#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "document/build.h"
#include "drawing/drawing.h"
#include "guide/guide.h"
#include "pages/figure_room.h"
#include "papers/guide/guide_form.h"

namespace creasewright {

/// A photo as a guide shows it. `alt` says what it shows; `caption` stands under it where the maker
/// wrote one.
struct GuidePhoto {
  const Photo* photo = nullptr;
  QString alt;
  QString caption;
};

/// The photos of a design where its guide shows them: those that can be decoded and whose step is
/// there. Holds pointers into the design.
struct GuidePhotos {
  GuidePhotos(const Guide& guide, const BuiltDesign& built);

  std::optional<GuidePhoto> finished;
  std::vector<std::optional<GuidePhoto>> steps;  ///< by Guide::steps
};

/// Why photos of the design stand in no guide, each as a sentence.
QStringList photoWarnings(const BuiltDesign& built, Hand hand);

/// The photo as large as the room lets it be, its caption below.
Drawing photoBlock(const GuidePhoto& photo, const FigureRoom& room, const GuideType& type);

}  // namespace creasewright
