#pragma once

#include <QDialog>

#include "papers/guide/readers_guide.h"
#include "session/design_session.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QScrollArea;
class QVBoxLayout;

namespace creasewright {

class PagePreview;

/// The guide as its pages will be, with the choice of units and paper; saves PDF, HTML or pictures.
class GuideWindow : public QDialog {
  Q_OBJECT

 public:
  explicit GuideWindow(DesignSession& session, QWidget* parent = nullptr);

  [[nodiscard]] QComboBox& kind() { return *kind_; }
  [[nodiscard]] QComboBox& type() { return *type_; }
  [[nodiscard]] QComboBox& readers() { return *readers_; }
  [[nodiscard]] QComboBox& hand() { return *hand_; }
  [[nodiscard]] QCheckBox& black() { return *black_; }
  [[nodiscard]] PagePreview& preview() { return *preview_; }

 private:
  void offerReaders(QVBoxLayout& column);
  void offerForms(QVBoxLayout& column);
  void refresh();
  void save(const QString& ending, const QString& filter);
  void savePictures();
  void showGuide(const BuiltDesign& built, const GuideChoices& choices);
  void write(const QString& path);
  [[nodiscard]] std::span<const Readers> chosenReaders() const;
  void tell(const std::optional<Problem>& problem);
  [[nodiscard]] QString suggestedPath(const QString& ending) const;
  [[nodiscard]] GuideChoices choices() const;

  DesignSession& session_;
  QComboBox* kind_;
  QComboBox* readers_;
  QComboBox* units_;
  QComboBox* paper_;
  QComboBox* type_;
  QComboBox* hand_;
  QCheckBox* black_;
  QLabel* status_;
  PagePreview* preview_;
};

}  // namespace creasewright
