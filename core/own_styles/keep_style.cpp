#include "own_styles/keep_style.h"

#include <algorithm>
#include <set>
#include <utility>

#include "base/excerpt.h"
#include "document/build.h"
#include "document/own_style_file.h"
#include "drawing/svg_writer.h"
#include "edits/kinds/edit_units.h"
#include "pages/design_picture.h"
#include "styles/parameter_text.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

std::string pictureFor(const BuiltDesign& built, const std::string& title) {
  const Drawing drawing = pictureOf(built, {.extra = kNoExtras,
                                            .folded = true,
                                            .gift = {.opening = kAjar, .bottom = true},
                                            .dimensions = false});
  std::string svg = writeSvg(drawing, title, [](const Label&) { return std::string(); });
  constexpr std::size_t kWanted = 100'000;  // bytes; a folded box takes about a tenth
  return svg.size() <= kWanted ? svg : std::string();
}

std::optional<Problem> unknownMeasure(const StyleWords& words, const Style& base) {
  const auto known = [&](const std::string& key) {
    return std::ranges::find(base.parameters, key, &ParameterSpec::key) != base.parameters.end();
  };
  const auto unknown = [&](const std::string& key) {
    return Problem{ProblemCode::UnknownParameter, std::string(base.id), {excerpt(key)}};
  };
  for (const std::string& key : words.seen)
    if (!known(key)) return unknown(key);
  for (const auto& [key, rule] : words.rules)
    if (!known(key)) return unknown(key);
  return std::nullopt;
}

/// In the style's own order, each once.
std::vector<std::string> inOrder(const std::vector<std::string>& keys, const Style& base) {
  std::vector<std::string> ordered;
  for (const ParameterSpec& spec : base.parameters)
    if (std::ranges::find(keys, spec.key) != keys.end()) ordered.emplace_back(spec.key);
  return ordered;
}

}  // namespace

StyleWords wordsOf(const OwnStyle& style) {
  return {style.title, style.summary, style.suits, style.seen, style.rules};
}

StyleWords wordsFor(const Design& design) {
  if (design.ownStyle) return wordsOf(*design.ownStyle);
  StyleWords words;
  words.title = design.title;
  for (const std::string_view key : seenMeasures(design)) words.seen.emplace_back(key);
  return words;
}

Result<OwnStyle> keepStyle(const Design& design, const StyleWords& words, const OwnStyle* before) {
  const Result<const Style*> base = findStyle(design.styleId);
  if (!base) return base.problem();
  if (const auto problem = unknownMeasure(words, **base)) return *problem;
  const Unit unit = unitOf(design.grid);
  OwnStyle style;
  style.title = words.title;
  style.summary = words.summary;
  style.suits = words.suits;
  style.base = design.styleId;
  style.parameters = design.parameters;
  style.seen = inOrder(words.seen, **base);
  for (const auto& [key, rule] : words.rules)
    if (!isSeen(style, key)) style.rules[key] = withUnit(rule, unit);
  for (const Edit& edit : allEdits(design)) style.edits.push_back(withUnits(edit, unit));
  const RuledMeasures ruled = ruledMeasures(style, **base, design.parameters, benchOf(design));
  if (!ruled.problems.empty()) return ruled.problems.front();
  style.change = before == nullptr ? 1 : before->change + 1;
  style.id = before == nullptr ? ownStyleIdFor(style) : before->id;
  Design plain = design;
  plain.ownStyle = style;
  plain.edits.clear();
  plain.extras.clear();
  const Result<BuiltDesign> built = build(followingRules(std::move(plain)));
  if (!built) return built.problem();
  style.picture = pictureFor(*built, style.title);
  if (const auto problem = fileLimitProblem(style)) return *problem;
  return style;
}

Design freedFromStyle(Design design) {
  design.edits = allEdits(design);
  design.ownStyle.reset();
  return design;
}

}  // namespace creasewright
