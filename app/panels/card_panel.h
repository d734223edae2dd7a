#pragma once

#include <QWidget>

#include "panels/length_row.h"
#include "session/design_session.h"

namespace creasewright {

class CardBox;
class ColourButton;
class PatternPicker;

/// The card: a listed stock, or any thickness measured with a caliper.
class CardPanel : public QWidget {
  Q_OBJECT

 public:
  explicit CardPanel(DesignSession& session, QWidget* parent = nullptr);

 private:
  void showDesign();
  void setCaliper(Length value);

  DesignSession& session_;
  CardBox* stock_;
  LengthRow* caliper_;
  ColourButton* face_;
  ColourButton* back_;
  PatternPicker* pattern_;
};

}  // namespace creasewright
