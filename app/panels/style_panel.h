#pragma once

#include <QWidget>

#include "session/design_session.h"

class QLabel;
class QButtonGroup;

namespace creasewright {

/// The styles with a live picture of each; the chosen one says what it is.
class StylePanel : public QWidget {
  Q_OBJECT

 public:
  explicit StylePanel(DesignSession& session, QWidget* parent = nullptr);

 private:
  void showDesign();
  void drawPictures();

  DesignSession& session_;
  QButtonGroup* group_;
  QLabel* summary_;
  Design drawn_;
};

}  // namespace creasewright
