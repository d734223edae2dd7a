#pragma once

#include <QWidget>

#include "session/design_session.h"

class QLabel;

namespace creasewright {

/// The style in hand with its live picture, and the way to the others.
class StylePanel : public QWidget {
  Q_OBJECT

 public:
  explicit StylePanel(DesignSession& session, QWidget* parent = nullptr);

 signals:
  void galleryAsked();

 private:
  void showDesign();

  DesignSession& session_;
  QLabel* picture_;
  QLabel* title_;
  QLabel* summary_;
};

}  // namespace creasewright
