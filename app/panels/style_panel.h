#pragma once

#include <QTimer>
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
  void showPicture();

  DesignSession& session_;
  QLabel* picture_;
  QString pictured_;  ///< the title of the style in the picture
  QTimer rest_;       ///< runs until the hand rests
  QLabel* title_;
  QLabel* summary_;
};

}  // namespace creasewright
