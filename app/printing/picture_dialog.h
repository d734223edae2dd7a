#pragma once

#include <QDialog>

#include "papers/template/export.h"
#include "session/design_session.h"

class QComboBox;
class QFormLayout;
class QLabel;
class QSpinBox;

namespace creasewright {

class ColourButton;

/// A picture of the finished gift, or of a stage on the way to it, for a web page or a poster: at
/// first what is seen now.
class PictureDialog : public QDialog {
  Q_OBJECT

 public:
  /// What is seen now of one of the pieces.
  explicit PictureDialog(DesignSession& session, const GiftSight& seen = {}, int piece = 0,
                         QWidget* parent = nullptr);

  /// What the picture would be like.
  [[nodiscard]] ExportChoices choices() const;
  /// `png`, `svg` or `pdf`.
  [[nodiscard]] QString ending() const;

  [[nodiscard]] QComboBox& kind() { return *kind_; }
  [[nodiscard]] QSpinBox& width() { return *width_; }
  [[nodiscard]] QSpinBox& height() { return *height_; }
  [[nodiscard]] ColourButton& ground() { return *ground_; }
  [[nodiscard]] QComboBox& view() { return *view_; }
  [[nodiscard]] QComboBox& opening() { return *opening_; }
  [[nodiscard]] QComboBox& moment() { return *moment_; }
  [[nodiscard]] QComboBox& paper() { return *paper_; }

 private:
  void fillMoments();
  void fillViews();
  void showFields();
  void showPicture();
  void save();
  [[nodiscard]] bool isPage() const;

  DesignSession& session_;
  GiftSight seen_;
  int piece_;
  QFormLayout* form_;
  QComboBox* kind_;
  QComboBox* moment_;
  QComboBox* opening_;
  QComboBox* view_;
  QSpinBox* width_;
  QSpinBox* height_;
  QComboBox* paper_;
  ColourButton* ground_;
  QLabel* picture_;
};

}  // namespace creasewright
