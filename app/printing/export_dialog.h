#pragma once

#include <QDialog>

#include "session/design_session.h"

class QButtonGroup;
class QComboBox;

namespace creasewright {

/// Which file to make of the design: what it is good for stands beside each kind.
class ExportDialog : public QDialog {
  Q_OBJECT

 public:
  explicit ExportDialog(DesignSession& session, QWidget* parent = nullptr);

 private:
  void exportFile();

  DesignSession& session_;
  QButtonGroup* kinds_;
  QComboBox* piece_;
};

}  // namespace creasewright
