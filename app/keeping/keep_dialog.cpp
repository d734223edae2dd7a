#include "keeping/keep_dialog.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "base/file_limits.h"
#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "keeping/seen_measures.h"
#include "keeping/suited_sizes_fields.h"
#include "widgets/answer_row.h"
#include "widgets/labelled_field.h"
#include "widgets/window_size.h"

namespace creasewright {

namespace {

constexpr QSize kWanted{560, 680};
constexpr int kNoteHeight = 64;

}  // namespace

KeepDialog::KeepDialog(Design design, std::vector<OwnStyle> kept, const std::string& again,
                       Unit unit, QWidget* parent)
    : QDialog(parent),
      design_(std::move(design)),
      kept_(std::move(kept)),
      unit_(unit),
      again_(new QComboBox(this)),
      name_(new QLineEdit(this)),
      note_(new QPlainTextEdit(this)),
      problem_(new QLabel(this)) {
  setWindowTitle(tr("Keep as my style"));
  std::erase_if(kept_, [this](const OwnStyle& style) { return style.base != design_.styleId; });
  again_->addItem(tr("A new style"));
  int first = 0;
  for (const OwnStyle& style : kept_) {
    again_->addItem(tr("“%1”, kept again").arg(text(style.title)));
    if (style.id == again) first = again_->count() - 1;
  }
  name_->setMaxLength(static_cast<int>(kLongestTitle));
  note_->setTabChangesFocus(true);
  note_->setFixedHeight(kNoteHeight);
  note_->setPlaceholderText(tr("What it suits, what to watch when making it"));
  problem_->setProperty("problem", true);
  problem_->setWordWrap(true);
  problem_->hide();

  auto* page = new QWidget;
  again_->setCurrentIndex(first);
  makeFields(page,
             first > 0 ? wordsOf(kept_[static_cast<std::size_t>(first) - 1]) : wordsFor(design_));
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setWidget(page);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(scroll, 1);
  layout->addWidget(problem_);
  connect(addAnswerRow(layout, this, tr("Keep")), &QPushButton::clicked, this, &KeepDialog::keep);
  connect(again_, &QComboBox::activated, this, &KeepDialog::showWordsOf);
  resize(fittingScreen(*this, kWanted));
  name_->setFocus();
  name_->selectAll();
}

void KeepDialog::makeFields(QWidget* page, const StyleWords& words) {
  auto* layout = new QVBoxLayout(page);
  layout->setContentsMargins(0, 0, 8, 0);
  if (kept_.empty())
    again_->hide();
  else
    addLabelledField(layout, tr("Keep it as"), again_);
  addLabelledField(layout, tr("Name"), name_);
  addLabelledField(layout, tr("Note"), note_);
  name_->setText(text(words.title));
  note_->setPlainText(text(words.summary));
  sizes_ = new SuitedSizesFields(words.suits, design_.product, unit_, page);
  layout->addWidget(sizes_);
  layout->addSpacing(8);
  layout->addWidget(new QLabel(tr("Measures that a later user sees"), page));
  seen_ = new SeenMeasures(design_, words, unit_, page);
  layout->addWidget(seen_);
  auto* stays = new QLabel(tr("The changes made by hand go with the style. Product, card, extras "
                              "and notes stay with this design."),
                           page);
  stays->setProperty("quiet", true);
  stays->setWordWrap(true);
  layout->addSpacing(8);
  layout->addWidget(stays);
  layout->addStretch(1);
}

const OwnStyle* KeepDialog::before() const {
  const int choice = again_->currentIndex();
  return choice > 0 ? &kept_[static_cast<std::size_t>(choice) - 1] : nullptr;
}

void KeepDialog::showWordsOf(int) {
  const OwnStyle* style = before();
  const StyleWords words = style != nullptr ? wordsOf(*style) : wordsFor(design_);
  if (style != nullptr) {
    name_->setText(text(words.title));
    note_->setPlainText(text(words.summary));
  }
  QWidget* page = sizes_->parentWidget();
  const auto put = [page](QWidget* fresh, QWidget* old) {
    delete page->layout()->replaceWidget(old, fresh);
    old->hide();
    old->deleteLater();
    fresh->show();
  };
  auto* sizes = new SuitedSizesFields(words.suits, design_.product, unit_, page);
  auto* seen = new SeenMeasures(design_, words, unit_, page);
  put(sizes, sizes_);
  put(seen, seen_);
  sizes_ = sizes;
  seen_ = seen;
}

void KeepDialog::complain(const QString& sentence) {
  problem_->setText(sentence);
  problem_->show();
}

void KeepDialog::keep() {
  if (name_->text().trimmed().isEmpty()) {
    name_->setFocus();
    return complain(tr("Give the style a name."));
  }
  bool well = true;
  StyleWords words;
  words.title = name_->text().trimmed().toStdString();
  words.summary = note_->toPlainText().trimmed().toStdString();
  words.suits = sizes_->sizes(well);
  if (!well) return;
  words.seen = seen_->seen();
  words.rules = seen_->rules();
  Result<OwnStyle> style = keepStyle(design_, words, before());
  if (!style) {
    seen_->focusRule(style.problem().where);
    return complain(problemSentence(style.problem(), unit_));
  }
  style_ = std::move(style).value();
  accept();
}

}  // namespace creasewright
