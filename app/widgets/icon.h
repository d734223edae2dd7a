#pragma once

#include <QIcon>
#include <QString>

namespace creasewright {

/// One of our line icons (resources/icons/<name>.svg), drawn in the theme's ink whenever it is
/// painted, so that it follows a change of palette.
QIcon lineIcon(const QString& name);

}  // namespace creasewright
