#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "drawing/drawing.h"
#include "units/paper.h"

namespace creasewright {

/// Type sizes of running pages, mm.
inline constexpr double kTitleType = 7;
inline constexpr double kHeadingType = 4.4;
inline constexpr double kBodyType = 3.2;
inline constexpr double kBlockGap = 6;  ///< between blocks, and between a figure and its text

/// How words look: type size in mm, and in the colour of a role.
struct TypeStyle {
  double height = kBodyType;
  bool bold = false;
  double lead = 1.4;  ///< line pitch by type size
  std::optional<Role> like = std::nullopt;
};

/// Of the papers' titles and headings.
inline constexpr TypeStyle kTitleStyle{kTitleType, true, 1.3};
inline constexpr TypeStyle kHeadingStyle{kHeadingType, true, 1.4, Role::Valley};

/// Text running down from the top of a block of its own, broken to a width in mm as the painter
/// will set it.
class TextBlock {
 public:
  explicit TextBlock(double width) : width_(width) {}

  void add(const QString& words, const TypeStyle& type, double indent = 0);
  void add(const QString& words, double height, double indent = 0) {
    add(words, TypeStyle{height}, indent);
  }
  void addList(const QStringList& lines, const QString& mark, const TypeStyle& type);
  void addList(const QStringList& lines, const QString& mark, double height) {
    addList(lines, mark, TypeStyle{height});
  }
  /// The same with a mark at the left of its first line.
  void addMarked(const QString& words, const QString& mark, const TypeStyle& type, double indent) {
    const double first = down_ + type.height * type.lead;
    add(words, type, indent);
    put(mark, type, 0, first);
  }
  void space(double mm) { down_ += mm; }
  [[nodiscard]] Drawing take() const;

 private:
  void put(const QString& words, const TypeStyle& type, double at, double down);

  double width_;
  double down_ = 0;
  std::vector<TextItem> lines_;
};

/// Blocks one below the other on as many upright pages as they need; a block is never split.
class PageFlow {
 public:
  /// `margin` mm stay free on all sides; the last line above the lower one is the foot; blocks
  /// stand `gap` mm apart.
  explicit PageFlow(const Paper& paper, double margin = 15, double gap = kBlockGap);

  [[nodiscard]] double columnWidth() const;
  [[nodiscard]] double columnHeight() const;
  void put(const Drawing& block);
  /// What comes next stands on a new page, unless this one is still empty.
  void startPage();
  /// All pages, each with `title` and its number at the foot.
  std::vector<Drawing> take(const QString& title);

 private:
  void newPage();
  [[nodiscard]] bool empty() const;

  double width_;
  double height_;
  double margin_;
  double gap_;
  double free_ = 0;  // everything below it is free
  std::vector<Drawing> pages_;
};

/// Two drawings side by side, level at the top, the right one `rightAt` mm from the left.
Drawing beside(const Drawing& left, const Drawing& right, double rightAt);

/// A block with a thin rule `gap` mm above it over `width` mm.
Drawing ruledAbove(Drawing block, double width, double gap = 3);

}  // namespace creasewright
