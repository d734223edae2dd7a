#pragma once

#include <QString>
#include <QStringList>

#include "pages/gift_strip.h"

namespace creasewright {

/// What the hand does at a stop of the strip: `Stage 2 of 5: raise the walls`, `Tie the ribbon`.
QString stopWords(const BuiltDesign& built, const StripStop& stop);

/// Before the first stop.
QString stripFlatWords();

}  // namespace creasewright
