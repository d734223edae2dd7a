#include "printing/photos_dialog.h"

#include <QDialogButtonBox>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QStandardPaths>
#include <QVBoxLayout>
#include <algorithm>

#include "base/file_limits.h"
#include "bridge/decode_picture.h"
#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "commands/edits.h"
#include "document/limit_problems.h"
#include "guide/make_guide.h"
#include "guide/step_names.h"
#include "output/photo_file.h"
#include "papers/guide/guide_words.h"
#include "session/preferences.h"
#include "widgets/labelled_field.h"
#include "widgets/window_size.h"

namespace creasewright {

namespace {

constexpr QSize kShownPhoto{280, 210};  // pixels

}  // namespace

PhotosDialog::PhotosDialog(DesignSession& session, QWidget* parent)
    : QDialog(parent),
      session_(session),
      places_(new QListWidget(this)),
      picture_(new QLabel(this)),
      caption_(new QLineEdit(this)),
      add_(new QPushButton(this)),
      remove_(new QPushButton(tr("Take the photo out"), this)),
      status_(new QLabel(this)) {
  setWindowTitle(tr("Photos of the guide"));
  resize(fittingScreen(*this, {680, 460}));
  places_->setAccessibleName(tr("What a photo shows"));
  picture_->setFixedSize(kShownPhoto);
  picture_->setAlignment(Qt::AlignCenter);
  picture_->setFrameShape(QFrame::StyledPanel);
  picture_->setWordWrap(true);
  caption_->setMaxLength(static_cast<int>(kLongestTitle));
  status_->setWordWrap(true);
  status_->setProperty("quiet", true);
  auto* right = new QVBoxLayout;
  right->addWidget(picture_);
  right->addWidget(add_);
  right->addWidget(remove_);
  addLabelledField(right, tr("Words under it"), caption_);
  right->addWidget(status_);
  right->addStretch(1);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
  right->addWidget(buttons);
  auto* layout = new QHBoxLayout(this);
  layout->addWidget(places_, 1);
  layout->addLayout(right);
  connect(places_, &QListWidget::currentRowChanged, this, &PhotosDialog::showChosen);
  connect(add_, &QPushButton::clicked, this, &PhotosDialog::choose);
  connect(remove_, &QPushButton::clicked, this, &PhotosDialog::removeChosen);
  connect(caption_, &QLineEdit::editingFinished, this, &PhotosDialog::keepCaption);
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  fill();
  places_->setCurrentRow(0);
}

/// The finished box, every step, and the places of photos whose step is gone.
void PhotosDialog::fill() {
  const BuiltDesign& built = session_.built();
  const Guide guide = makeGuide(built, preferredGuideForm().hand);
  const GuideWords words = wordGuide(guide, built, GuideUnits::Millimetre);
  const int row = places_->currentRow();
  const QSignalBlocker quiet(places_);
  places_->clear();
  steps_ = {std::string()};
  QStringList titles{tr("The finished box")};
  const std::vector<std::string> names = stepNames(guide, built.design);
  for (std::size_t i = 0; i < names.size(); ++i) {
    steps_.push_back(names[i]);
    titles.append(tr("%1. %2", "number and title of a step").arg(i + 1).arg(words.steps[i].title));
  }
  const std::vector<Photo>& photos = session_.design().photos;
  for (const Photo& photo : photos) {
    if (std::ranges::find(steps_, photo.step) != steps_.end()) continue;
    steps_.push_back(photo.step);
    titles.append(tr("A step that the guide no longer has"));
  }
  for (qsizetype i = 0; i < titles.size(); ++i) {
    const bool has = findPhoto(photos, steps_[static_cast<std::size_t>(i)]) != nullptr;
    places_->addItem(has ? tr("%1 — photo").arg(titles[i]) : titles[i]);
  }
  places_->setCurrentRow(std::clamp(row, 0, places_->count() - 1));
  showChosen();
}

std::string PhotosDialog::chosenStep() const {
  return steps_.at(static_cast<std::size_t>(std::max(0, places_->currentRow())));
}

const Photo* PhotosDialog::chosenPhoto() const {
  return findPhoto(session_.design().photos, chosenStep());
}

void PhotosDialog::showChosen() {
  const Photo* photo = chosenPhoto();
  add_->setText(photo == nullptr ? tr("Add a photo…") : tr("Another photo…"));
  remove_->setEnabled(photo != nullptr);
  caption_->setEnabled(photo != nullptr);
  caption_->setText(photo == nullptr ? QString() : text(photo->caption));
  if (photo == nullptr) return picture_->setText(tr("No photo"));
  const QImage image = keptPicture(photo->picture, kPhotoPixels);
  if (image.isNull()) return picture_->setText(tr("This photo cannot be shown."));
  picture_->setPixmap(
      QPixmap::fromImage(image.scaled(kShownPhoto, Qt::KeepAspectRatio, Qt::SmoothTransformation)));
}

void PhotosDialog::choose() {
  const QString path = QFileDialog::getOpenFileName(
      this, tr("Photo"), QStandardPaths::writableLocation(QStandardPaths::PicturesLocation),
      tr("Pictures (*.png *.jpg *.jpeg)"));
  if (!path.isEmpty()) put(path);
}

void PhotosDialog::put(const QString& path) {
  const auto told = [this](const Problem& problem) {
    status_->setText(problemSentence(problem, session_.unit()));
  };
  const Result<PictureFile> picture = readPhotoFile(path);
  if (!picture) return told(picture.problem());
  const Photo* before = chosenPhoto();
  Photo photo{chosenStep(), before == nullptr ? std::string() : before->caption, *picture};
  std::vector<Photo> photos = withPhoto(session_.design().photos, std::move(photo));
  if (const auto problem = photoLimitProblem(photos)) return told(*problem);
  status_->clear();
  changePhotos(session_, std::move(photos), tr("photo"));
  fill();
}

void PhotosDialog::removeChosen() {
  changePhotos(session_, withoutPhoto(session_.design().photos, chosenStep()), tr("photo"));
  fill();
}

void PhotosDialog::keepCaption() {
  const Photo* before = chosenPhoto();
  if (before == nullptr || text(before->caption) == caption_->text()) return;
  Photo photo = *before;
  photo.caption = caption_->text().toStdString();
  changePhotos(session_, withPhoto(session_.design().photos, std::move(photo)),
               tr("words of a photo"));
}

}  // namespace creasewright
