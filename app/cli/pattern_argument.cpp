#include "cli/pattern_argument.h"

#include "bridge/text.h"
#include "fit/card_pattern.h"
#include "output/paper_file.h"

namespace creasewright {

Result<CardColours> withPatternArgument(CardColours colours, std::string_view written) {
  const std::optional<PictureText> picture = pictureText(written);
  if (!picture) return withPattern(std::move(colours), written);
  if (picture->file.empty()) return Problem{ProblemCode::PictureNoFile, {}, {}};
  Result<PaperPattern> paper = readPaperFile(text(std::string(picture->file)));
  if (!paper) return paper.problem();
  return withPaper(std::move(colours), std::move(paper).value(), picture->settings);
}

bool namesPicture(std::string_view argument) {
  return argument.find("picture:") != std::string_view::npos;
}

}  // namespace creasewright
