#pragma once

#include <QDialog>

#include "bridge/design_words.h"

class QLineEdit;
class QPlainTextEdit;

namespace creasewright {

/// Asks for a design's title, tags and notes.
class WordsDialog : public QDialog {
  Q_OBJECT

 public:
  explicit WordsDialog(const DesignWords& words, QWidget* parent = nullptr);
  [[nodiscard]] DesignWords words() const;

 private:
  QLineEdit* title_;
  QLineEdit* tags_;
  QPlainTextEdit* notes_;
};

}  // namespace creasewright
