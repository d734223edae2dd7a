#include "session/design_session.h"

#include <QFile>
#include <QFileInfo>
#include <memory>

#include "bridge/design_words.h"
#include "bridge/text.h"
#include "document/design_file.h"
#include "session/places.h"
#include "session/preferences.h"

namespace creasewright {

namespace {

constexpr int kRest = 200;  // ms

}  // namespace

DesignSession::DesignSession(QObject* parent) : QObject(parent) {
  connect(&history_, &QUndoStack::cleanChanged, this, &DesignSession::fileChanged);
  rest_.setSingleShot(true);
  rest_.setInterval(kRest);
  looker_.setMaxThreadCount(1);
  looker_.setExpiryTimeout(-1);
  connect(&rest_, &QTimer::timeout, this, &DesignSession::warnAgain);
  design_ = freshDesign();
  rebuild();
  followGrid();
}

void DesignSession::apply(const Design& design) { put(design, false); }

void DesignSession::put(const Design& design, bool another) {
  const bool otherStyle = styleIdOf(design) != styleIdOf(design_);
  design_ = design;
  rebuild();
  if (another) warn();
  selection_.follow(otherStyle || !current_ ? Place()
                                            : placeAfterChange(built_, selection_.kept()));
  followGrid();
  emit changed();
}

void DesignSession::start(const Design& design, const QString& path) {
  unsaved_ = false;
  path_ = path;
  selection_.clear();
  history_.clear();
  history_.setClean();
  warnings_.clear();
  put(design, true);
  emit fileChanged();
}

QString DesignSession::displayName() const {
  if (!design_.title.empty()) return text(design_.title);
  return path_.isEmpty() ? tr("Untitled") : QFileInfo(path_).completeBaseName();
}

std::optional<Problem> DesignSession::open(const QString& path) {
  const auto design = readDesignFile(QFile::encodeName(path).toStdString());
  if (!design) return design.problem();
  start(*design, path);
  emit stored();
  return {};
}

std::optional<Problem> DesignSession::saveAs(const QString& path) {
  if (const auto problem = writeDesignFile(design_, QFile::encodeName(path).toStdString()))
    return problem;
  path_ = path;
  unsaved_ = false;
  history_.setClean();
  emit stored();
  emit fileChanged();
  return {};
}

void DesignSession::recover(const Design& design, const QString& path) {
  start(design, path);
  markUnsaved();
}

void DesignSession::markUnsaved() {
  unsaved_ = true;
  emit fileChanged();
}

void DesignSession::setWarner(Warner warner) {
  warner_ = std::move(warner);
  warn();
  emit changed();
}

void DesignSession::followGrid() {
  if (unitChosen_ || followed_ == design_.grid) return;
  followed_ = design_.grid;
  showUnit(unitShown(design_.grid));
}

void DesignSession::setUnit(Unit unit) {
  unitChosen_ = true;
  showUnit(unit);
}

void DesignSession::showUnit(Unit unit) {
  if (unit != unit_) {
    unit_ = unit;
    emit unitChanged(unit);
  }
}

void DesignSession::rebuild() {
  auto result = build(design_);
  if (looking_.valid()) looking_.get();
  current_ = result.ok();
  collected_ = !current_;
  if (!current_) {
    problems_ = limitProblems(design_);
    if (problems_.empty()) problems_.push_back(result.problem());
    return;
  }
  built_ = std::move(result).value();
  if (warner_) rest_.start();
  if (inHand_) lookAtFolding();
}

void DesignSession::lookAtFolding() {
  auto look =
      std::make_shared<std::packaged_task<void()>>([&pieces = std::as_const(built_.pieces)] {
        for (const BuiltPiece& piece : pieces) pathProblems(piece);
      });
  looking_ = look->get_future();
  looker_.start([look] { (*look)(); });
}

const Problems& DesignSession::problems() const {
  if (collected_) return problems_;
  problems_ = everyProblem(built_);
  problems_.insert(problems_.end(), warnings_.begin(), warnings_.end());
  collected_ = true;
  return problems_;
}

Problems DesignSession::problemsOfNumbers() const {
  if (!current_) return problems_;
  Problems found = built_.problems;
  found.insert(found.end(), built_.warnings.begin(), built_.warnings.end());
  return found;
}

void DesignSession::warn() {
  rest_.stop();
  if (!warner_ || !current_) return;
  warnings_ = warner_(built_);
  collected_ = false;
}

/// The hand rests.
void DesignSession::warnAgain() {
  const Problems before = warnings_;
  warn();
  if (warnings_ != before) emit changed();
}

Design freshDesign() {
  const Product soap{ProductShape::Box, Length::mm(105), Length::mm(32), Length::mm(22)};
  const auto card = findCard("card-300gsm");
  const ToolGrid grid =
      preferredUnit() == Unit::Inch ? ToolGrid::sixteenthInch() : ToolGrid::millimetre();
  auto design = newDesign("framed-tray", soap, card ? *card : Card{}, Ease::Easy, grid);
  return design ? std::move(design).value() : Design{};
}

}  // namespace creasewright
