#include "fit/card_pattern.h"

#include <algorithm>
#include <charconv>
#include <optional>
#include <vector>

#include "base/excerpt.h"
#include "patterns/pattern.h"
#include "units/length_text.h"

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

std::optional<Problem> setFlag(std::string_view key, std::string_view value, bool& flag) {
  if (value != "yes" && value != "no") return unreadable(key, value);
  flag = value == "yes";
  return std::nullopt;
}

std::optional<Problem> setShift(std::string_view value, Length& shift) {
  const Result<Length> read = parseLength(value, Unit::Millimetre);
  if (!read || *read > kFarthestShift || *read < kFarthestShift * -1)
    return unreadable("shift", value);
  shift = *read;
  return std::nullopt;
}

/// The same for what only a picture has.
std::optional<Problem> setPicture(std::string_view setting, std::string_view key,
                                  std::string_view value, PaperPicture& picture) {
  if (key == "tiled") return setFlag(key, value, picture.tiled);
  if (key == "right") return setShift(value, picture.right);
  if (key == "up") return setShift(value, picture.up);
  return unreadable({}, setting);
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
  } else if (key == "plate") {
    return setFlag(key, value, paper.plate);
  } else if (paper.picture) {
    return setPicture(setting, key, value, *paper.picture);
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

Result<CardColours> withColours(CardColours colours, std::string_view text) {
  const Result<CardColours> written = parseCardColours(text);
  if (!written) return written.problem();
  colours.face = written->face;
  colours.back = written->back;
  return colours;
}

Result<CardColours> withPattern(CardColours colours, std::string_view text) {
  const std::vector<std::string_view> said = parts(text, ":");
  if (text == "none") {
    colours.pattern.reset();
    colours.patternBehind = false;
    return colours;
  }
  if (said.front() == kPicturePaper) return Problem{ProblemCode::PictureNoFile, {}, {}};
  const Result<const PatternKind*> pattern = findPattern(said.front());
  if (!pattern) return pattern.problem();
  if (said.size() == 1) return withPaper(std::move(colours), usualPaper(**pattern), {});
  text.remove_prefix(said.front().size() + 1);
  if (text.empty()) return unreadable({}, text);
  return withPaper(std::move(colours), usualPaper(**pattern), text);
}

Result<CardColours> withPaper(CardColours colours, PaperPattern paper, std::string_view settings) {
  colours.pattern = std::move(paper);
  colours.patternBehind = false;
  if (!settings.empty())
    for (const std::string_view setting : parts(settings, ":"))
      if (const std::optional<Problem> problem = set(setting, colours)) return *problem;
  const Result<PaperPattern> checked = checkedPaper(*colours.pattern);
  if (!checked) return checked.problem();
  return colours;
}

std::string patternText(const CardColours& colours) {
  if (!colours.pattern) return {};
  const PaperPattern& paper = *colours.pattern;
  std::string out = paper.id + ":scale=" + exactText(paper.scale);
  if (paper.turn != 0) out += ":turn=" + std::to_string(paper.turn);
  if (!paper.colours.empty() && !paper.picture) {
    out += ":colours=";
    for (std::size_t i = 0; i < paper.colours.size(); ++i)
      out += (i == 0 ? "" : "/") + colourText(paper.colours[i]);
  }
  if (paper.picture) {
    if (!paper.picture->tiled) out += ":tiled=no";
    if (paper.picture->right != Length()) out += ":right=" + exactText(paper.picture->right);
    if (paper.picture->up != Length()) out += ":up=" + exactText(paper.picture->up);
  }
  if (paper.plate) out += ":plate=yes";
  if (colours.patternBehind) out += ":side=back";
  return out;
}

std::optional<PictureText> pictureText(std::string_view text) {
  constexpr std::string_view kHead = "picture:";
  if (!text.starts_with(kHead)) return std::nullopt;
  text.remove_prefix(kHead.size());
  std::size_t end = std::string_view::npos;
  for (const std::string_view key :
       {":scale=", ":turn=", ":side=", ":tiled=", ":right=", ":up=", ":plate=", ":colours="})
    end = std::min(end, text.find(key));
  if (end == std::string_view::npos) return PictureText{text, {}};
  return PictureText{text.substr(0, end), text.substr(end + 1)};
}

}  // namespace creasewright
