#pragma once

#include <QWidget>
#include <map>
#include <string>

#include "panels/length_row.h"
#include "session/design_session.h"

class QAbstractButton;
class QSpinBox;
class QVBoxLayout;

namespace creasewright {

/// The style's own measures. Each says where its value comes from, and lights up in the net while
/// it has the focus.
class MeasuresPanel : public QWidget {
  Q_OBJECT

 public:
  explicit MeasuresPanel(DesignSession& session, QWidget* parent = nullptr);

  /// Puts the cursor into the field of a parameter; false when there is none.
  bool focusParameter(const std::string& key);
  /// The field of a length parameter, or nullptr.
  [[nodiscard]] LengthEdit* lengthField(const std::string& key);

 private:
  void makeRows();
  void addRow(const ParameterSpec& spec);
  void addLength(const ParameterSpec& spec);
  void addCount(const ParameterSpec& spec);
  void addFlag(const ParameterSpec& spec);
  void showDesign();
  void showUnit(Unit unit);
  [[nodiscard]] QString noteFor(const std::string& key) const;
  [[nodiscard]] QString complaintFor(const std::string& key) const;

  DesignSession& session_;
  QVBoxLayout* layout_;
  std::string styleId_;
  std::map<std::string, LengthRow*> lengths_;
  std::map<std::string, QSpinBox*> counts_;
  std::map<std::string, QAbstractButton*> flags_;
  std::vector<QWidget*> made_;
};

}  // namespace creasewright
