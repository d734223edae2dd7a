#pragma once

#include <QString>
#include <string_view>

#include "styles/style.h"

namespace creasewright {

struct Design;

/// A text of core in the user's language.
QString styleText(Worded text);
/// The same for the title of a measure that comes as a value of a problem.
QString styleText(std::string_view source);

QString styleTitle(const Style& style);
QString styleSummary(const Style& style);

/// The style that a design is made from: its own one, or the built-in one.
QString styleTitle(const Design& design);
QString styleSummary(const Design& design);

QString parameterTitle(const ParameterSpec& spec);
QString parameterHint(const ParameterSpec& spec);

/// Title of the first parameter called `key` in any style, or the key itself.
QString parameterTitle(std::string_view key);

/// Title of a kind of extra by its id, or the id itself.
QString extraTitle(std::string_view kind);

/// Title of a kind of edit by its id, or the id itself.
QString editTitle(std::string_view kind);

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
