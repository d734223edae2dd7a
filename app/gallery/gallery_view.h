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

  /// Reads the person's own styles again and makes all for the product.
  void refresh();
  /// Goes to the card of a style.
  void showStyle(const QString& id);

 signals:
  void done();                         ///< a style was chosen, or the person goes back
  void told(const QString& sentence);  ///< what of the design needs a look now
  void fileAsked();
  // Of a style of the person's own, by its id.
  void changeAsked(const QString& id);
  void copyAsked(const QString& id);
  void removalAsked(const QString& id);

 protected:
  void showEvent(QShowEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QWidget* makeHead();
  QWidget* makeFilters();
  void applyFilters();
  void showMenu(QPoint at);
  void choose(const QModelIndex& index);
  void tellOfPhotos();

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
  QLabel* unreadable_ = nullptr;
};

}  // namespace creasewright
