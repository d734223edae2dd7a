#pragma once

#include <QString>

#include "fit/fit.h"

namespace creasewright {

/// What a fitted measure is made of, as a sum that adds up in the numbers shown:
/// `Product 50 + ease 3 + card 0.72 = 53.72 mm, rounded up to 54 mm.`
QString fitSentence(const FitReason& reason, Unit unit);

}  // namespace creasewright
