#pragma once

#include <QWidget>

#include "session/design_session.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QListView;

namespace creasewright {

class GalleryFilter;
class GalleryModel;

/// All styles made for the product in hand, as cards to choose from.
class GalleryView : public QWidget {
  Q_OBJECT

 public:
  explicit GalleryView(DesignSession& session, QWidget* parent = nullptr);

 signals:
  void done();  ///< a style was chosen, or the person goes back

 protected:
  void showEvent(QShowEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QWidget* makeHead();
  QWidget* makeFilters();
  void refresh();
  void applyFilters();
  void choose(const QModelIndex& index);

  DesignSession& session_;
  GalleryModel* model_;
  GalleryFilter* filter_;
  QListView* list_ = nullptr;
  QComboBox* sheet_ = nullptr;
  QCheckBox* onMySheet_ = nullptr;
  QCheckBox* noGlue_ = nullptr;
  QCheckBox* showsProduct_ = nullptr;
  QCheckBox* forRound_ = nullptr;
  QLineEdit* words_ = nullptr;
  QLabel* count_ = nullptr;
};

}  // namespace creasewright
