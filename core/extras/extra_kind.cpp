#include "extras/extra_kind.h"

#include <algorithm>
#include <array>
#include <cctype>

#include "base/excerpt.h"
#include "extras/kinds.h"
#include "styles/parameter_text.h"

namespace creasewright {
namespace {

/// ASCII letters alike, large or small.
bool sameWord(std::string_view a, std::string_view b) {
  return std::ranges::equal(
      a, b, [](unsigned char x, unsigned char y) { return std::tolower(x) == std::tolower(y); });
}

}  // namespace

std::span<const ExtraKind> extraKinds() {
  static const std::array kKinds{bandExtra(),     sleeveExtra(), matsExtra(),   photoMatsExtra(),
                                 labelExtra(),    tagExtra(),    windowExtra(), platformExtra(),
                                 slipExtra(),     ribbonExtra(), bowExtra(),    ribbonPullExtra(),
                                 partitionExtra()};
  return kKinds;
}

Result<const ExtraKind*> findExtraKind(std::string_view id) {
  const auto found = std::ranges::find(extraKinds(), id, &ExtraKind::id);
  if (found == extraKinds().end()) return Problem{ProblemCode::ExtraUnknown, {}, {excerpt(id)}};
  return &*found;
}

Card clearFilm() { return {"clear-film", "Clear film", mm(0.2), 0}; }

Extra standardExtra(const ExtraKind& kind, const Card& card) {
  Extra extra;
  extra.kind = kind.id;
  extra.card = kind.ofFilm ? clearFilm() : card;
  // Without its pattern: it is to be seen on the box, and what is written on it to be read.
  extra.card.colours.pattern.reset();
  for (const ParameterSpec& spec : kind.parameters)
    extra.parameters.setCount(spec.key, spec.standard);
  return extra;
}

Result<std::int64_t> readSpec(const ParameterSpec& spec, std::string_view text, ToolGrid grid) {
  std::string choices;
  for (std::size_t i = 0; i < spec.choices.size(); ++i) {
    if (sameWord(spec.choices[i], text)) return static_cast<std::int64_t>(i);
    choices += (i == 0 ? "" : ", ") + std::string(spec.choices[i]);
  }
  if (const std::optional<std::int64_t> raw = readRaw(spec.kind, text, unitOf(grid))) return *raw;
  Problem unreadable{ProblemCode::ParameterUnreadable, std::string(spec.key), {excerpt(text)}};
  if (!choices.empty()) unreadable.values.emplace_back(std::move(choices));
  return unreadable;
}

Result<Extra> withParameter(Extra extra, std::string_view key, std::string_view text,
                            ToolGrid grid) {
  const Result<const ExtraKind*> kind = findExtraKind(extra.kind);
  if (!kind) return kind.problem();
  const auto spec = std::ranges::find((*kind)->parameters, key, &ParameterSpec::key);
  if (spec == (*kind)->parameters.end())
    return Problem{ProblemCode::UnknownParameter, extra.kind, {excerpt(key)}};
  const Result<std::int64_t> raw = readSpec(*spec, text, grid);
  if (!raw) return raw.problem();
  extra.parameters.setCount(key, *raw);
  return extra;
}

}  // namespace creasewright
