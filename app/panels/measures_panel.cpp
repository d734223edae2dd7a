#include "panels/measures_panel.h"

#include <QVBoxLayout>
#include <algorithm>

#include "base/problem_extra.h"
#include "bridge/fit_words.h"
#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "commands/edits.h"
#include "session/places.h"
#include "styles/registry.h"

namespace creasewright {

MeasuresPanel::MeasuresPanel(DesignSession& session, QWidget* parent)
    : QWidget(parent), session_(session), layout_(new QVBoxLayout(this)) {
  layout_->setContentsMargins(0, 0, 0, 0);
  layout_->setSpacing(8);
  connect(&session_, &DesignSession::changed, this, &MeasuresPanel::showDesign);
  connect(&session_, &DesignSession::unitChanged, this, &MeasuresPanel::showUnit);
  connect(&session_.selection(), &Selection::changed, this, &MeasuresPanel::showLit);
  showDesign();
}

bool MeasuresPanel::focusParameter(const std::string& key) {
  if (LengthEdit* field = lengthField(key)) {
    field->setFocus();
    field->selectAll();
    return true;
  }
  return false;
}

LengthEdit* MeasuresPanel::lengthField(const std::string& key) {
  return rows_ == nullptr ? nullptr : rows_->lengthField(key);
}

bool MeasuresPanel::isShown() const {
  const Design& design = session_.design();
  return styleId_ == design.styleId && seen_ == seenMeasures(design);
}

void MeasuresPanel::makeRows() {
  if (isShown()) return;
  styleId_ = session_.design().styleId;
  seen_ = seenMeasures(session_.design());
  if (rows_ != nullptr) {
    rows_->hide();
    rows_->deleteLater();
    rows_ = nullptr;
  }
  const auto style = findStyle(styleId_);
  if (!style) return;
  std::vector<ParameterSpec> specs = (*style)->parameters;
  std::erase_if(specs, [this](const ParameterSpec& spec) {
    return std::ranges::find(seen_, spec.key) == seen_.end();
  });
  rows_ = new ParameterRows(specs, this);
  layout_->addWidget(rows_);
  connect(
      rows_, &ParameterRows::edited, this,
      [this](const QString& key, qint64 raw) {
        changeParameter(session_, key.toStdString(), raw);
      });
  connect(
      rows_, &ParameterRows::focused, this,
      [this](const QString& key, bool in) {
        Selection& selection = session_.selection();
        if (in) {
          selection.keep(placeOf(key.toStdString()));
        } else if (selection.kept().measure == key) {
          selection.keep({});
        }
      });
  connect(rows_, &ParameterRows::pointedAt, this, [this](const QString& key, bool in) {
    session_.selection().hover(in ? placeOf(key.toStdString()) : Place());
  });
  rows_->setUnit(session_.unit());
}

void MeasuresPanel::showDesign() {
  makeRows();
  if (rows_ == nullptr) return;
  places_.clear();
  affected_.reset();
  const Design& design = session_.design();
  rows_->setValues(design.parameters, stepOf(design.grid, session_.unit()));
  showNotes();
  showLit();
}

void MeasuresPanel::showLit() {
  if (rows_ == nullptr || !isShown()) return;
  const Place& lit = session_.selection().lit();
  for (const std::string& key : rows_->lengthKeys())
    rows_->setLit(key, !lit.isEmpty() && lights(lit, placeOf(key)));
}

/// Building the design anew for each measure takes a moment: only for what is pointed at.
const Place& MeasuresPanel::placeOf(const std::string& key) {
  if (const auto known = places_.find(key); known != places_.end()) return known->second;
  if (!affected_) affected_.emplace(session_.design());
  return places_.emplace(key, placeOfMeasure(*affected_, key)).first->second;
}

void MeasuresPanel::showUnit(Unit unit) {
  if (rows_ != nullptr && isShown()) {
    rows_->setUnit(unit);
    showNotes();
  }
}

void MeasuresPanel::showNotes() {
  const Problems problems = session_.problemsOfNumbers();
  for (const std::string& key : rows_->lengthKeys()) {
    rows_->setNote(key, noteFor(key));
    rows_->setComplaint(key, complaintFor(key, problems));
  }
}

QString MeasuresPanel::noteFor(const std::string& key) const {
  const Unit unit = session_.unit();
  for (const FitReason& reason : session_.built().reasons) {
    if (reason.key != key) continue;
    const Length now = session_.design().parameters.length(key);
    if (now != reason.chosen) {
      return reason.ofProduct
                 ? tr("Set by hand. The product asks for %1.").arg(lengthText(reason.chosen, unit))
                 : tr("Set by hand. Ease and card ask for %1.")
                       .arg(lengthText(reason.chosen, unit));
    }
    return fitSentence(reason, unit);
  }
  return {};
}

QString MeasuresPanel::complaintFor(const std::string& key, const Problems& problems) const {
  for (const Problem& problem : problems)
    if (isLimit(problem) && extraOfMeasure(problem).empty() && problem.where == key)
      return problemSentence(problem, session_.unit());
  return {};
}

}  // namespace creasewright
