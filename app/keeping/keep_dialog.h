#pragma once

#include <QDialog>
#include <optional>
#include <vector>

#include "own_styles/keep_style.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;

namespace creasewright {

class SeenMeasures;
class SuitedSizesFields;

/// Asks what a style is called, what it suits and what a later user sees, and makes it of a design.
/// One of `kept` may be chosen to be kept again; `again` is the id of the one to begin with.
class KeepDialog : public QDialog {
  Q_OBJECT

 public:
  KeepDialog(Design design, std::vector<OwnStyle> kept, const std::string& again, Unit unit,
             QWidget* parent = nullptr);

  /// What was made, once the dialog is accepted.
  [[nodiscard]] const std::optional<OwnStyle>& style() const { return style_; }

 private:
  void makeFields(QWidget* page, const StyleWords& words);
  void showWordsOf(int choice);
  void keep();
  void complain(const QString& sentence);
  [[nodiscard]] const OwnStyle* before() const;

  Design design_;
  std::vector<OwnStyle> kept_;
  Unit unit_;
  std::optional<OwnStyle> style_;
  QComboBox* again_;
  QLineEdit* name_;
  QPlainTextEdit* note_;
  SuitedSizesFields* sizes_ = nullptr;
  SeenMeasures* seen_ = nullptr;
  QLabel* problem_;
};

}  // namespace creasewright
