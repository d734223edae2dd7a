#pragma once

#include <QString>

#include "drawing/drawing.h"

namespace creasewright {

/// A label of a drawing in the user's language, lengths in `unit`. Unknown codes show themselves.
QString labelText(const Label& label, Unit unit);

/// labelText as the function that core's writers take.
Wording wordingIn(Unit unit);

}  // namespace creasewright
