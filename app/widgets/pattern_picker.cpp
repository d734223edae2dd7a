#include "widgets/pattern_picker.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFileDialog>
#include <QFormLayout>
#include <QLabel>
#include <QMenu>
#include <QSpinBox>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "bridge/pattern_tile.h"
#include "bridge/problem_text.h"
#include "bridge/stock_words.h"
#include "bridge/style_text.h"
#include "fit/card_pattern.h"
#include "output/paper_file.h"
#include "patterns/pattern.h"
#include "units/length_text.h"
#include "widgets/colour_button.h"
#include "widgets/length_edit.h"
#include "widgets/swatch.h"

namespace creasewright {

namespace {

constexpr int kPatternSwatch = 28;

/// A square of the paper, a little more than one repeat across.
QIcon paperSwatch(const std::optional<PaperPattern>& paper, double devicePixelRatio, int gap = 0) {
  if (!paper) return swatchIcon(kPatternSwatch, devicePixelRatio, std::nullopt, gap);
  const double across = kPatternSwatch / (1.25 * paper->scale.mm());
  const PatternTile& tile = patternTile(*paper, across * devicePixelRatio);
  QBrush print(tile.image);
  print.setTransform(tile.toPaper *
                     QTransform(across, 0, 0, -across, kPatternSwatch / 2.0, kPatternSwatch / 2.0));
  return swatchIcon(kPatternSwatch, devicePixelRatio, print, gap);
}

}  // namespace

PatternPicker::PatternPicker(const QString& title, bool sides, QWidget* parent)
    : QWidget(parent),
      button_(new QToolButton(this)),
      details_(new QWidget(this)),
      refused_(new QLabel(this)) {
  button_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  button_->setProperty("choice", true);
  button_->setPopupMode(QToolButton::InstantPopup);
  button_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  button_->setIconSize({kPatternSwatch + kSwatchGap, kPatternSwatch});
  button_->setAccessibleName(title);
  setFocusProxy(button_);
  auto* menu = new QMenu(button_);
  button_->setMenu(menu);
  connect(menu, &QMenu::aboutToShow, this, &PatternPicker::fillMenu);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  column->addWidget(button_);
  refused_->setProperty("problem", true);
  refused_->setWordWrap(true);
  refused_->hide();
  column->addWidget(refused_);
  column->addWidget(details_);
  makeDetails(sides);
  setPattern(std::nullopt, false);
}

void PatternPicker::makeDetails(bool sides) {
  auto* column = new QVBoxLayout(details_);
  column->setContentsMargins(12, 0, 0, 0);
  column->setSpacing(6);
  auto* form = new QFormLayout;
  column->addLayout(form);
  scale_ = new LengthEdit(details_);
  scaleTitle_ = new QLabel(tr("Repeats every"), details_);
  scaleTitle_->setBuddy(scale_);
  form->addRow(scaleTitle_, scale_);
  connect(scale_, &LengthEdit::lengthEdited, this, [this](Length scale) {
    PaperPattern paper = *pattern_;
    paper.scale = scale;
    const Result<PaperPattern> checked = checkedPaper(paper);
    scale_->setComplaint(checked ? QString()
                                 : problemSentence(checked.problem(), Unit::Millimetre));
    if (checked) pick(*checked, QStringLiteral("scale"));
  });
  auto* complaint = new QLabel(details_);
  complaint->setProperty("problem", true);
  complaint->setWordWrap(true);
  complaint->hide();
  form->addRow(complaint);
  connect(scale_, &LengthEdit::sentenceChanged, complaint, [complaint](const QString& sentence) {
    complaint->setText(sentence);
    complaint->setVisible(!sentence.isEmpty());
  });
  turn_ = new QSpinBox(details_);
  turn_->setRange(0, 359);
  turn_->setSingleStep(15);
  turn_->setWrapping(true);
  turn_->setSuffix(QStringLiteral("°"));
  form->addRow(tr("Turned by"), turn_);
  connect(turn_, &QSpinBox::valueChanged, this, [this](int turn) {
    PaperPattern paper = *pattern_;
    paper.turn = turn;
    pick(paper, QStringLiteral("turn"));
  });
  if (sides) {
    side_ = new QComboBox(details_);
    side_->addItems({tr("Outside"), tr("Inside")});
    form->addRow(tr("Side"), side_);
    connect(side_, &QComboBox::activated, this, [this](int row) {
      behind_ = row == 1;
      pick(pattern_);
    });
  }
  makePictureFields(form);
  plate_ = new QCheckBox(tr("Words on a plain plate"), details_);
  form->addRow(plate_);
  connect(plate_, &QCheckBox::clicked, this, [this](bool plate) {
    PaperPattern paper = *pattern_;
    paper.plate = plate;
    pick(paper);
  });
  colours_ = new QWidget(details_);
  colourColumn_ = new QVBoxLayout(colours_);
  colourColumn_->setContentsMargins(0, 0, 0, 0);
  colourColumn_->setSpacing(6);
  column->addWidget(colours_);
}

void PatternPicker::makePictureFields(QFormLayout* form) {
  tiled_ = new QCheckBox(tr("Over and over"), details_);
  form->addRow(tiled_);
  connect(tiled_, &QCheckBox::clicked, this, [this](bool tiled) {
    PaperPattern paper = *pattern_;
    if (paper.picture) paper.picture->tiled = tiled;
    pick(paper);
  });
  shifts_ = new QWidget(details_);
  auto* shifts = new QFormLayout(shifts_);
  shifts->setContentsMargins(0, 0, 0, 0);
  const auto shift = [&](const QString& title, const QString& field, Length PaperPicture::*which) {
    auto* edit = new LengthEdit(shifts_);
    edit->setAccessibleName(title);
    shifts->addRow(title, edit);
    connect(edit, &LengthEdit::lengthEdited, this, [this, edit, field, which](Length length) {
      const bool near = length <= kFarthestShift && length >= kFarthestShift * -1;
      edit->setComplaint(
          near ? QString()
               : problemSentence({ProblemCode::PatternUnreadable, "shift", {exactText(length)}},
                                 Unit::Millimetre));
      if (!near || !pattern_->picture) return;
      PaperPattern paper = *pattern_;
      (*paper.picture).*which = length;
      pick(paper, field);
    });
    return edit;
  };
  right_ = shift(tr("To the right by"), QStringLiteral("right"), &PaperPicture::right);
  up_ = shift(tr("Upwards by"), QStringLiteral("up"), &PaperPicture::up);
  form->addRow(shifts_);
}

void PatternPicker::setUnit(Unit unit) {
  for (LengthEdit* edit : {scale_, right_, up_}) edit->setUnit(unit);
}

void PatternPicker::setPattern(const std::optional<PaperPattern>& pattern, bool behind) {
  const bool recoloured = !pattern || !pattern_ || pattern->id != pattern_->id ||
                          pattern->colours != pattern_->colours || colourColumn_->count() == 0;
  pattern_ = pattern;
  behind_ = behind;
  const PatternKind* known = pattern ? patternCalled(pattern->id) : nullptr;
  button_->setText(known != nullptr              ? styleText(known->title)
                   : pattern && pattern->picture ? tr("Picture of your own")
                                                 : tr("No pattern"));
  button_->setIcon(paperSwatch(pattern, devicePixelRatioF(), kSwatchGap));
  details_->setVisible(pattern.has_value());
  if (!pattern) return;
  scale_->setLength(pattern->scale);
  scale_->setComplaint({});
  const QSignalBlocker quiet(turn_);
  turn_->setValue(pattern->turn);
  if (side_ != nullptr) side_->setCurrentIndex(behind ? 1 : 0);
  plate_->setChecked(pattern->plate);
  showPicture();
  if (recoloured) showColours();
}

/// What a picture has in place of colours.
void PatternPicker::showPicture() {
  const bool picture = pattern_->picture.has_value();
  scaleTitle_->setText(picture ? tr("Width in print") : tr("Repeats every"));
  tiled_->setVisible(picture);
  shifts_->setVisible(picture);
  colours_->setVisible(!picture);
  if (!picture) return;
  tiled_->setChecked(pattern_->picture->tiled);
  right_->setLength(pattern_->picture->right);
  up_->setLength(pattern_->picture->up);
}

void PatternPicker::takePicture(const QString& path) {
  const Result<PaperPattern> paper = readPaperFile(path);
  refused_->setText(paper ? QString() : problemSentence(paper.problem(), Unit::Millimetre));
  refused_->setVisible(!paper);
  if (paper) pick(*paper);
}

QString PatternPicker::complaint() const { return refused_->text(); }

void PatternPicker::chooseFile() {
  const QString path = QFileDialog::getOpenFileName(this, tr("Picture for the paper"), {},
                                                    tr("Pictures (*.png *.jpg *.jpeg *.svg)"));
  if (!path.isEmpty()) takePicture(path);
}

/// A button for each colour that the pattern has.
void PatternPicker::showColours() {
  const std::vector<Colour> shown =
      pattern_->picture ? std::vector<Colour>() : coloursOf(*pattern_);
  const auto count = static_cast<int>(shown.size());
  while (colourColumn_->count() > count) {
    QWidget* last = colourColumn_->takeAt(count)->widget();
    last->hide();
    last->deleteLater();
  }
  for (int i = colourColumn_->count(); i < count; ++i) {
    auto* button = new ColourButton(tr("As printed"), colours_);
    button->setAccessibleName(i == 0 ? tr("Ground") : tr("Colour %1").arg(i + 1));
    button->setToolTip(button->accessibleName());
    const auto which = static_cast<std::size_t>(i);
    connect(button, &ColourButton::colourPicked, this,
            [this, which](const std::optional<Colour>& colour) { pickColour(which, colour); });
    colourColumn_->addWidget(button);
  }
  for (int i = 0; i < count; ++i)
    static_cast<ColourButton*>(colourColumn_->itemAt(i)->widget())
        ->setColour(shown[static_cast<std::size_t>(i)]);
}

void PatternPicker::pickColour(std::size_t which, const std::optional<Colour>& colour) {
  const PatternKind* known = patternCalled(pattern_->id);
  if (known == nullptr) return;
  PaperPattern paper = *pattern_;
  paper.colours = coloursOf(paper);
  paper.colours.at(which) = colour.value_or(known->colours.at(which));
  if (paper.colours == known->colours) paper.colours.clear();
  pick(paper);
}

void PatternPicker::fillMenu() {
  QMenu* menu = button_->menu();
  menu->clear();
  const auto offer = [&](const QString& name, const std::optional<PaperPattern>& paper) {
    QAction* action = menu->addAction(paperSwatch(paper, devicePixelRatioF()), name);
    action->setIconVisibleInMenu(true);
    connect(action, &QAction::triggered, this, [this, paper] { pick(paper); });
  };
  offer(tr("No pattern"), std::nullopt);
  menu->addSeparator();
  for (const PatternKind& pattern : patterns())
    offer(styleText(pattern.title), usualPaper(pattern));
  menu->addSeparator();
  menu->addAction(tr("Picture file…"), this, &PatternPicker::chooseFile);
}

void PatternPicker::pick(const std::optional<PaperPattern>& pattern, const QString& field) {
  refused_->clear();
  refused_->hide();
  const bool behind = pattern && behind_;
  setPattern(pattern, behind);
  emit patternPicked(pattern, behind, field);
}

}  // namespace creasewright
