#pragma once

#include <string>

#include "extras/extra_kind.h"
#include "panels/parameter_rows.h"
#include "panels/row_column.h"
#include "session/design_session.h"

class QComboBox;
class QLabel;
class QVBoxLayout;

namespace creasewright {

class CardBox;
class ColourButton;
class LabelFields;
class LayerRow;
class PatternPicker;

/// One extra of the design: its measures, card, face and text, and a button to leave it out.
class ExtraRow : public DesignRow {
  Q_OBJECT

 public:
  /// `index` is that of an extra the design has.
  ExtraRow(DesignSession& session, int index, QWidget* parent = nullptr);

  void showDesign() override;

 private:
  void makeHeading(const ExtraKind& kind);
  void makeLabel(const ExtraKind& kind);
  void makeCard();
  void makeColour();
  void makePattern();
  void makeHost();
  void makeLayers();
  void makeFace();
  void showHosts();
  void showFaces();
  void showCard();
  void showProblem();
  void setParameter(const QString& key, qint64 raw);
  void remove();
  /// Changes this extra; `field` lets typing on merge into one step of the history.
  void change(const QString& field, const std::function<void(Extra&)>& edit);
  [[nodiscard]] const Extra& extra() const;

  DesignSession& session_;
  std::size_t index_;
  std::string kind_;
  QVBoxLayout* layout_;
  ParameterRows* rows_ = nullptr;
  CardBox* card_ = nullptr;
  ColourButton* colour_ = nullptr;
  PatternPicker* pattern_ = nullptr;
  QComboBox* host_ = nullptr;
  QComboBox* face_ = nullptr;
  std::vector<LayerRow*> layers_;
  LabelFields* label_ = nullptr;
  QLabel* problem_ = nullptr;
};

}  // namespace creasewright
