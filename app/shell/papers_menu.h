#pragma once

#include <QMenu>

#include "session/design_session.h"

namespace creasewright {

class FoldPanel;

/// What can be made of a design: the template, the guide, a class, files.
class PapersMenu : public QMenu {
  Q_OBJECT

 public:
  /// `fold` shows what a picture begins with.
  PapersMenu(DesignSession& session, FoldPanel& fold, QWidget* window);

 private:
  void print();
  void printPapers();
  void saveFile();
  void savePicture();
  void showGuide();
  void planKit();
  bool mayMake();

  DesignSession& session_;
  FoldPanel& fold_;
  QWidget* window_;
};

}  // namespace creasewright
