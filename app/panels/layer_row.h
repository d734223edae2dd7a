#pragma once

#include <functional>

#include "panels/parameter_rows.h"
#include "session/design_session.h"

class QVBoxLayout;

namespace creasewright {

class CardBox;
class ColourButton;
class LabelFields;
class PatternPicker;

/// One layer of a label: its shape, size, hold, card, colour, pattern and text, and a button to
/// leave it out.
class LayerRow : public QWidget {
  Q_OBJECT

 public:
  /// `extra` and `layer` are places of what the design has.
  LayerRow(DesignSession& session, int extra, int layer, QWidget* parent = nullptr);

  void showDesign();

 private:
  void makeHeading();
  void makeLabel();
  void makeCard();
  void change(const QString& field, const std::function<void(Extra&)>& edit);
  void changeLayer(const QString& field, const std::function<void(ExtraLayer&)>& edit);
  void setParameter(const QString& key, qint64 raw);
  [[nodiscard]] const ExtraLayer& layer() const;

  DesignSession& session_;
  std::size_t extra_;
  std::size_t layer_;
  QVBoxLayout* layout_;
  ParameterRows* rows_;
  LabelFields* label_;
  CardBox* card_ = nullptr;
  ColourButton* colour_ = nullptr;
  PatternPicker* pattern_ = nullptr;
};

}  // namespace creasewright
