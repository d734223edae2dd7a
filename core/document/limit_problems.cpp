#include "document/limit_problems.h"

#include "base/excerpt.h"
#include "base/file_limits.h"
#include "document/own_style_file.h"

namespace creasewright {
namespace {

std::int64_t number(std::size_t count) { return static_cast<std::int64_t>(count); }

std::optional<Problem> linesProblem(const std::vector<std::string>& lines) {
  if (auto problem = mostOf("text", lines.size(), kMostLines)) return problem;
  for (const std::string& line : lines)
    if (auto problem = longestOf("text", line, kLongestTitle)) return problem;
  return std::nullopt;
}

std::optional<Problem> layerProblem(const ExtraLayer& layer) {
  if (auto problem = linesProblem(layer.lines)) return problem;
  return fileLimitProblem(layer.card, "card");
}

std::optional<Problem> extraProblem(const Extra& extra) {
  if (auto problem = linesProblem(extra.lines)) return problem;
  if (auto problem = mostOf("layers", extra.layers.size(), kMostLayers)) return problem;
  std::size_t place = 0;
  for (const ExtraLayer& layer : extra.layers)
    if (auto problem = inPart(layerProblem(layer), "layers/" + std::to_string(++place)))
      return problem;
  if (auto problem = longestOf("face", extra.face, kLongestTitle)) return problem;
  return fileLimitProblem(extra.card, "card");
}

std::optional<Problem> editProblem(const Edit& edit) {
  for (const auto& [field, text] :
       {std::pair{"piece", &edit.piece}, {"panel", &edit.panel}, {"edge", &edit.edge}})
    if (auto problem = longestOf(field, *text, kLongestTitle)) return problem;
  for (const auto& [key, formula] : edit.measures)
    if (auto problem = longestOf("measures/" + key, formula, kLongestTitle)) return problem;
  return std::nullopt;
}

}  // namespace

std::optional<Problem> mostOf(std::string_view list, std::size_t count, std::size_t most) {
  if (count <= most) return std::nullopt;
  return Problem{ProblemCode::TooMany, std::string(list), {number(count), number(most)}};
}

std::optional<Problem> longestOf(std::string_view field, std::string_view text,
                                 std::size_t longest) {
  if (text.size() <= longest) return std::nullopt;  // no character has less than a byte
  const std::size_t count = characterCount(text);
  if (count <= longest) return std::nullopt;
  return Problem{ProblemCode::TextTooLong, std::string(field), {number(count), number(longest)}};
}

std::optional<Problem> countWithin(std::string_view field, std::int64_t number, std::int64_t least,
                                   std::int64_t most) {
  if (number >= least && number <= most) return std::nullopt;
  return Problem{ProblemCode::TakersWrong, std::string(field), {number, least, most}};
}

std::optional<Problem> largestOf(std::string_view path, std::size_t bytes, std::int64_t largest) {
  if (number(bytes) <= largest) return std::nullopt;
  return Problem{ProblemCode::FileTooLarge, std::string(path), {number(bytes), largest}};
}

std::optional<Problem> fileLimitProblem(const Card& card, const std::string& where) {
  if (auto problem = longestOf(where + "/id", card.id, kLongestTitle)) return problem;
  return longestOf(where + "/name", card.name, kLongestTitle);
}

std::optional<Problem> editLimitProblem(const std::vector<Edit>& edits) {
  if (auto problem = mostOf("edits", edits.size(), kMostEdits)) return problem;
  std::size_t number = 0;
  for (const Edit& edit : edits)
    if (auto problem = inPart(editProblem(edit), "edits/" + std::to_string(++number)))
      return problem;
  return std::nullopt;
}

std::optional<Problem> fileLimitProblem(const Design& design) {
  if (auto problem = longestOf("title", design.title, kLongestTitle)) return problem;
  if (auto problem = longestOf("notes", design.notes, kLongestNotes)) return problem;
  if (auto problem = fileLimitProblem(design.card, "card")) return problem;
  if (auto problem = mostOf("tags", design.tags.size(), kMostTags)) return problem;
  for (const std::string& tag : design.tags)
    if (auto problem = longestOf("tags", tag, kLongestTitle)) return problem;
  if (design.ownStyle)
    if (auto problem = inPart(fileLimitProblem(*design.ownStyle), "own_style")) return problem;
  if (auto problem = editLimitProblem(design.edits)) return problem;
  if (auto problem = mostOf("extras", design.extras.size(), kMostExtras)) return problem;
  std::size_t place = 0;
  for (const Extra& extra : design.extras)
    if (auto problem = inPart(extraProblem(extra), "extras/" + std::to_string(++place)))
      return problem;
  return photoLimitProblem(design.photos);
}

std::optional<Problem> photoLimitProblem(const std::vector<Photo>& photos) {
  if (auto problem = mostOf("photos", photos.size(), kMostPhotos)) return problem;
  std::size_t place = 0;
  for (const Photo& photo : photos) {
    const std::string part = "photos/" + std::to_string(++place);
    for (const auto& [field, text] : {std::pair{"step", &photo.step}, {"caption", &photo.caption}})
      if (auto problem = inPart(longestOf(field, *text, kLongestTitle), part)) return problem;
    const std::size_t bytes = photo.picture.bytes().size();
    if (number(bytes) > kLargestPhoto)
      return Problem{ProblemCode::PictureTooHeavy, part, {number(bytes), kLargestPhoto}};
  }
  return std::nullopt;
}

std::optional<Problem> inPart(std::optional<Problem> problem, const std::string& part,
                              std::string_view file) {
  if (!problem) return problem;
  std::string& where = problem->where;
  if (where.empty())
    where = part;
  else if (where == file)
    where += ": " + part;
  else
    where = part + "/" + where;
  return problem;
}

}  // namespace creasewright
