#pragma once

#include <QMenu>

#include "session/design_session.h"

namespace creasewright {

/// What the primary button offers: print the template, save it as a file.
class MakeMenu : public QMenu {
  Q_OBJECT

 public:
  MakeMenu(DesignSession& session, QWidget* window);

 private:
  void print();
  void saveFile();
  void showGuide();
  void planKit();
  bool mayMake();

  DesignSession& session_;
  QWidget* window_;
};

}  // namespace creasewright
