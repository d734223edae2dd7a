#pragma once

#include <QWidget>
#include <string>
#include <vector>

#include "own_styles/keep_style.h"

class QCheckBox;
class QLineEdit;

namespace creasewright {

/// Which measures of a style a later user sees, and for each of the others what it does then:
/// follows the product, stays as it is, or follows a rule that is typed.
class SeenMeasures : public QWidget {
  Q_OBJECT

 public:
  SeenMeasures(const Design& design, const StyleWords& words, Unit unit, QWidget* parent = nullptr);

  [[nodiscard]] std::vector<std::string> seen() const;
  [[nodiscard]] std::map<std::string, std::string, std::less<>> rules() const;
  /// Puts the cursor into the rule of a measure, if it has one.
  void focusRule(const std::string& key);

 private:
  struct Row {
    std::string key;
    QCheckBox* seen = nullptr;
    QLineEdit* rule = nullptr;  ///< of a length
  };
  std::vector<Row> rows_;
};

}  // namespace creasewright
