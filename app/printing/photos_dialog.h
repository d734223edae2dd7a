#pragma once

#include <QDialog>
#include <string>
#include <vector>

#include "session/design_session.h"

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace creasewright {

/// The photos of a design's hand-out: one of the finished box, one of each step. Every change is
/// one undo step of the design.
class PhotosDialog : public QDialog {
  Q_OBJECT

 public:
  explicit PhotosDialog(DesignSession& session, QWidget* parent = nullptr);

  [[nodiscard]] QListWidget& places() { return *places_; }
  [[nodiscard]] QLineEdit& caption() { return *caption_; }
  [[nodiscard]] QPushButton& removing() { return *remove_; }
  [[nodiscard]] QLabel& status() { return *status_; }
  /// The picture file as the photo of the place that is chosen.
  void put(const QString& path);

 private:
  void fill();
  void showChosen();
  void choose();
  void removeChosen();
  void keepCaption();
  [[nodiscard]] std::string chosenStep() const;
  [[nodiscard]] const Photo* chosenPhoto() const;

  DesignSession& session_;
  std::vector<std::string> steps_;  ///< by row; the first is the finished box
  QListWidget* places_;
  QLabel* picture_;
  QLineEdit* caption_;
  QPushButton* add_;
  QPushButton* remove_;
  QLabel* status_;
};

}  // namespace creasewright
