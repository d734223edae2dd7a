#pragma once

#include <QWidget>
#include <map>
#include <string>
#include <vector>

#include "panels/length_row.h"
#include "styles/style.h"

class QAbstractButton;
class QComboBox;
class QSpinBox;
class QVBoxLayout;

namespace creasewright {

/// One row for each parameter of a list: lengths, counts, choices and flags.
class ParameterRows : public QWidget {
  Q_OBJECT

 public:
  explicit ParameterRows(const std::vector<ParameterSpec>& specs, QWidget* parent = nullptr);

  /// Shows values; `step` is what the up and down keys of a length do.
  void setValues(const Parameters& values, Length step);
  void setUnit(Unit unit);
  /// What a count of 0 is shown as.
  void setZeroText(const std::string& key, const QString& words);
  /// Whether the row of a length is there at all.
  void setShown(const std::string& key, bool shown);
  void setNote(const std::string& key, const QString& note);
  /// Notes under lengths of 0 say what that stands for, where it is no place.
  void explainZeros(const std::vector<ParameterSpec>& specs, const Parameters& values);
  void setComplaint(const std::string& key, const QString& sentence);
  void setLit(const std::string& key, bool lit);
  [[nodiscard]] std::vector<std::string> lengthKeys() const;
  /// The field of a length parameter, or nullptr.
  [[nodiscard]] LengthEdit* lengthField(const std::string& key);

 signals:
  void edited(const QString& key, qint64 raw);
  void focused(const QString& key, bool in);
  void pointedAt(const QString& key, bool in);

 private:
  void addRow(const ParameterSpec& spec);
  void addLength(const ParameterSpec& spec);
  void addCount(const ParameterSpec& spec);
  void addChoice(const ParameterSpec& spec);
  void addFlag(const ParameterSpec& spec);
  void addBeside(const ParameterSpec& spec, QWidget* field);

  QVBoxLayout* layout_;
  std::map<std::string, LengthRow*> lengths_;
  std::map<std::string, QSpinBox*> counts_;
  std::map<std::string, QComboBox*> choices_;
  std::map<std::string, QAbstractButton*> flags_;
};

/// One step of the up and down keys: the tool grid, or 1 mm or 1/16 in without one.
Length stepOf(ToolGrid grid, Unit unit);

}  // namespace creasewright
