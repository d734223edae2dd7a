#include "fit/card_pattern.h"

#include <charconv>
#include <optional>
#include <vector>

#include "base/excerpt.h"
#include "patterns/pattern.h"

namespace creasewright {
namespace {

/// The parts of a text between separators.
std::vector<std::string_view> parts(std::string_view text, std::string_view separators) {
  std::vector<std::string_view> out;
  for (;;) {
    const std::size_t end = text.find_first_of(separators);
    out.push_back(text.substr(0, end));
    if (end == std::string_view::npos) return out;
    text.remove_prefix(end + 1);
  }
}

Problem unreadable(std::string_view where, std::string_view text) {
  return {ProblemCode::PatternUnreadable, std::string(where), {excerpt(text)}};
}

std::optional<int> degrees(std::string_view text) {
  int value = 0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
  const bool whole = read.ec == std::errc() && read.ptr == text.data() + text.size();
  return whole && value >= 0 && value < 360 ? std::optional(value) : std::nullopt;
}

/// Does what one `KEY=VALUE` says; a problem where it says nothing.
std::optional<Problem> set(std::string_view setting, CardColours& card) {
  const std::size_t equals = setting.find('=');
  if (equals == std::string_view::npos) return unreadable({}, setting);
  const std::string_view key = setting.substr(0, equals);
  const std::string_view value = setting.substr(equals + 1);
  PaperPattern& paper = *card.pattern;
  if (key == "scale") {
    const Result<Length> scale = patternScale(value);
    if (!scale) return scale.problem();
    paper.scale = *scale;
  } else if (key == "turn") {
    const std::optional<int> turn = degrees(value);
    if (!turn) return unreadable(key, value);
    paper.turn = *turn;
  } else if (key == "side") {
    if (value != "face" && value != "back") return unreadable(key, value);
    card.patternBehind = value == "back";
  } else if (key == "colours") {
    paper.colours.clear();
    for (const std::string_view name : parts(value, ",/")) {
      const Result<Colour> colour = parseColour(name);
      if (!colour) return colour.problem();
      paper.colours.push_back(*colour);
    }
  } else {
    return unreadable({}, setting);
  }
  return std::nullopt;
}

}  // namespace

Result<CardColours> withPattern(CardColours colours, std::string_view text) {
  const std::vector<std::string_view> said = parts(text, ":");
  colours.pattern.reset();
  colours.patternBehind = false;
  if (text == "none") return colours;
  const Result<const PatternKind*> pattern = findPattern(said.front());
  if (!pattern) return pattern.problem();
  colours.pattern = usualPaper(**pattern);
  for (std::size_t i = 1; i < said.size(); ++i)
    if (const std::optional<Problem> problem = set(said[i], colours)) return *problem;
  const Result<PaperPattern> checked = checkedPaper(*colours.pattern);
  if (!checked) return checked.problem();
  return colours;
}

}  // namespace creasewright
