#pragma once

#include <QString>

#include "base/problem.h"

namespace creasewright {

/// The problem as one or two short sentences in the user's language: what, where, what would do.
QString problemSentence(const Problem& problem, Unit unit);

}  // namespace creasewright
