#pragma once

#include <QWidget>

#include "panels/length_row.h"
#include "session/design_session.h"

class QComboBox;

namespace creasewright {

/// The card: a listed stock, or any thickness measured with a caliper.
class CardPanel : public QWidget {
  Q_OBJECT

 public:
  explicit CardPanel(DesignSession& session, QWidget* parent = nullptr);

 private:
  void showDesign();
  void pick(int index);
  void setCaliper(Length value);

  DesignSession& session_;
  QComboBox* stock_;
  LengthRow* caliper_;
};

}  // namespace creasewright
