#pragma once

#include <QString>
#include <string_view>

#include "styles/style.h"

namespace creasewright {

/// Words of the styles in the user's language. Core gives source text; the context is "styles".
QString styleText(std::string_view source);

QString styleTitle(const Style& style);
QString styleSummary(const Style& style);
QString parameterTitle(const ParameterSpec& spec);
QString parameterHint(const ParameterSpec& spec);

/// Title of the first parameter called `key` in any style, or the key itself.
QString parameterTitle(std::string_view key);

/// Title of a kind of extra by its id, or the id itself.
QString extraTitle(std::string_view kind);

/// `piece:panel` of the box as words.
QString faceTitle(std::string_view face);

/// A panel path as words: `base/front/wall` reads "front wall"; parts without words stay as they
/// are.
QString panelTitle(std::string_view id);

/// A fold stage's code (`roll-long`) as words; unknown codes stay as they are.
QString stageTitle(std::string_view code);

/// A piece's name (`tray`) as a word.
QString pieceTitle(std::string_view name);

}  // namespace creasewright
