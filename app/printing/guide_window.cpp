#include "printing/guide_window.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>
#include <QVBoxLayout>
#include <array>

#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "papers/guide/guide_photos.h"
#include "printing/photos_dialog.h"
#include "session/preferences.h"
#include "widgets/labelled_field.h"
#include "widgets/page_preview.h"
#include "widgets/page_scroll.h"
#include "widgets/window_size.h"

namespace creasewright {

namespace {

constexpr int kGuideSettingsWidth = 220;

}  // namespace

GuideWindow::GuideWindow(DesignSession& session, QWidget* parent)
    : QDialog(parent),
      session_(session),
      kind_(new QComboBox(this)),
      readers_(new QComboBox(this)),
      units_(new QComboBox(this)),
      paper_(new QComboBox(this)),
      type_(new QComboBox(this)),
      hand_(new QComboBox(this)),
      black_(new QCheckBox(tr("Black and white"), this)),
      status_(new QLabel(this)),
      preview_(new PagePreview(this)) {
  setWindowTitle(tr("Guide"));
  resize(fittingScreen(*this, {900, 640}));
  units_->addItem(tr("Inches and millimetres"), static_cast<int>(GuideUnits::Both));
  units_->addItem(tr("Inches"), static_cast<int>(GuideUnits::Inch));
  units_->addItem(tr("Millimetres"), static_cast<int>(GuideUnits::Millimetre));
  units_->setCurrentIndex(session.unit() == Unit::Inch ? 1 : 2);
  for (const Paper& paper : papers()) paper_->addItem(text(paper.name), text(paper.id));
  paper_->setCurrentIndex(std::max(0, paper_->findData(preferredPaper())));
  auto* column = new QVBoxLayout;
  column->setSpacing(4);
  for (const auto& [title, kind] : {std::pair{tr("Hand-out with all steps"), GuideKind::Steps},
                                    {tr("Card of measures"), GuideKind::Measures},
                                    {tr("Talk sheet for a lesson"), GuideKind::Talk}})
    kind_->addItem(title, static_cast<int>(kind));
  addLabelledField(column, tr("What to print"), kind_);
  offerReaders(*column);
  addLabelledField(column, tr("Measures in"), units_);
  addLabelledField(column, tr("Paper"), paper_);
  offerForms(*column);
  status_->setWordWrap(true);
  status_->setProperty("quiet", true);
  column->addWidget(status_);
  column->addStretch(1);
  const auto button = [&](const QString& words, auto action) {
    auto* made = new QPushButton(words, this);
    connect(made, &QPushButton::clicked, this, action);
    column->addWidget(made);
    return made;
  };
  button(
      tr("Save as PDF…"), [this] { save(QStringLiteral("pdf"), tr("PDF (*.pdf)")); })
      ->setProperty("primary", true);
  button(
      tr("Save as a web page…"), [this] { save(QStringLiteral("html"), tr("Web page (*.html)")); });
  button(tr("Save pictures and text…"), [this] { savePictures(); });
  button(
      tr("Photos…"),
      [this] {
        PhotosDialog(session_, this).exec();
        refresh();
      })
      ->setToolTip(tr("Photos of the finished box and of steps, kept in the design."));
  button(tr("Close"), [this] { reject(); });
  auto* left = new QWidget(this);
  left->setLayout(column);
  fitToWords(*left, kGuideSettingsWidth);
  auto* layout = new QHBoxLayout(this);
  layout->addWidget(left);
  layout->addWidget(new PageScroll(preview_, kPreviewWidth, this), 1);
  connect(kind_, &QComboBox::currentIndexChanged, this, &GuideWindow::refresh);
  connect(units_, &QComboBox::currentIndexChanged, this, &GuideWindow::refresh);
  connect(paper_, &QComboBox::currentIndexChanged, this, &GuideWindow::refresh);
  connect(type_, &QComboBox::currentIndexChanged, this, &GuideWindow::refresh);
  connect(hand_, &QComboBox::currentIndexChanged, this, &GuideWindow::refresh);
  connect(black_, &QCheckBox::toggled, this, &GuideWindow::refresh);
  refresh();
}

/// As the design is, or made anew for others.
void GuideWindow::offerReaders(QVBoxLayout& column) {
  readers_->addItem(tr("As designed"), -1);
  const std::array titles{tr("Inches, letter paper"), tr("Millimetres, A4 paper"),
                          tr("Both, in two files")};
  for (std::size_t i = 0; i < titles.size(); ++i)
    readers_->addItem(titles.at(i), static_cast<int>(i));
  readers_->setToolTip(
      tr("The design is made anew for the rulers, card and paper of the readers; the guide says "
         "what is different."));
  addLabelledField(&column, tr("Readers"), readers_);
  connect(readers_, &QComboBox::currentIndexChanged, this, &GuideWindow::refresh);
}

/// None = as designed.
std::span<const Readers> GuideWindow::chosenReaders() const {
  const int chosen = readers_->currentData().toInt();
  if (chosen < 0) return {};
  return readersNames()[static_cast<std::size_t>(chosen)].readers;
}

/// As they were last chosen.
void GuideWindow::offerForms(QVBoxLayout& column) {
  const GuideForm form = preferredGuideForm();
  for (const auto& [title, size] : {std::pair{tr("Standard"), GuideSize::Standard},
                                    {tr("Clear"), GuideSize::Clear},
                                    {tr("Large print"), GuideSize::Large}})
    type_->addItem(title, static_cast<int>(size));
  type_->setCurrentIndex(type_->findData(static_cast<int>(form.size)));
  addLabelledField(&column, tr("Type"), type_);
  for (const auto& [title, hand] :
       {std::pair{tr("Right hand"), Hand::Right}, {tr("Left hand"), Hand::Left}})
    hand_->addItem(title, static_cast<int>(hand));
  hand_->setCurrentIndex(hand_->findData(static_cast<int>(form.hand)));
  hand_->setToolTip(
      tr("The hand that holds the tool: the fence and the numbers stand on its other side."));
  addLabelledField(&column, tr("Told for the"), hand_);
  black_->setToolTip(tr("For a printer without colours."));
  black_->setChecked(form.black);
  column.addWidget(black_);
}

GuideChoices GuideWindow::choices() const {
  GuideChoices out;
  out.kind = static_cast<GuideKind>(kind_->currentData().toInt());
  out.units = static_cast<GuideUnits>(units_->currentData().toInt());
  if (const auto paper = findPaper(paper_->currentData().toString().toStdString()))
    out.paper = *paper;
  out.form = {static_cast<GuideSize>(type_->currentData().toInt()), black_->isChecked(),
              static_cast<Hand>(hand_->currentData().toInt())};
  out.language = QLocale().bcp47Name();
  out.now = QDateTime::currentDateTime();
  return out;
}

void GuideWindow::refresh() {
  const GuideChoices now = choices();
  setPreferredGuideForm(now.form);
  const std::span<const Readers> readers = chosenReaders();
  units_->setEnabled(readers.empty());
  paper_->setEnabled(readers.empty());
  if (readers.empty()) return showGuide(session_.built(), now);
  const Result<ReadersGuide> guide = guideFor(readers.front(), session_.built(), now);
  if (!guide) return status_->setText(problemSentence(guide.problem(), session_.unit()));
  showGuide(guide->built, guide->choices);
  if (readers.size() > 1)
    status_->setText(status_->text() + QLatin1Char('\n') +
                     tr("Shown for inches; the guide in millimetres is a file of its own."));
}

void GuideWindow::showGuide(const BuiltDesign& built, const GuideChoices& choices) {
  std::vector<Drawing> pages = guideSheets(built, choices);
  QStringList said{tr("%n page(s)", nullptr, static_cast<int>(pages.size()))};
  if (choices.kind == GuideKind::Steps) said += photoWarnings(built, choices.form.hand);
  status_->setText(said.join(QLatin1Char('\n')));
  preview_->showPages(std::move(pages), firstUnit(choices.units), lookOf(choices.form));
}

void GuideWindow::write(const QString& path) {
  const std::span<const Readers> readers = chosenReaders();
  tell(readers.empty() ? writeGuide(session_.built(), path, choices())
                       : writeGuides(readers, session_.built(), path, choices()));
}

QString GuideWindow::suggestedPath(const QString& ending) const {
  const QString folder = session_.path().isEmpty()
                             ? QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)
                             : QFileInfo(session_.path()).path();
  QString name = session_.displayName();
  name.replace(QLatin1Char('/'), QLatin1Char('-'));
  const QString guide = tr("%1 guide", "name of a file").arg(name);
  return QDir(folder).filePath(ending.isEmpty() ? guide : guide + QLatin1Char('.') + ending);
}

void GuideWindow::save(const QString& ending, const QString& filter) {
  QString path = QFileDialog::getSaveFileName(this, QString(), suggestedPath(ending), filter);
  if (path.isEmpty()) return;
  const QString dotted = QLatin1Char('.') + ending;
  if (!path.endsWith(dotted, Qt::CaseInsensitive)) path += dotted;
  write(path);
}

void GuideWindow::savePictures() {
  const QString folder =
      QFileDialog::getSaveFileName(this, tr("Name of the folder"), suggestedPath({}), QString(),
                                   nullptr, QFileDialog::ShowDirsOnly);
  if (!folder.isEmpty()) write(folder + QLatin1Char('/'));
}

void GuideWindow::tell(const std::optional<Problem>& problem) {
  if (problem)
    QMessageBox::warning(this, tr("Creasewright"), problemSentence(*problem, session_.unit()));
  else
    status_->setText(tr("Saved."));
}

}  // namespace creasewright
