#pragma once

#include <QWidget>
#include <vector>

#include "session/design_session.h"

class QSplitter;
class QStackedWidget;
class QTabBar;
class QTabWidget;
class QScrollArea;
class QVBoxLayout;

namespace creasewright {

class ChecksPanel;
class FoldPanel;
class GalleryView;
class MeasuresPanel;
class Section;
class SheetView;

/// The three columns of the workbench. A wide window shows settings, sheet over drawer, folded
/// piece over checks; a narrow one folds the settings into sections, of which one is open, and puts
/// the folded piece and the checks as tabs into the drawer's place at the right.
class Columns : public QWidget {
  Q_OBJECT

 public:
  explicit Columns(DesignSession& session, QWidget* parent = nullptr);

  /// Below this width (pixels) the narrow arrangement is used.
  static constexpr int kWideFrom = 1280;
  void arrangeFor(int windowWidth);
  [[nodiscard]] bool isNarrow() const { return narrow_; }

  /// Shows all styles in the place of sheet and folded piece, or goes back to these.
  void showGallery(bool shown);
  [[nodiscard]] GalleryView& gallery() { return *gallery_; }

  [[nodiscard]] SheetView& sheet() { return *sheet_; }
  [[nodiscard]] FoldPanel& fold() { return *fold_; }
  [[nodiscard]] ChecksPanel& checks() { return *checks_; }
  [[nodiscard]] MeasuresPanel& measures() { return *measures_; }
  [[nodiscard]] QTabWidget& drawer() { return *drawer_; }

 signals:
  void hovered(const QString& words);

 protected:
  /// Esc lets go of what is lit.
  void keyPressEvent(QKeyEvent* event) override;

 private:
  void makeLeft();
  void makeMiddle();
  void makeRight();
  void showPage(QWidget* page);
  void addSection(const QString& title, QWidget* content);
  void arrangeWide();
  void arrangeNarrow();
  void openOnly(Section* section);
  void askForParameter(const QString& key);
  void showPieces();
  void showCheckCount(int count);

  DesignSession& session_;
  bool narrow_ = false;
  bool arranged_ = false;
  QSplitter* across_;
  QScrollArea* left_ = nullptr;
  QWidget* leftContent_ = nullptr;
  std::vector<Section*> sections_;
  QStackedWidget* pages_ = nullptr;
  GalleryView* gallery_ = nullptr;
  QWidget* middle_ = nullptr;
  QSplitter* middleSplit_ = nullptr;
  QTabBar* pieces_ = nullptr;
  QTabWidget* drawer_ = nullptr;
  QWidget* steps_ = nullptr;
  QSplitter* right_ = nullptr;
  QWidget* checksCard_ = nullptr;
  QVBoxLayout* checksBody_ = nullptr;
  SheetView* sheet_ = nullptr;
  FoldPanel* fold_ = nullptr;
  ChecksPanel* checks_ = nullptr;
  MeasuresPanel* measures_ = nullptr;
};

}  // namespace creasewright
