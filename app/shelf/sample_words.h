#pragma once

#include "document/design.h"

namespace creasewright {

/// A sample gift with its title and notes in the language of the window; files hold the English
/// ones.
Design inReadersWords(Design sample);

/// Whether a title or a note of a sample is known to those who translate.
bool isSampleText(const std::string& text);

}  // namespace creasewright
