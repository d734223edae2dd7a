#pragma once

#include <QMenu>

#include "session/design_session.h"

namespace creasewright {

/// What can be made of a design: the template, the guide, a class, files.
class PapersMenu : public QMenu {
  Q_OBJECT

 public:
  PapersMenu(DesignSession& session, QWidget* window);

 private:
  void print();
  void printPapers();
  void saveFile();
  void showGuide();
  void planKit();
  bool mayMake();

  DesignSession& session_;
  QWidget* window_;
};

}  // namespace creasewright
