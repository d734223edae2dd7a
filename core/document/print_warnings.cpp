#include "document/print_warnings.h"

#include <cmath>
#include <cstdint>
#include <optional>
#include <string_view>

#include "base/picture_file.h"
#include "document/words_room.h"
#include "drawing/words_on.h"
#include "lettering/type_width.h"

namespace creasewright {
namespace {

constexpr std::int64_t kFewestDots = 150;  // to the inch (common practice, no published source)
constexpr double kPointsSlack = 1e-6;

/// As it is measured, to two decimals and no larger, for a sentence.
double told(double number) { return std::floor(number * 100 + 1e-6) / 100; }

void warnOfWords(const BuiltPiece& piece, Problems& found) {
  const double contrast = wordsOn(piece.card.colours).contrast;
  const auto warn = [&](ProblemCode code, const Inscription& words, ProblemValue is,
                        ProblemValue limit) {
    found.push_back(
        {code, piece.name, {words.text, std::move(is), std::move(limit)}, Severity::Warning});
  };
  for (const Inscription& words : piece.net.inscriptions) {
    const double points = words.height / kPoint;
    if (points < kSmallestPoints - kPointsSlack)
      warn(ProblemCode::TextSmall, words, told(points), kSmallestPoints);
    if (contrast < kReadableContrast)
      warn(ProblemCode::TextFaint, words, told(contrast), kReadableContrast);
    const double width = typeWidth(words.text, words.height, words.face);
    const double room = roomFor(piece.net, words);
    if (width <= room) continue;
    const double high = words.height * (kBelowBaseline + kAboveBaseline);
    if (const double most = heightRoomFor(piece.net, words); high > most)
      warn(ProblemCode::TextTooHigh, words, Length::mm(high), Length::mm(most));
    else
      warn(ProblemCode::TextTooLarge, words, Length::mm(width), Length::mm(room));
  }
}

/// Of a picture that can be shown.
std::optional<PixelSize> shownPixels(std::string_view bytes) {
  constexpr std::int64_t kDeep = 4;  // bytes to a pixel
  const std::optional<PixelSize> pixels = pixelsOf(bytes);
  const bool shown = pixels && isWholePicture(bytes) && !isTooWide(*pixels, kDeep);
  return shown ? pixels : std::nullopt;
}

void warnOfPicture(const BuiltPiece& piece, Problems& found) {
  const auto& paper = piece.card.colours.pattern;
  if (!paper || !paper->picture) return;
  const std::optional<PixelSize> pixels = shownPixels(paper->picture->file.bytes());
  if (!pixels) {
    found.push_back({ProblemCode::PictureBroken, piece.name, {}, Severity::Warning});
    return;
  }
  const auto dots = static_cast<std::int64_t>(pixels->width / paper->scale.mm() * 25.4);
  if (dots < kFewestDots)
    found.push_back(
        {ProblemCode::PictureCoarse, piece.name, {dots, kFewestDots}, Severity::Warning});
}

}  // namespace

Problems printWarnings(const BuiltPiece& piece) {
  Problems found;
  warnOfWords(piece, found);
  warnOfPicture(piece, found);
  return found;
}

}  // namespace creasewright
