#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "drawing/drawing.h"
#include "units/paper.h"

namespace creasewright {

/// Type sizes of running pages, mm.
inline constexpr double kTitleType = 7;
inline constexpr double kHeadingType = 4.4;
inline constexpr double kBodyType = 3.2;
inline constexpr double kBlockGap = 6;  ///< between blocks, and between a figure and its text

/// Text running down from the top of a block of its own, broken to a width in mm.
class TextBlock {
 public:
  explicit TextBlock(double width) : width_(width) {}

  void add(const QString& words, double type, double indent = 0);
  void addList(const QStringList& lines, const QString& mark, double type);
  void space(double mm) { down_ += mm; }
  [[nodiscard]] Drawing take() const;

 private:
  double width_;
  double down_ = 0;
  std::vector<TextItem> lines_;
};

/// Blocks one below the other on as many upright pages as they need; a block is never split.
class PageFlow {
 public:
  explicit PageFlow(const Paper& paper);

  [[nodiscard]] double columnWidth() const;
  [[nodiscard]] double columnHeight() const;
  void put(const Drawing& block);
  /// All pages, each with `title` and its number at the foot.
  std::vector<Drawing> take(const QString& title);

 private:
  void newPage();

  double width_;
  double height_;
  double free_ = 0;  // everything below it is free
  std::vector<Drawing> pages_;
};

/// Two drawings side by side, level at the top, the right one `rightAt` mm from the left.
Drawing beside(const Drawing& left, const Drawing& right, double rightAt);

/// A block with a thin rule above it over `width` mm.
Drawing ruledAbove(Drawing block, double width);

}  // namespace creasewright
