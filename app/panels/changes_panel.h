#pragma once

#include <QWidget>
#include <vector>

#include "panels/change_row.h"

class QToolButton;

namespace creasewright {

/// Changes by hand to the net: openings, notches, slits, shaped edges, in the order in which they
/// are made.
class ChangesPanel : public QWidget {
  Q_OBJECT

 public:
  explicit ChangesPanel(DesignSession& session, QWidget* parent = nullptr);

 private:
  void makeAddMenu();
  void add(const EditKind& kind);
  void showDesign();
  void makeRows();

  DesignSession& session_;
  QVBoxLayout* layout_;
  QToolButton* add_;
  QLabel* none_;
  std::vector<ChangeRow*> rows_;
};

}  // namespace creasewright
