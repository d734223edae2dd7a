#pragma once

#include <QString>
#include <QStringList>

#include "bridge/text.h"

namespace creasewright {

/// Of choices with a name each: score forms, kinds, sides, views.
QString namesOf(const auto& all, const QString& between) {
  QStringList names;
  for (const auto& each : all) names.append(text(each.name));
  return names.join(between);
}

}  // namespace creasewright
