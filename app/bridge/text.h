#pragma once

#include <QString>
#include <string_view>

#include "units/length.h"

namespace creasewright {

/// UTF-8 text of core as a QString.
inline QString text(std::string_view utf8) {
  return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

/// Decimal sign of the language the program speaks (',' in German).
char decimalSign();

/// A length as people read it here: `2 5/16 in` with a real fraction sign set (`2⁵⁄₁₆ in`),
/// `58.7 mm` or `58,7 mm`; a leading `~` marks a rounded value.
QString lengthText(Length length, Unit unit, bool withUnit = true);

/// A limit exactly, so that keeping to the words keeps to the limit: whole 1/64 in to those who
/// measure in inches, else millimetres with as many digits as it takes.
QString limitText(Length limit, Unit unit);

/// A length in plain characters that a person can edit and parseLength reads back: `2 5/16 in`.
QString editableLength(Length length, Unit unit);

}  // namespace creasewright
