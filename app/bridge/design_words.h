#pragma once

#include <QString>
#include <QStringList>

#include "document/build.h"

namespace creasewright {

/// What a person writes about a design.
struct DesignWords {
  QString title;
  QStringList tags;
  QString notes;
};

/// Of the style that it is made from: of its own one, or of the built-in one.
inline const std::string& styleIdOf(const Design& design) {
  return design.ownStyle ? design.ownStyle->id : design.styleId;
}

DesignWords wordsOf(const Design& design);
/// The design's title, or its style's where it has none: never empty.
QString designTitle(const BuiltDesign& built);

/// The design with other words; blanks about them and empty tags are left out.
Design withWords(Design design, const DesignWords& words);

}  // namespace creasewright
