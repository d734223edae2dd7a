#include "panels/extra_row.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>

#include "base/problem_extra.h"
#include "bridge/problem_text.h"
#include "bridge/stock_words.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "commands/edits.h"
#include "document/build_extras.h"
#include "document/remove_extra.h"
#include "extras/hosting.h"
#include "extras/layer_stack.h"
#include "own_stock/stock_store.h"
#include "panels/change_dressing.h"
#include "panels/label_fields.h"
#include "panels/layer_row.h"
#include "panels/punch_box.h"
#include "stockroom/card_box.h"
#include "widgets/colour_button.h"
#include "widgets/icon.h"
#include "widgets/labelled_field.h"
#include "widgets/pattern_picker.h"

namespace creasewright {

ExtraRow::ExtraRow(DesignSession& session, int index, QWidget* parent)
    : DesignRow(parent),
      session_(session),
      index_(static_cast<std::size_t>(index)),
      kind_(session.design().extras.at(index_).kind),
      layout_(new QVBoxLayout(this)) {
  layout_->setContentsMargins(0, 0, 0, 8);
  layout_->setSpacing(6);
  const Result<const ExtraKind*> known = findExtraKind(kind_);
  if (!known) return;
  const ExtraKind& kind = **known;
  makeHeading(kind);
  rows_ = new ParameterRows(withoutLabelFields(kind.parameters), this);
  connect(rows_, &ParameterRows::edited, this, &ExtraRow::setParameter);
  layout_->addWidget(rows_);
  if (kind.written) makeLabel(kind);
  makeHost();
  if (kind.onFace) makeFace();
  if (kind.ofCard) makeCard();
  if (!kind.ofFilm) {
    makeColour();
    makePattern();
  }
  if (kind.layered) makeLayers();
  problem_ = new QLabel(this);
  problem_->setProperty("problem", true);
  problem_->setWordWrap(true);
  layout_->addWidget(problem_);
}

void ExtraRow::makeHeading(const ExtraKind& kind) {
  auto* title = new QLabel(styleText(kind.title), this);
  title->setToolTip(styleText(kind.summary));
  QFont bold = title->font();
  bold.setBold(true);
  title->setFont(bold);
  auto* leave = new QToolButton(this);
  leave->setText(tr("Remove"));
  leave->setAutoRaise(true);
  leave->setAccessibleName(tr("Remove %1").arg(styleText(kind.title)));
  connect(leave, &QToolButton::clicked, this, &ExtraRow::remove);
  auto* line = new QHBoxLayout;
  line->addWidget(title, 1);
  line->addWidget(leave);
  layout_->addLayout(line);
}

void ExtraRow::makeCard() {
  card_ = new CardBox(this);
  card_->offer(clearFilm());
  connect(card_, &CardBox::cardPicked, this, [this](Card picked) {
    picked.colours = coloursOf(picked, extra().card.colours);
    change({}, [&](Extra& extra) { extra.card = picked; });
  });
  addLabelledField(layout_, tr("Card"), card_);
}

void ExtraRow::makeColour() {
  colour_ = new ColourButton(tr("Plain"), this);
  connect(colour_, &ColourButton::colourPicked, this, [this](const std::optional<Colour>& picked) {
    change({}, [&](Extra& extra) { extra.card.colours = {picked, {}}; });
  });
  addLabelledField(layout_, tr("Colour"), colour_);
}

void ExtraRow::makePattern() {
  pattern_ = new PatternPicker(tr("Pattern"), false, this);
  connect(pattern_, &PatternPicker::patternPicked, this,
          [this](const std::optional<PaperPattern>& picked, bool, const QString& field) {
            change(field, [&](Extra& extra) {
              extra.card.colours.pattern = picked;
              extra.card.colours.patternBehind = false;
            });
          });
  addLabelledField(layout_, tr("Pattern"), pattern_);
}

void ExtraRow::makeHost() {
  host_ = new QComboBox(this);
  host_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  host_->setMinimumContentsLength(12);
  connect(host_, &QComboBox::activated, this, [this](int row) {
    const int host = host_->itemData(row).toInt();
    change({}, [&](Extra& extra) { extra.host = host; });
  });
  addLabelledField(layout_, tr("Goes on"), host_);
}

void ExtraRow::makeLayers() {
  const int count = static_cast<int>(extra().layers.size());
  for (int layer = 0; layer < count; ++layer) {
    auto* row = new LayerRow(session_, static_cast<int>(index_), layer, this);
    layers_.push_back(row);
    layout_->addWidget(row);
  }
  auto* add = new QToolButton(this);
  add->setText(tr("Add a layer"));
  add->setAutoRaise(true);
  connect(add, &QToolButton::clicked, this, [this] {
    change({}, [&](Extra& extra) {
      extra.layers.push_back(standardLayer(extra.card, session_.design().grid));
    });
  });
  layout_->addWidget(add, 0, Qt::AlignLeft);
}

void ExtraRow::makeFace() {
  face_ = new QComboBox(this);
  face_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  face_->setMinimumContentsLength(12);
  connect(face_, &QComboBox::activated, this, [this](int row) {
    const std::string face = face_->itemData(row).toString().toStdString();
    change({}, [&](Extra& extra) { extra.face = face; });
  });
  addLabelledField(layout_, tr("Face"), face_);
}

void ExtraRow::makeLabel(const ExtraKind& kind) {
  label_ = new LabelFields(
      kind.layered ? LabelFields::Making::CutOrPunched : LabelFields::Making::Cut, this);
  connect(
      label_, &LabelFields::punchPicked, this,
      [this](const Punch* punch) {
        change(
            {}, [&](Extra& extra) { takePunch(extra.parameters, punch); });
      });
  connect(label_, &LabelFields::linesEdited, this, [this](const std::vector<std::string>& lines) {
    change(QStringLiteral("text"), [&](Extra& extra) { extra.lines = lines; });
  });
  connect(label_, &LabelFields::edited, this, &ExtraRow::setParameter);
  layout_->addWidget(label_);
}

const Extra& ExtraRow::extra() const { return session_.design().extras.at(index_); }

void ExtraRow::change(const QString& field, const std::function<void(Extra&)>& edit) {
  std::vector<Extra> extras = session_.design().extras;
  edit(extras.at(index_));
  const QString merge =
      field.isEmpty() ? field : QStringLiteral("extra %1 %2").arg(index_).arg(field);
  changeDressing(session_, std::move(extras), extraTitle(kind_), merge);
}

void ExtraRow::setParameter(const QString& key, qint64 raw) {
  change(
      key, [&](Extra& extra) { extra.parameters.setCount(key.toStdString(), raw); });
}

void ExtraRow::remove() {
  changeExtras(session_, withoutExtra(session_.built(), static_cast<int>(index_)).extras,
               extraTitle(kind_));
}

void ExtraRow::showDesign() {
  if (rows_ == nullptr) return;
  rows_->setUnit(session_.unit());
  rows_->setValues(extra().parameters, stepOf(session_.design().grid, session_.unit()));
  if (const Result<const ExtraKind*> kind = findExtraKind(kind_)) {
    rows_->explainZeros((*kind)->parameters, extra().parameters);
    if ((*kind)->layered) showFoam(*rows_, extra().parameters);
  }
  showHosts();
  showFaces();
  showCard();
  for (LayerRow* layer : layers_) layer->showDesign();
  if (label_ != nullptr) label_->showValues(extra().parameters, extra().lines, session_.unit());
  showProblem();
}

void ExtraRow::showHosts() {
  const std::vector<Extra>& extras = session_.design().extras;
  const std::vector<int> possible = possibleHosts(extras, static_cast<int>(index_));
  host_->clear();
  host_->addItem(tr("The outermost"), kOutermost);
  host_->addItem(tr("The box"), kOnBox);
  for (const int host : possible)
    host_->addItem(
        tr("%1 (%2)").arg(extraTitle(extras.at(static_cast<std::size_t>(host)).kind)).arg(host + 1),
        host);
  host_->setCurrentIndex(std::max(0, host_->findData(extra().host)));
}

void ExtraRow::showFaces() {
  if (face_ == nullptr) return;
  face_->clear();
  const Result<const ExtraKind*> kind = findExtraKind(kind_);
  const bool onEveryFace = kind && (*kind)->onEveryFace;
  face_->addItem(onEveryFace ? tr("Every face") : tr("The largest"), QString());
  for (const std::string& name : faceNames(session_.built(), kind ? *kind : nullptr))
    face_->addItem(faceTitle(name), text(name));
  face_->setCurrentIndex(std::max(0, face_->findData(text(extra().face))));
}

void ExtraRow::showCard() {
  if (colour_ != nullptr) colour_->setColour(extra().card.colours.face);
  if (pattern_ != nullptr) {
    pattern_->setUnit(session_.unit());
    pattern_->setPattern(extra().card.colours.pattern, false);
  }
  if (card_ == nullptr) return;
  card_->setCard(extra().card, stockName(extra().card.name));
}

void ExtraRow::showProblem() {
  QString sentence;
  for (const Problem& problem : session_.problemsOfNumbers()) {
    const bool own =
        problem.code == ProblemCode::ExtraNoPlace || problem.code == ProblemCode::ExtraTooLarge ||
        problem.code == ProblemCode::ExtraInTheWay || problem.code == ProblemCode::ExtraCovered ||
        problem.code == ProblemCode::ExtraFaceUnknown ||
        problem.code == ProblemCode::ExtraHostUnfit ||
        problem.code == ProblemCode::ExtraHostUnknown ||
        problem.code == ProblemCode::ExtraHostCircle || problem.code == ProblemCode::ExtraOffFace ||
        problem.code == ProblemCode::ExtraOverFoam || problem.code == ProblemCode::ExtraInAir ||
        problem.code == ProblemCode::ExtraOverBow || problem.code == ProblemCode::ExtraMiddleOff ||
        problem.code == ProblemCode::ExtraRoomTaken ||
        problem.code == ProblemCode::ExtraInsideSmall ||
        problem.code == ProblemCode::ExtraNotRound || problem.code == ProblemCode::ExtraUnhung ||
        problem.code == ProblemCode::ExtraUnderRound ||
        problem.code == ProblemCode::ExtraWidthUnused ||
        problem.code == ProblemCode::LayerInsetLarge || problem.code == ProblemCode::LayerTooLarge;
    if ((own && problem.where == kind_) || extraOfMeasure(problem) == kind_)
      sentence = problemSentence(problem, session_.unit());
  }
  if (sentence.isEmpty() && isPunched(extra()))
    if (const auto punches = ownPunches(); !punches)
      sentence = problemSentence(punches.problem(), session_.unit());
  problem_->setText(sentence);
  problem_->setVisible(!sentence.isEmpty());
}

}  // namespace creasewright
