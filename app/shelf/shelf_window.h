#pragma once

#include <QDialog>

#include "session/design_session.h"
#include "shelf/shelf_model.h"

class QLabel;
class QLineEdit;
class QListView;

namespace creasewright {

/// Saved designs with pictures, to search, open, copy for another product, and hand on.
class ShelfWindow : public QDialog {
  Q_OBJECT

 public:
  ShelfWindow(DesignSession& session, const ShelfFolder& folder, QWidget* parent = nullptr);

  /// The file the person chose to open; empty when none.
  [[nodiscard]] const QString& chosen() const { return chosen_; }
  /// The design to start anew for the product in hand, when the person asked for that.
  [[nodiscard]] const std::optional<Design>& copied() const { return copied_; }

 private:
  void openCurrent();
  void copyCurrent();
  void addPresent();
  void editWords();
  void removeCurrent();
  void exportAll();
  void importBundle();
  void count();
  void tell(const std::optional<Problem>& problem);

  DesignSession& session_;
  ShelfFolder folder_;
  ShelfModel* model_;
  QListView* list_;
  QLabel* status_;
  QString chosen_;
  std::optional<Design> copied_;
};

}  // namespace creasewright
