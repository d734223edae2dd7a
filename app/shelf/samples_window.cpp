#include "shelf/samples_window.h"

#include <QDialogButtonBox>
#include <QDir>
#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include "bridge/design_pixmap.h"
#include "bridge/style_text.h"
#include "bridge/text.h"
#include "document/build.h"
#include "document/design_file.h"
#include "shelf/sample_words.h"
#include "widgets/window_size.h"

namespace creasewright {

namespace {

constexpr QSize kPicture{200, 150};
constexpr QSize kCell{224, 204};  // with two lines of words under the picture

QString folderOf(Unit unit) {
  return unit == Unit::Inch ? QStringLiteral(":/samples/inch") : QStringLiteral(":/samples/metric");
}

}  // namespace

std::vector<Design> sampleGifts(Unit unit) {
  std::vector<Design> gifts;
  const QDir folder(folderOf(unit));
  for (const QString& name :
       folder.entryList({QStringLiteral("*.cwdesign")}, QDir::Files, QDir::Name)) {
    QFile file(folder.filePath(name));
    if (!file.open(QIODevice::ReadOnly)) continue;
    if (Result<Design> design = readDesign(file.readAll().toStdString(), name.toStdString()))
      gifts.push_back(inReadersWords(std::move(design).value()));
  }
  return gifts;
}

SamplesWindow::SamplesWindow(Unit unit, QWidget* parent)
    : QDialog(parent),
      gifts_(sampleGifts(unit)),
      list_(new QListWidget(this)),
      notes_(new QLabel(this)) {
  setWindowTitle(tr("Sample gifts"));
  resize(fittingScreen(*this, {960, 720}));
  list_->setViewMode(QListView::IconMode);
  list_->setResizeMode(QListView::Adjust);
  list_->setMovement(QListView::Static);
  list_->setIconSize(kPicture);
  list_->setSpacing(8);
  list_->setWordWrap(true);
  list_->setUniformItemSizes(true);
  list_->setAccessibleName(tr("Sample gifts"));
  for (const Design& gift : gifts_) {
    const Result<BuiltDesign> built = build(gift);
    auto* item = new QListWidgetItem(text(gift.title), list_);
    item->setSizeHint(kCell);
    if (!built) continue;
    const QPixmap picture =
        designPixmap(*built, DesignView::Finished, kPicture, devicePixelRatioF());
    QIcon icon(picture);
    icon.addPixmap(picture, QIcon::Selected);  // as it is, not tinted
    item->setIcon(icon);
  }
  notes_->setWordWrap(true);
  notes_->setProperty("quiet", true);
  auto* lead = new QLabel(
      tr("Begin with a finished gift and give it your product: the box follows its size."), this);
  lead->setWordWrap(true);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
  auto* begin = new QPushButton(tr("Begin with this gift"), buttons);
  begin->setProperty("primary", true);  // before the box gives it its look
  buttons->addButton(begin, QDialogButtonBox::AcceptRole);
  begin->setDefault(true);
  buttons->button(QDialogButtonBox::Close)->setIcon({});
  buttons->button(QDialogButtonBox::Close)->setText(tr("Close"));
  connect(buttons, &QDialogButtonBox::accepted, this, &SamplesWindow::take);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  connect(list_, &QListWidget::itemActivated, this, &SamplesWindow::take);
  connect(list_, &QListWidget::currentRowChanged, this, &SamplesWindow::showNotes);
  auto* layout = new QVBoxLayout(this);
  layout->addWidget(lead);
  layout->addWidget(list_, 1);
  layout->addWidget(notes_);
  layout->addWidget(buttons);
  list_->setCurrentRow(0);
  list_->setFocus();
}

void SamplesWindow::showNotes(int row) {
  if (row < 0) return;
  const Design& gift = gifts_.at(static_cast<std::size_t>(row));
  notes_->setText(styleTitle(gift) + QStringLiteral(" \u00B7 ") + text(gift.notes));
}

void SamplesWindow::take() {
  const int row = list_->currentRow();
  if (row < 0) return;
  chosen_ = gifts_.at(static_cast<std::size_t>(row));
  accept();
}

}  // namespace creasewright
