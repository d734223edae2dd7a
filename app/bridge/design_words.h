#pragma once

#include <QString>
#include <QStringList>

#include "document/design.h"

namespace creasewright {

/// What a person writes about a design.
struct DesignWords {
  QString title;
  QStringList tags;
  QString notes;
};

DesignWords wordsOf(const Design& design);
/// The design with other words; blanks about them and empty tags are left out.
Design withWords(Design design, const DesignWords& words);

}  // namespace creasewright
