#include "printing/print_dialog.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QStyle>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "bridge/label_text.h"
#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "pages/calibration_page.h"
#include "papers/template/export.h"
#include "printing/ask_path.h"
#include "printing/calibration_fields.h"
#include "printing/print_pages.h"
#include "printing/printed_fields.h"
#include "session/preferences.h"
#include "session/print_corrections.h"
#include "units/millimetres.h"
#include "units/paper.h"
#include "widgets/labelled_field.h"
#include "widgets/length_edit.h"
#include "widgets/page_preview.h"
#include "widgets/page_scroll.h"
#include "widgets/window_size.h"

namespace creasewright {

namespace {

constexpr int kSettingsWidth = 264;
constexpr int kLeastPage = 380;  // pixels
constexpr const char* kOwnPaper = "own";
constexpr Length kShortestSide = mm(80);
constexpr Length kLongestSide = mm(2000);

QString paperTitle(const Paper& paper, Unit unit) {
  return PrintDialog::tr("%1 (%2 × %3)")
      .arg(text(paper.name), lengthText(paper.width, unit, false), lengthText(paper.height, unit));
}

}  // namespace

PrintDialog::PrintDialog(DesignSession& session, QWidget* parent)
    : QDialog(parent),
      session_(session),
      kind_(new QComboBox(this)),
      paper_(new QComboBox(this)),
      ownSides_(new QWidget(this)),
      ownWidth_(new LengthEdit(this)),
      ownHeight_(new LengthEdit(this)),
      direction_(new QComboBox(this)),
      margin_(new LengthEdit(this)),
      printer_(new QComboBox(this)),
      calibration_(new CalibrationFields(session.unit(), this)),
      printed_(new PrintedFields(session.unit(), this)),
      status_(new QLabel(this)),
      preview_(new PagePreview(this)) {
  setWindowTitle(tr("Print the template"));
  resize(fittingScreen(*this, {900, 640}));
  auto* column = new QVBoxLayout;
  column->setSpacing(4);
  addSettings(column);
  column->addStretch(1);
  addButtons(column);
  auto* left = new QWidget(this);
  left->setLayout(column);
  fitToWords(*left, kSettingsWidth);
  auto* layout = new QHBoxLayout(this);
  layout->addWidget(left);
  layout->addWidget(new PageScroll(preview_, kLeastPage, this), 1);
  refresh();
}

QString PrintDialog::complaint() const { return pages_.empty() ? status_->text() : QString(); }

void PrintDialog::addSettings(QVBoxLayout* column) {
  for (const auto& [title, kind] :
       {std::pair{tr("Template to score and cut"), TemplateKind::CutAndScore},
        std::pair{tr("The same in the colours of the card"), TemplateKind::Coloured},
        std::pair{tr("Template to trace and prick"), TemplateKind::Tracing},
        std::pair{tr("Mirrored, for the outside"), TemplateKind::Mirrored},
        std::pair{tr("Template that saves ink"), TemplateKind::InkSaving},
        std::pair{tr("Printed papers: colours and patterns"), TemplateKind::Printed},
        std::pair{tr("Score guide strips"), TemplateKind::ScoreStrips},
        std::pair{tr("Calibration page for the printer"), TemplateKind::Calibration}})
    kind_->addItem(title, static_cast<int>(kind));
  addLabelledField(column, tr("What to print"), kind_);
  column->addWidget(printed_);
  for (const Paper& paper : papers())
    paper_->addItem(paperTitle(paper, session_.unit()), text(paper.id));
  paper_->addItem(tr("A size of your own"), QString::fromLatin1(kOwnPaper));
  paper_->setCurrentIndex(std::max(0, paper_->findData(preferredPaper())));
  direction_->addItem(tr("What takes fewest pages"), static_cast<int>(Orientation::Auto));
  direction_->addItem(tr("Upright"), static_cast<int>(Orientation::Upright));
  direction_->addItem(tr("Sideways"), static_cast<int>(Orientation::Sideways));
  margin_->setUnit(session_.unit());
  margin_->setLength(mm(5));
  for (const QString& name : printers()) printer_->addItem(name, name);
  printer_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  addLabelledField(column, tr("Paper"), paper_);
  addOwnSides(column);
  addLabelledField(column, tr("Direction"), direction_);
  addLabelledField(column, tr("Margin your printer leaves"), margin_);
  addLabelledField(column, tr("Printer"), printer_);
  if (printer_->count() == 0) {
    printer_->addItem(tr("No printer found"), QString());
    printer_->setEnabled(false);
  } else {
    printer_->addItem(tr("PDF, to print elsewhere"), QString());
  }
  column->addWidget(calibration_);
  status_->setWordWrap(true);
  status_->setProperty("quiet", true);
  column->addWidget(status_);
  connect(kind_, &QComboBox::currentIndexChanged, this, &PrintDialog::refresh);
  connect(printed_, &PrintedFields::changed, this, &PrintDialog::refresh);
  connect(paper_, &QComboBox::currentIndexChanged, this, &PrintDialog::choosePaper);
  connect(direction_, &QComboBox::currentIndexChanged, this, &PrintDialog::refresh);
  connect(margin_, &LengthEdit::lengthEdited, this, &PrintDialog::refresh);
  connect(printer_, &QComboBox::currentIndexChanged, this, &PrintDialog::refresh);
  connect(calibration_, &CalibrationFields::corrected, this, [this](PrintCorrection correction) {
    keepCorrection(printer(), options().setup.paper, correction);
  });
}

/// Empty: a PDF.
QString PrintDialog::printer() const { return printer_->currentData().toString(); }

/// The bars of the page shown, while that is what is printed.
void PrintDialog::showCalibration() {
  const TemplateOptions chosen = options();
  const bool shown = chosen.kind == TemplateKind::Calibration;
  calibration_->setVisible(shown);
  if (!shown) return;
  const CalibrationPage bars = calibrationPage(chosen.setup, chosen.unit, wordingIn(chosen.unit));
  calibration_->show(bars.across, bars.down, chosen.setup.correction);
}

void PrintDialog::addOwnSides(QVBoxLayout* column) {
  auto* fields = new QHBoxLayout(ownSides_);
  fields->setContentsMargins(0, 0, 0, 0);
  for (const auto& [title, side] :
       {std::pair{tr("Paper width"), ownWidth_}, std::pair{tr("Paper height"), ownHeight_}}) {
    auto* half = new QVBoxLayout;
    half->setSpacing(4);
    addLabelledField(half, title, side);
    fields->addLayout(half, 1);
  }
  ownSides_->setVisible(false);
  column->addWidget(ownSides_);
  for (LengthEdit* side : {ownWidth_, ownHeight_}) {
    side->setUnit(session_.unit());
    connect(side, &LengthEdit::lengthEdited, this, &PrintDialog::refresh);
  }
  ownWidth_->setLength(mm(200));
  ownHeight_->setLength(mm(250));
}

void PrintDialog::choosePaper() {
  const QString paper = paper_->currentData().toString();
  const bool own = paper == QLatin1String(kOwnPaper);
  ownSides_->setVisible(own);
  layout()->activate();
  resize(size().expandedTo(minimumSizeHint()));
  if (!own) setPreferredPaper(paper);
  refresh();
}

void PrintDialog::addButtons(QVBoxLayout* column) {
  print_ = new QPushButton(tr("Print"), this);
  pdf_ = new QPushButton(tr("Save as PDF…"), this);
  svg_ = new QPushButton(tr("Save as SVG…"), this);
  auto* close = new QPushButton(tr("Close"), this);
  (printer_->isEnabled() ? print_ : pdf_)->setProperty("primary", true);
  (printer_->isEnabled() ? print_ : pdf_)->setDefault(true);
  auto* files = new QHBoxLayout;
  files->addWidget(pdf_, 1);
  files->addWidget(svg_, 1);
  column->addWidget(print_);
  column->addLayout(files);
  column->addWidget(close);
  connect(print_, &QPushButton::clicked, this, &PrintDialog::print);
  connect(
      pdf_, &QPushButton::clicked, this,
      [this] { save(QStringLiteral("pdf"), tr("PDF documents (*.pdf)")); });
  connect(svg_, &QPushButton::clicked, this,
          [this] { save(QStringLiteral("svg"), tr("SVG pictures (*.svg)")); });
  connect(close, &QPushButton::clicked, this, &QDialog::reject);
}

TemplateOptions PrintDialog::options() const {
  TemplateOptions out;
  if (const auto paper = findPaper(paper_->currentData().toString().toStdString()))
    out.setup.paper = *paper;
  else
    out.setup.paper = ownPaper(std::clamp(ownWidth_->length(), kShortestSide, kLongestSide),
                               std::clamp(ownHeight_->length(), kShortestSide, kLongestSide));
  out.kind = static_cast<TemplateKind>(kind_->currentData().toInt());
  out.printed = printed_->chosen();
  out.setup.margin = margin_->length().mm();
  out.setup.orientation = static_cast<Orientation>(direction_->currentData().toInt());
  out.setup.correction = keptCorrection(printer(), out.setup.paper);
  out.unit = session_.unit();
  out.date = QDate::currentDate();
  return out;
}

void PrintDialog::refresh() {
  const QString sides = tr("A side of the paper measures from %1 to %2.")
                            .arg(lengthText(kShortestSide, session_.unit()),
                                 lengthText(kLongestSide, session_.unit()));
  for (LengthEdit* side : {ownWidth_, ownHeight_}) {
    const bool within = side->length() >= kShortestSide && side->length() <= kLongestSide;
    side->setComplaint(within ? QString() : sides);
  }
  const bool printed = options().kind == TemplateKind::Printed;
  printed_->setVisible(printed);
  svg_->setVisible(printed);
  auto pages = templatePages(session_.built(), options());
  pages_.clear();
  if (pages) {
    pages_ = std::move(pages).value();
    const QString corrected = correctionWords(options().setup.correction);
    QString sentence =
        tr("%n page(s) in true size. Print without scaling, then measure the check "
           "bars.",
           nullptr, static_cast<int>(pages_.size()));
    if (!corrected.isEmpty() && options().kind != TemplateKind::Calibration)
      sentence += QLatin1Char(' ') + tr("All are %1.").arg(corrected);
    status_->setText(sentence);
  } else {
    status_->setText(problemSentence(pages.problem(), session_.unit()));
  }
  status_->setProperty("problem", pages_.empty());
  status_->style()->unpolish(status_);
  status_->style()->polish(status_);
  preview_->showPages(pages_, session_.unit());
  showCalibration();
  print_->setEnabled(!pages_.empty() && !printer().isEmpty());
  pdf_->setEnabled(!pages_.empty());
  svg_->setEnabled(!pages_.empty());
}

void PrintDialog::print() {
  if (printPages(pages_, printer(), session_.displayName(), session_.unit())) {
    accept();
    return;
  }
  QMessageBox::warning(this, windowTitle(),
                       tr("The printer “%1” does not take the pages. Check that it is on, or save "
                          "them as PDF.")
                           .arg(printer()));
}

void PrintDialog::save(const QString& ending, const QString& filter) {
  const QString path = askPath(this, session_, ending, filter);
  if (path.isEmpty()) return;
  ExportChoices choices;
  choices.setup = options().setup;
  choices.kind = options().kind;
  choices.printed = options().printed;
  choices.unit = session_.unit();
  choices.now = QDateTime::currentDateTime();
  if (const auto problem = exportDesign(session_.built(), path, choices)) {
    QMessageBox::warning(this, windowTitle(), problemSentence(*problem, session_.unit()));
    return;
  }
  accept();
}

}  // namespace creasewright
