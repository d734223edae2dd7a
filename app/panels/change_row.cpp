#include "panels/change_row.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QToolButton>
#include <QVBoxLayout>
#include <algorithm>
#include <set>

#include "bridge/net_words.h"
#include "bridge/problem_text.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "commands/edits.h"
#include "edits/kinds/crease_site.h"
#include "edits/kinds/halves.h"
#include "widgets/icon.h"
#include "widgets/labelled_field.h"

namespace creasewright {

namespace {

constexpr int kLongestFormula = 200;

/// A piece and a panel as one word.
QString placeWord(const std::string& piece, const std::string& panel) {
  return text(piece) + QLatin1Char(':') + text(panel);
}

std::string writtenOf(const Edit& edit, const EditMeasure& measure) {
  const auto found = edit.measures.find(measure.key);
  return found == edit.measures.end() ? std::string(measure.standard) : found->second;
}

std::set<std::string> setOf(const std::vector<std::string>& names) {
  return {names.begin(), names.end()};
}

QToolButton* smallButton(const char* icon, const QString& words, QWidget* parent) {
  auto* button = new QToolButton(parent);
  button->setIcon(lineIcon(QLatin1String(icon)));
  button->setAutoRaise(true);
  button->setToolTip(words);
  button->setAccessibleName(words);
  return button;
}

}  // namespace

ChangeRow::ChangeRow(DesignSession& session, int index, QWidget* parent)
    : DesignRow(parent),
      session_(session),
      index_(static_cast<std::size_t>(index)),
      layout_(new QVBoxLayout(this)) {
  layout_->setContentsMargins(0, 0, 0, 8);
  layout_->setSpacing(6);
  const Result<const EditKind*> known = findEditKind(edit().kind);
  if (!known) return;
  known_ = *known;
  makeHeading(*known_);
  makePlace(*known_);
  for (const EditMeasure& measure : known_->measures) makeMeasure(measure);
  problem_ = new QLabel(this);
  problem_->setProperty("problem", true);
  problem_->setWordWrap(true);
  layout_->addWidget(problem_);
}

void ChangeRow::makeHeading(const EditKind& kind) {
  const QString title = styleText(kind.title);
  on_ = new QCheckBox(title, this);
  on_->setToolTip(styleText(kind.summary));
  connect(on_, &QCheckBox::clicked, this,
          [this](bool on) { change([on](Edit& edit) { edit.on = on; }); });
  up_ = smallButton("up", tr("Make %1 earlier").arg(title), this);
  connect(up_, &QToolButton::clicked, this, [this] { moveBy(-1); });
  down_ = smallButton("down", tr("Make %1 later").arg(title), this);
  connect(down_, &QToolButton::clicked, this, [this] { moveBy(1); });
  auto* leave = new QToolButton(this);
  leave->setText(tr("Remove"));
  leave->setAutoRaise(true);
  leave->setAccessibleName(tr("Remove %1").arg(title));
  connect(leave, &QToolButton::clicked, this, &ChangeRow::remove);
  auto* line = new QHBoxLayout;
  line->addWidget(on_, 1);
  for (QToolButton* button : {up_, down_, leave}) line->addWidget(button);
  layout_->addLayout(line);
}

void ChangeRow::makePlace(const EditKind& kind) {
  const auto narrow = [](QComboBox* box) {
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(12);
  };
  panel_ = new QComboBox(this);
  narrow(panel_);
  connect(panel_, &QComboBox::activated, this, [this](int row) {
    const QString place = panel_->itemData(row).toString();
    change([&place](Edit& edit) {
      edit.piece = place.section(QLatin1Char(':'), 0, 0).toStdString();
      edit.panel = place.section(QLatin1Char(':'), 1).toStdString();
    });
  });
  addLabelledField(layout_, tr("Panel"), panel_);
  if (kind.place == EditPlace::Panel) return;
  edge_ = new QComboBox(this);
  narrow(edge_);
  connect(edge_, &QComboBox::activated, this, [this](int row) {
    const std::string name = edge_->itemData(row).toString().toStdString();
    change([&name](Edit& edit) { edit.edge = name; });
  });
  addLabelledField(layout_, kind.place == EditPlace::Edge ? tr("Edge") : tr("Fold at the edge"),
                   edge_);
}

void ChangeRow::makeMeasure(const EditMeasure& measure) {
  const std::string key(measure.key);
  const QString title = styleText(measure.title);
  if (!measure.choices.empty()) {
    auto* box = new QComboBox(this);
    for (const Worded& choice : measure.choices)
      box->addItem(styleText(choice), text(choice.source()));
    connect(box, &QComboBox::activated, this, [this, key, box](int row) {
      const std::string value = box->itemData(row).toString().toStdString();
      change([&](Edit& edit) { edit.measures[key] = value; });
    });
    choices_[key] = box;
    addLabelledField(layout_, title, box);
    return;
  }
  auto* field = new QLineEdit(this);
  field->setMaxLength(kLongestFormula);
  const QString hint = styleText(measure.hint);
  field->setToolTip(hint.isEmpty() ? tr("A number, or a sum such as “panel-width / 2 - 3 mm”")
                                   : hint);
  connect(field, &QLineEdit::editingFinished, this, [this, key, field] {
    if (!field->isModified()) return;
    field->setModified(false);
    const std::string written = field->text().trimmed().toStdString();
    change([&](Edit& edit) {
      if (written.empty())
        edit.measures.erase(key);
      else
        edit.measures[key] = written;
    });
  });
  fields_[key] = field;
  addLabelledField(layout_, title, field);
}

const Edit& ChangeRow::edit() const { return session_.design().edits.at(index_); }

void ChangeRow::change(const std::function<void(Edit&)>& how) {
  std::vector<Edit> edits = session_.design().edits;
  how(edits.at(index_));
  changeEdits(session_, std::move(edits), styleText(known_->title));
}

void ChangeRow::moveBy(int places) {
  std::vector<Edit> edits = session_.design().edits;
  const auto to = static_cast<std::ptrdiff_t>(index_) + places;
  if (to < 0 || to >= std::ssize(edits)) return;
  std::swap(edits.at(index_), edits.at(static_cast<std::size_t>(to)));
  changeEdits(session_, std::move(edits), tr("order of changes"));
}

void ChangeRow::remove() {
  std::vector<Edit> edits = session_.design().edits;
  edits.erase(edits.begin() + static_cast<std::ptrdiff_t>(index_));
  changeEdits(session_, std::move(edits), styleText(known_->title));
}

void ChangeRow::showDesign() {
  if (known_ == nullptr) return;
  on_->setChecked(edit().on);
  up_->setEnabled(index_ > 0);
  down_->setEnabled(index_ + 1 < session_.design().edits.size());
  showPlace();
  showMeasures();
  showProblem();
}

/// The panels of the box's own pieces; a place that is gone stays in the list as it was written.
void ChangeRow::showPlace() {
  const std::vector<BuiltPiece>& pieces = session_.built().pieces;
  const auto own = std::ranges::count_if(pieces, [](const BuiltPiece& p) { return !p.role; });
  const std::string host =
      edit().piece.empty() && !pieces.empty() ? pieces.front().name : edit().piece;
  const QString now = placeWord(host, edit().panel);
  QStringList places;
  for (const BuiltPiece& piece : pieces)
    for (const Panel& panel : piece.net.panels)
      if (!piece.role) places += placeWord(piece.name, panel.id);
  if (places != places_ || panel_->findData(now) < 0) {
    places_ = std::move(places);
    fillPlaces(own > 1);
    if (panel_->findData(now) < 0) panel_->addItem(panelTitle(edit().panel), now);
  }
  panel_->setCurrentIndex(panel_->findData(now));
  if (edge_ != nullptr) showEdges(host);
}

void ChangeRow::fillPlaces(bool withPiece) {
  panel_->clear();
  for (const BuiltPiece& piece : session_.built().pieces) {
    if (piece.role) continue;
    for (const Panel& panel : piece.net.panels) {
      const QString title = panelTitle(panel.id);
      panel_->addItem(
          withPiece ? tr("%1: %2", "piece, panel").arg(pieceTitle(piece.name), title) : title,
          placeWord(piece.name, panel.id));
    }
  }
}

/// The edges of the panel in the piece called `host` that the change may name.
void ChangeRow::showEdges(const std::string& host) {
  std::set<std::string> edges{edit().edge};
  for (const BuiltPiece& piece : session_.built().pieces) {
    const bool here = piece.name == host || isOtherHalf(piece.name);
    const auto panel = here ? piece.net.find(edit().panel) : std::nullopt;
    if (panel) edges.merge(setOf(edgesFor(known_->place, piece.net, *panel)));
  }
  edge_->clear();
  for (const std::string& name : edges)
    if (!name.empty()) edge_->addItem(placeTitle(name).value_or(text(name)), text(name));
  edge_->setCurrentIndex(edge_->findData(text(edit().edge)));
}

void ChangeRow::showMeasures() {
  for (const EditMeasure& measure : known_->measures) {
    const QString written = text(writtenOf(edit(), measure));
    if (const auto box = choices_.find(std::string(measure.key)); box != choices_.end()) {
      box->second->setCurrentIndex(
          box->second->findData(written, Qt::UserRole, Qt::MatchFixedString));
      continue;
    }
    QLineEdit* field = fields_.at(std::string(measure.key));
    if (!field->isModified() && field->text() != written) field->setText(written);
  }
}

void ChangeRow::showProblem() {
  const auto& broken = session_.built().brokenEdits;
  const auto found = broken.find(static_cast<int>(index_));
  problem_->setText(found == broken.end() ? QString()
                                          : problemSentence(found->second, session_.unit()));
  problem_->setVisible(found != broken.end());
}

}  // namespace creasewright
