#pragma once

#include <string>

#include "drawing/drawing.h"

namespace creasewright::testing {

/// What a label says without a language: its code, or the text that it is.
inline std::string codeOrText(const Label& label) {
  return label.code.empty() ? label.literal : label.code;
}

}  // namespace creasewright::testing
