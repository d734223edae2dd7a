#pragma once

#include <QWidget>
#include <vector>

#include "panels/extra_row.h"
#include "session/design_session.h"

class QLabel;
class QToolButton;
class QVBoxLayout;

namespace creasewright {

/// What goes with the box: bands, mats, labels and the like, each with its measures.
class ExtrasPanel : public QWidget {
  Q_OBJECT

 public:
  explicit ExtrasPanel(DesignSession& session, QWidget* parent = nullptr);

 private:
  void makeAddMenu();
  void addExtra(std::string_view kind);
  void showDesign();
  void makeRows();

  DesignSession& session_;
  QVBoxLayout* layout_;
  QToolButton* add_;
  QLabel* none_;
  std::vector<ExtraRow*> rows_;
};

}  // namespace creasewright
