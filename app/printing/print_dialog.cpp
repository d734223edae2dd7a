#include "printing/print_dialog.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollArea>
#include <QStyle>
#include <QVBoxLayout>

#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "papers/template/export.h"
#include "printing/ask_path.h"
#include "printing/print_pages.h"
#include "session/preferences.h"
#include "units/millimetres.h"
#include "units/paper.h"
#include "widgets/labelled_field.h"
#include "widgets/length_edit.h"
#include "widgets/page_preview.h"
#include "widgets/window_size.h"

namespace creasewright {

namespace {

constexpr int kSettingsWidth = 264;

QString paperTitle(const Paper& paper, Unit unit) {
  return PrintDialog::tr("%1 (%2 × %3)")
      .arg(text(paper.name), lengthText(paper.width, unit, false), lengthText(paper.height, unit));
}

}  // namespace

PrintDialog::PrintDialog(DesignSession& session, QWidget* parent)
    : QDialog(parent),
      session_(session),
      paper_(new QComboBox(this)),
      direction_(new QComboBox(this)),
      margin_(new LengthEdit(this)),
      printer_(new QComboBox(this)),
      status_(new QLabel(this)),
      scroll_(new QScrollArea(this)),
      preview_(new PagePreview(this)) {
  setWindowTitle(tr("Print the template"));
  resize(800, 560);
  auto* column = new QVBoxLayout;
  column->setSpacing(4);
  addSettings(column);
  column->addStretch(1);
  addButtons(column);
  auto* left = new QWidget(this);
  left->setLayout(column);
  fitToWords(*left, kSettingsWidth);
  scroll_->setWidget(preview_);
  scroll_->setAlignment(Qt::AlignHCenter | Qt::AlignTop);
  auto* layout = new QHBoxLayout(this);
  layout->addWidget(left);
  layout->addWidget(scroll_, 1);
  refresh();
}

QString PrintDialog::complaint() const { return pages_.empty() ? status_->text() : QString(); }

void PrintDialog::addSettings(QVBoxLayout* column) {
  for (const Paper& paper : papers())
    paper_->addItem(paperTitle(paper, session_.unit()), text(paper.id));
  paper_->setCurrentIndex(std::max(0, paper_->findData(preferredPaper())));
  direction_->addItem(tr("What takes fewest pages"), static_cast<int>(Orientation::Auto));
  direction_->addItem(tr("Upright"), static_cast<int>(Orientation::Upright));
  direction_->addItem(tr("Sideways"), static_cast<int>(Orientation::Sideways));
  margin_->setUnit(session_.unit());
  margin_->setLength(mm(5));
  printer_->addItems(printers());
  printer_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  addLabelledField(column, tr("Paper"), paper_);
  addLabelledField(column, tr("Direction"), direction_);
  addLabelledField(column, tr("Margin your printer leaves"), margin_);
  addLabelledField(column, tr("Printer"), printer_);
  if (printer_->count() == 0) {
    printer_->addItem(tr("No printer found"));
    printer_->setEnabled(false);
  }
  status_->setWordWrap(true);
  status_->setProperty("quiet", true);
  column->addWidget(status_);
  connect(paper_, &QComboBox::currentIndexChanged, this, [this] {
    setPreferredPaper(paper_->currentData().toString());
    refresh();
  });
  connect(direction_, &QComboBox::currentIndexChanged, this, &PrintDialog::refresh);
  connect(margin_, &LengthEdit::lengthEdited, this, &PrintDialog::refresh);
}

void PrintDialog::addButtons(QVBoxLayout* column) {
  print_ = new QPushButton(tr("Print"), this);
  pdf_ = new QPushButton(tr("Save as PDF…"), this);
  auto* close = new QPushButton(tr("Close"), this);
  (printer_->isEnabled() ? print_ : pdf_)->setProperty("primary", true);
  (printer_->isEnabled() ? print_ : pdf_)->setDefault(true);
  for (QPushButton* button : {print_, pdf_, close}) column->addWidget(button);
  connect(print_, &QPushButton::clicked, this, &PrintDialog::print);
  connect(pdf_, &QPushButton::clicked, this, &PrintDialog::savePdf);
  connect(close, &QPushButton::clicked, this, &QDialog::reject);
}

TemplateOptions PrintDialog::options() const {
  TemplateOptions out;
  if (const auto paper = findPaper(paper_->currentData().toString().toStdString()))
    out.setup.paper = *paper;
  out.setup.margin = margin_->length().mm();
  out.setup.orientation = static_cast<Orientation>(direction_->currentData().toInt());
  out.unit = session_.unit();
  out.date = QDate::currentDate();
  return out;
}

void PrintDialog::refresh() {
  auto pages = templatePages(session_.built(), options());
  pages_.clear();
  if (pages) {
    pages_ = std::move(pages).value();
    status_->setText(
        tr("%n page(s) in true size. Print without scaling, then measure the check "
           "bars.",
           nullptr, static_cast<int>(pages_.size())));
  } else {
    status_->setText(problemSentence(pages.problem(), session_.unit()));
  }
  status_->setProperty("problem", pages_.empty());
  status_->style()->unpolish(status_);
  status_->style()->polish(status_);
  preview_->showPages(pages_, session_.unit());
  print_->setEnabled(!pages_.empty() && printer_->isEnabled());
  pdf_->setEnabled(!pages_.empty());
}

void PrintDialog::print() {
  if (printPages(pages_, printer_->currentText(), session_.displayName(), session_.unit())) {
    accept();
    return;
  }
  QMessageBox::warning(this, windowTitle(),
                       tr("The printer “%1” does not take the pages. Check that it is on, or save "
                          "them as PDF.")
                           .arg(printer_->currentText()));
}

void PrintDialog::savePdf() {
  const QString path = askPath(this, session_, QStringLiteral("pdf"), tr("PDF documents (*.pdf)"));
  if (path.isEmpty()) return;
  ExportChoices choices;
  choices.setup = options().setup;
  choices.unit = session_.unit();
  choices.now = QDateTime::currentDateTime();
  if (const auto problem = exportDesign(session_.built(), path, choices)) {
    QMessageBox::warning(this, windowTitle(), problemSentence(*problem, session_.unit()));
    return;
  }
  accept();
}

}  // namespace creasewright
