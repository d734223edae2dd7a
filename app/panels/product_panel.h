#pragma once

#include <QWidget>
#include <vector>

#include "panels/length_row.h"
#include "panels/product_fields.h"
#include "session/design_session.h"

class QVBoxLayout;

namespace creasewright {

class ChoiceRow;
class ColourButton;

/// What goes in: shape, its measures, its colour, and how much room it gets.
class ProductPanel : public QWidget {
  Q_OBJECT

 public:
  explicit ProductPanel(DesignSession& session, QWidget* parent = nullptr);

 private:
  void addShapes(QVBoxLayout* layout);
  void addEase(QVBoxLayout* layout);
  void showDesign();
  void makeRows(ProductShape shape);
  void pickShape(int id);
  void setMeasure(std::size_t field, Length value);

  DesignSession& session_;
  ChoiceRow* shapes_;
  ChoiceRow* ease_;
  QWidget* easeBox_;
  ColourButton* colour_;
  QVBoxLayout* rowsLayout_;
  std::vector<ProductField> fields_;
  std::vector<LengthRow*> rows_;
  std::optional<ProductShape> shown_;
  Product last_;  // comes back when the person returns from "none"
};

}  // namespace creasewright
