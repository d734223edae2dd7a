#include "shelf/words_dialog.h"

#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "base/file_limits.h"
#include "widgets/answer_row.h"
#include "widgets/labelled_field.h"

namespace creasewright {

namespace {

constexpr int kDialogWidth = 420;

}  // namespace

WordsDialog::WordsDialog(const DesignWords& words, QWidget* parent)
    : QDialog(parent),
      title_(new QLineEdit(words.title, this)),
      tags_(new QLineEdit(words.tags.join(QStringLiteral(", ")), this)),
      notes_(new QPlainTextEdit(words.notes, this)) {
  title_->setMaxLength(static_cast<int>(kLongestTitle));
  setWindowTitle(tr("Title, tags and notes"));
  setMinimumWidth(kDialogWidth);
  tags_->setPlaceholderText(tr("Words to find it by, with commas between them"));
  notes_->setTabChangesFocus(true);
  auto* layout = new QVBoxLayout(this);
  addLabelledField(layout, tr("Title"), title_);
  addLabelledField(layout, tr("Tags"), tags_);
  addLabelledField(layout, tr("Notes"), notes_);
  connect(addAnswerRow(layout, this, tr("Keep")), &QPushButton::clicked, this, &QDialog::accept);
}

DesignWords WordsDialog::words() const {
  return {title_->text(), tags_->text().split(QLatin1Char(',')), notes_->toPlainText()};
}

}  // namespace creasewright
