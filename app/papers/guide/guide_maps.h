#pragma once

#include <span>
#include <vector>

#include "document/build.h"
#include "guide/guide.h"
#include "papers/guide/guide_form.h"
#include "papers/guide/guide_parts.h"
#include "papers/guide/guide_photos.h"
#include "papers/guide/guide_words.h"

namespace creasewright {

inline constexpr double kLeastColumn = 40;  ///< mm of words
inline constexpr double kLeastMap = 60;     ///< mm high

/// What blocks of a hand-out are made of, and the room they have on a page, mm; all of it must
/// outlive them.
struct GuideSetting {
  const BuiltDesign& built;
  const Guide& guide;
  const GuideWords& words;
  const GuidePhotos& photos;
  const Wording& wording;
  const GuideType& type;
  double width = 0;
  double height = 0;
};

/// The words of steps, and the maps that several of them share, as blocks of a hand-out.
class GuideMaps {
 public:
  explicit GuideMaps(const GuideSetting& setting) : of_(setting) {}

  /// A step's words, with its photo below them.
  [[nodiscard]] Drawing text(std::size_t step, double width) const;
  /// Height over a map's words on a page of their own.
  [[nodiscard]] double left(const GuidePart& part) const;
  /// Of a map with words beside it, the preferred one first; none where the page is too narrow.
  [[nodiscard]] std::span<const double> heights(const GuidePart& part) const;
  /// In how many forms a map may stand, from roomy to small; the last over the whole width.
  [[nodiscard]] std::size_t forms(const GuidePart& part) const;
  [[nodiscard]] Drawing block(const GuidePart& part, std::size_t form) const;

 private:
  [[nodiscard]] double column(std::size_t columns) const;
  [[nodiscard]] std::vector<Drawing> texts(const GuidePart& part, double width) const;
  [[nodiscard]] Drawing map(const GuidePart& part, const FigureRoom& room) const;
  [[nodiscard]] Drawing besideWords(const GuidePart& part, const FigureRoom& room) const;
  [[nodiscard]] std::vector<Drawing> textRows(std::size_t from, std::size_t to) const;
  [[nodiscard]] Drawing textColumns(std::size_t from, std::size_t columns) const;
  [[nodiscard]] Drawing textPair(std::size_t from) const;

  GuideSetting of_;
};

}  // namespace creasewright
