#pragma once

#include <QDialog>

#include "papers/template/template_print.h"
#include "session/design_session.h"

class QComboBox;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace creasewright {

class CalibrationFields;
class LengthEdit;
class PagePreview;
class PrintedFields;

/// Paper, margin and direction at the left, the pages as they will come out at the right.
class PrintDialog : public QDialog {
  Q_OBJECT

 public:
  explicit PrintDialog(DesignSession& session, QWidget* parent = nullptr);

  [[nodiscard]] int pageCount() const { return static_cast<int>(pages_.size()); }
  [[nodiscard]] QComboBox& paper() { return *paper_; }
  [[nodiscard]] QComboBox& kind() { return *kind_; }
  [[nodiscard]] LengthEdit& ownWidth() { return *ownWidth_; }
  [[nodiscard]] LengthEdit& ownHeight() { return *ownHeight_; }
  [[nodiscard]] PrintedFields& printed() { return *printed_; }
  [[nodiscard]] CalibrationFields& calibration() { return *calibration_; }
  [[nodiscard]] const std::vector<Drawing>& pages() const { return pages_; }
  /// What stands against printing; empty when the pages are there.
  [[nodiscard]] QString complaint() const;

 private:
  void addSettings(QVBoxLayout* column);
  void addButtons(QVBoxLayout* column);
  void addOwnSides(QVBoxLayout* column);
  void choosePaper();
  void refresh();
  void showCalibration();
  [[nodiscard]] QString printer() const;
  void print();
  void save(const QString& ending, const QString& filter);
  [[nodiscard]] TemplateOptions options() const;

  DesignSession& session_;
  std::vector<Drawing> pages_;
  QComboBox* kind_;
  QComboBox* paper_;
  QWidget* ownSides_;
  LengthEdit* ownWidth_;
  LengthEdit* ownHeight_;
  QComboBox* direction_;
  LengthEdit* margin_;
  QComboBox* printer_;
  CalibrationFields* calibration_;
  PrintedFields* printed_;
  QLabel* status_;
  PagePreview* preview_;
  QPushButton* print_ = nullptr;
  QPushButton* pdf_ = nullptr;
  QPushButton* svg_ = nullptr;
};

}  // namespace creasewright
