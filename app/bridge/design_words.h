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

DesignWords wordsOf(const Design& design);
/// The design's title, or its style's where it has none: never empty.
QString designTitle(const BuiltDesign& built);

/// The design with other words; blanks about them and empty tags are left out.
Design withWords(Design design, const DesignWords& words);

}  // namespace creasewright
