#pragma once

#include <QString>
#include <optional>
#include <string_view>

namespace creasewright {

// Words for the codes of nets, looked up in what styles and extras say of them. Nothing for a code
// without words; a test goes through all styles and extras and misses none.

std::optional<QString> stageWords(std::string_view code);
/// What the hand does in a fold stage, as a sentence; empty where nothing is said.
QString stageSays(std::string_view code);
/// A part of a panel's path, such as `glue-strip` or `face-3`.
std::optional<QString> panelWords(std::string_view part);
/// A side as the place of a part: `left-front`.
std::optional<QString> placeTitle(std::string_view part);
std::optional<QString> pieceWords(std::string_view name);

}  // namespace creasewright
