#pragma once

#include <QDialog>

#include "session/design_session.h"

class QButtonGroup;
class QComboBox;
class QLineEdit;

namespace creasewright {

class MachineFields;

/// Which file to make of the design: what it is good for stands beside each kind.
class ExportDialog : public QDialog {
  Q_OBJECT

 public:
  explicit ExportDialog(DesignSession& session, QWidget* parent = nullptr);

 private:
  void showFields();
  void exportFile();

  DesignSession& session_;
  QButtonGroup* kinds_;
  QComboBox* piece_;
  QLineEdit* names_;
  MachineFields* machine_;
};

}  // namespace creasewright
