#include "widgets/pattern_picker.h"

#include <QComboBox>
#include <QFormLayout>
#include <QGridLayout>
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
#include "patterns/pattern.h"
#include "widgets/colour_button.h"
#include "widgets/length_edit.h"
#include "widgets/swatch.h"

namespace creasewright {

namespace {

constexpr int kPatternSwatch = 28;

/// A square of the paper, a little more than one repeat across.
QIcon paperSwatch(const std::optional<PaperPattern>& paper, double devicePixelRatio) {
  if (!paper) return swatchIcon(kPatternSwatch, devicePixelRatio, std::nullopt);
  const double across = kPatternSwatch / (1.25 * paper->scale.mm());
  const PatternTile& tile = patternTile(*paper, across * devicePixelRatio);
  QBrush print(tile.image);
  print.setTransform(tile.toPaper *
                     QTransform(across, 0, 0, -across, kPatternSwatch / 2.0, kPatternSwatch / 2.0));
  return swatchIcon(kPatternSwatch, devicePixelRatio, print);
}

}  // namespace

PatternPicker::PatternPicker(const QString& title, bool sides, QWidget* parent)
    : QWidget(parent), button_(new QToolButton(this)), details_(new QWidget(this)) {
  button_->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
  button_->setProperty("choice", true);
  button_->setPopupMode(QToolButton::InstantPopup);
  button_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  button_->setIconSize({kPatternSwatch, kPatternSwatch});
  button_->setAccessibleName(title);
  setFocusProxy(button_);
  auto* menu = new QMenu(button_);
  button_->setMenu(menu);
  connect(menu, &QMenu::aboutToShow, this, &PatternPicker::fillMenu);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(6);
  column->addWidget(button_);
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
  form->addRow(tr("Repeats every"), scale_);
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
  colours_ = new QWidget(details_);
  colourGrid_ = new QGridLayout(colours_);
  colourGrid_->setContentsMargins(0, 0, 0, 0);
  column->addWidget(colours_);
}

void PatternPicker::setUnit(Unit unit) { scale_->setUnit(unit); }

void PatternPicker::setPattern(const std::optional<PaperPattern>& pattern, bool behind) {
  const bool recoloured = !pattern || !pattern_ || pattern->id != pattern_->id ||
                          pattern->colours != pattern_->colours || colourGrid_->count() == 0;
  pattern_ = pattern;
  behind_ = behind;
  const PatternKind* known = pattern ? patternCalled(pattern->id) : nullptr;
  button_->setText(known != nullptr ? styleText(known->title) : tr("No pattern"));
  button_->setIcon(paperSwatch(pattern, devicePixelRatioF()));
  details_->setVisible(pattern.has_value());
  if (!pattern) return;
  scale_->setLength(pattern->scale);
  scale_->setComplaint({});
  const QSignalBlocker quiet(turn_);
  turn_->setValue(pattern->turn);
  if (side_ != nullptr) side_->setCurrentIndex(behind ? 1 : 0);
  if (recoloured) showColours();
}

/// A button for each colour that the pattern has.
void PatternPicker::showColours() {
  const std::vector<Colour> shown = coloursOf(*pattern_);
  const auto count = static_cast<int>(shown.size());
  while (colourGrid_->count() > count) {
    QWidget* last = colourGrid_->takeAt(count)->widget();
    last->hide();
    last->deleteLater();
  }
  for (int i = colourGrid_->count(); i < count; ++i) {
    auto* button = new ColourButton(tr("As printed"), colours_);
    button->setAccessibleName(i == 0 ? tr("Ground") : tr("Colour %1").arg(i + 1));
    button->setToolTip(button->accessibleName());
    const auto which = static_cast<std::size_t>(i);
    connect(button, &ColourButton::colourPicked, this,
            [this, which](const std::optional<Colour>& colour) { pickColour(which, colour); });
    colourGrid_->addWidget(button, i / 2, i % 2);
  }
  for (int i = 0; i < count; ++i)
    static_cast<ColourButton*>(colourGrid_->itemAt(i)->widget())
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
}

void PatternPicker::pick(const std::optional<PaperPattern>& pattern, const QString& field) {
  const bool behind = pattern && behind_;
  setPattern(pattern, behind);
  emit patternPicked(pattern, behind, field);
}

}  // namespace creasewright
