#pragma once

#include <functional>
#include <map>
#include <string>

#include "edits/kinds/edit_kind.h"
#include "panels/row_column.h"
#include "session/design_session.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QToolButton;
class QVBoxLayout;

namespace creasewright {

/// One change by hand of the design's net: whether it is made, where, and its measures, which may
/// be formulas; buttons that move it in the order and leave it out.
class ChangeRow : public DesignRow {
  Q_OBJECT

 public:
  /// `index` is that of an edit the design has.
  ChangeRow(DesignSession& session, int index, QWidget* parent = nullptr);

  void showDesign() override;

 private:
  void makeHeading(const EditKind& kind);
  void makePlace(const EditKind& kind);
  void makeMeasure(const EditMeasure& measure);
  void showPlace();
  void fillPlaces(bool withPiece);
  void showEdges(const std::string& host);
  void showMeasures();
  void showProblem();
  /// Changes this edit as one step of the history.
  void change(const std::function<void(Edit&)>& how);
  void moveBy(int places);
  void remove();
  [[nodiscard]] const Edit& edit() const;

  DesignSession& session_;
  std::size_t index_;
  const EditKind* known_ = nullptr;
  QVBoxLayout* layout_;
  QCheckBox* on_ = nullptr;
  QToolButton* up_ = nullptr;
  QToolButton* down_ = nullptr;
  QComboBox* panel_ = nullptr;
  QStringList places_;  ///< in panel_, but for one that is gone
  QComboBox* edge_ = nullptr;
  std::map<std::string, QLineEdit*> fields_;
  std::map<std::string, QComboBox*> choices_;
  QLabel* problem_ = nullptr;
};

}  // namespace creasewright
