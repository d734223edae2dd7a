#pragma once

#include <QWidget>
#include <string>
#include <vector>

#include "stock/punches.h"
#include "styles/parameter_spec.h"
#include "styles/parameters.h"

class QPlainTextEdit;

namespace creasewright {

class ParameterRows;
class PunchBox;

/// What can be told of a label, a tag and each layer alike: the punch that makes it, its words,
/// and, once it has some, how they are set.
class LabelFields : public QWidget {
  Q_OBJECT

 public:
  enum class Making { Cut, CutOrPunched };

  explicit LabelFields(Making making, QWidget* parent = nullptr);

  void showValues(const Parameters& parameters, const std::vector<std::string>& lines, Unit unit);

 signals:
  /// nullptr: it is cut.
  void punchPicked(const Punch* punch);
  void linesEdited(const std::vector<std::string>& lines);
  /// Of how the words are set.
  void edited(const QString& key, qint64 raw);

 private:
  PunchBox* punch_ = nullptr;
  QPlainTextEdit* text_;
  ParameterRows* words_;
};

/// Parameters but for those that LabelFields asks for.
std::vector<ParameterSpec> withoutLabelFields(std::vector<ParameterSpec> specs);

/// The thickness of foam is a row only of what is held by foam.
void showFoam(ParameterRows& rows, const Parameters& parameters);

}  // namespace creasewright
