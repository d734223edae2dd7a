#pragma once

#include <QString>
#include <string>

#include "extras/punch.h"
#include "fit/card.h"

namespace creasewright {

/// A card's name in the user's language, with its colours. Cards that come with the program have a
/// translation; a person's own stand as they are written.
QString cardName(const Card& card);

/// `sage`, or `#8FA88A` where it has no name.
QString colourName(Colour colour);

/// `Dots 18 mm`, with its colours where it has others than its own.
QString paperName(const PaperPattern& paper);

/// The same for a sheet or a supply.
QString stockName(const std::string& name);

/// `2 in circle`: in inches where it is whole sixteenths of them, as such punches are sold and
/// called, else in millimetres.
QString punchName(const Punch& punch);

}  // namespace creasewright
