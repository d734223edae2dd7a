#include "printing/picture_dialog.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPainter>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>
#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "bridge/label_text.h"
#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "pages/framed.h"
#include "pages/gift_strip.h"
#include "papers/guide/strip_words.h"
#include "printing/ask_path.h"
#include "session/preferences.h"
#include "units/paper.h"
#include "widgets/answer_row.h"
#include "widgets/colour_button.h"

namespace creasewright {

namespace {

constexpr QSize kShownAs{420, 320};
constexpr int kUsualLonger = 1600;  // pixels
constexpr int kAsSeen = -1;

QSpinBox* pixelField(const QString& words, QWidget* parent) {
  auto* field = new QSpinBox(parent);
  field->setRange(kLeastPixels, kMostPixels);
  field->setSingleStep(100);
  field->setAccessibleName(words);
  return field;
}

/// Squares of two greys, as what is clear is shown.
void paintClear(QPainter& painter, QRect room) {
  constexpr int kSquare = 8;
  for (int y = 0; y < room.height(); y += kSquare)
    for (int x = 0; x < room.width(); x += kSquare) {
      const bool dark = (x / kSquare + y / kSquare) % 2 != 0;
      const QRect square(room.left() + x, room.top() + y, std::min(kSquare, room.width() - x),
                         std::min(kSquare, room.height() - y));
      painter.fillRect(square, dark ? QColor(0xD8, 0xD8, 0xD8) : QColor(Qt::white));
    }
}

}  // namespace

PictureDialog::PictureDialog(DesignSession& session, const GiftSight& seen, int piece,
                             QWidget* parent)
    : QDialog(parent),
      session_(session),
      seen_(seen),
      piece_(std::clamp(piece, 0, static_cast<int>(session.built().pieces.size()) - 1)),
      form_(new QFormLayout),
      kind_(new QComboBox(this)),
      moment_(new QComboBox(this)),
      opening_(new QComboBox(this)),
      view_(new QComboBox(this)),
      width_(pixelField(tr("Width in pixels"), this)),
      height_(pixelField(tr("Height in pixels"), this)),
      paper_(new QComboBox(this)),
      ground_(new ColourButton(tr("Transparent"), this)),
      picture_(new QLabel(this)) {
  setWindowTitle(tr("Save a picture"));
  for (const auto& [ending, words] : {std::pair{"png", tr("PNG, of pixels")},
                                      {"svg", tr("SVG, sharp at any size")},
                                      {"pdf", tr("PDF, a poster on one page")}})
    kind_->addItem(words, QString::fromLatin1(ending));
  for (const Paper& paper : papers()) paper_->addItem(text(paper.name), text(paper.id));
  paper_->setCurrentIndex(std::max(0, paper_->findData(preferredPaper())));
  ground_->setAccessibleName(tr("Ground"));
  ground_->setColour(Colour{0xFF, 0xFF, 0xFF});
  fillMoments();
  fillViews();

  auto* size = new QWidget(this);
  auto* sides = new QHBoxLayout(size);
  sides->setContentsMargins(0, 0, 0, 0);
  sides->addWidget(width_, 1);
  sides->addWidget(new QLabel(QStringLiteral("×"), size));
  sides->addWidget(height_, 1);
  form_->addRow(tr("File"), kind_);
  form_->addRow(tr("Shown"), moment_);
  form_->addRow(tr("Opened"), opening_);
  form_->addRow(tr("Seen"), view_);
  form_->addRow(tr("Pixels"), size);
  form_->addRow(tr("Paper"), paper_);
  form_->addRow(tr("Ground"), ground_);

  picture_->setFixedSize(kShownAs);
  picture_->setAlignment(Qt::AlignCenter);
  picture_->setAccessibleName(tr("The picture as it will be"));
  auto* column = new QVBoxLayout;
  column->addLayout(form_);
  column->addStretch(1);
  QPushButton* save = addAnswerRow(column, this, tr("Save…"), tr("Close"));
  auto* layout = new QHBoxLayout(this);
  layout->addLayout(column);
  layout->addSpacing(12);
  layout->addWidget(picture_);

  const PixelSize start = pixelsFor(giftPicture(session_.built(), choices()), {kUsualLonger, 0});
  width_->setValue(start.width);
  height_->setValue(start.height);
  showFields();
  for (QComboBox* box : {kind_, moment_, opening_, view_, paper_})
    connect(box, &QComboBox::currentIndexChanged, this, &PictureDialog::showFields);
  for (QSpinBox* side : {width_, height_})
    connect(side, &QSpinBox::valueChanged, this, &PictureDialog::showPicture);
  connect(ground_, &ColourButton::colourPicked, this, &PictureDialog::showPicture);
  connect(save, &QPushButton::clicked, this, &PictureDialog::save);
}

/// The stops of the strip; between two of them what is seen now.
void PictureDialog::fillMoments() {
  const GiftStrip strip(session_.built(), piece_);
  const double end = strip.end();
  const bool between = seen_.done < end && seen_.done != std::floor(seen_.done);
  if (between) moment_->addItem(tr("As seen now"), seen_.done);
  moment_->addItem(stripFlatWords(), 0.0);
  double done = 0;
  for (const StripStop& stop : strip.stops())
    if (++done < end) moment_->addItem(stopWords(session_.built(), stop), done);
  moment_->addItem(tr("Finished"), kFinished);
  moment_->setCurrentIndex(seen_.done >= end ? moment_->count() - 1
                           : between         ? 0
                                             : static_cast<int>(seen_.done));
  moment_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  moment_->setMinimumContentsLength(24);
}

void PictureDialog::fillViews() {
  view_->addItem(tr("As seen now"), kAsSeen);
  for (const QString& words : {tr("From the front"), tr("From above"), tr("Three-quarter view")})
    view_->addItem(words, view_->count() - 1);
  opening_->addItem(tr("As seen now"), seen_.opening.value_or(kClosed));
  for (const auto& [words, opening] :
       {std::pair{tr("Closed"), kClosed}, {tr("Ajar"), kAjar}, {tr("Open"), kOpen}})
    opening_->addItem(words, opening);
}

QString PictureDialog::ending() const { return kind_->currentData().toString(); }

bool PictureDialog::isPage() const { return ending() == QLatin1String("pdf"); }

ExportChoices PictureDialog::choices() const {
  const std::array views{frontalView(), viewFromAbove(), standardView()};
  const int view = view_->currentData().toInt();
  ExportChoices choices;
  choices.folded = true;
  const BuiltPiece& shown = session_.built().pieces[static_cast<std::size_t>(piece_)];
  if (shown.role) choices.piece = text(shown.name);
  choices.sight = {view == kAsSeen ? seen_.view : views.at(static_cast<std::size_t>(view)),
                   opening_->currentData().toDouble(), moment_->currentData().toDouble()};
  choices.size = {width_->value(), height_->value()};
  choices.ground.kind = PictureGround::Kind::Clear;
  if (const auto& colour = ground_->colour())
    choices.ground = {PictureGround::Kind::Coloured, *colour};
  choices.unit = session_.unit();
  choices.now = QDateTime::currentDateTime();
  if (const auto paper = findPaper(paper_->currentData().toString().toStdString()))
    choices.setup.paper = *paper;
  return choices;
}

/// Only what the chosen file has.
void PictureDialog::showFields() {
  form_->setRowVisible(width_->parentWidget(), !isPage());
  form_->setRowVisible(paper_, isPage());
  form_->setRowVisible(opening_, moment_->currentData().toDouble() >= kFinished);
  showPicture();
}

void PictureDialog::showPicture() {
  const ExportChoices chosen = choices();
  Drawing drawing = giftPicture(session_.built(), chosen);
  PixelSize shape{width_->value(), height_->value()};
  if (isPage()) {
    drawing = posterPage(std::move(drawing), chosen);
    shape = pixelsFor(drawing, {kUsualLonger, 0});
  } else {
    drawing = framedFor(std::move(drawing), chosen.ground, shape);
  }
  const double scale = std::min(kShownAs.width() / std::max(drawing.width, 1.0),
                                kShownAs.height() / std::max(drawing.height, 1.0)) *
                       devicePixelRatioF();
  const PixelSize pixels{std::max(1, static_cast<int>(std::lround(drawing.width * scale))),
                         std::max(1, static_cast<int>(std::lround(drawing.height * scale)))};
  const QImage image = renderImage(drawing, wordingIn(session_.unit()), pixels, true);
  QPixmap shown(image.size());
  QPainter painter(&shown);
  if (isPage())
    painter.fillRect(shown.rect(), Qt::white);
  else
    paintClear(painter, shown.rect());
  painter.drawImage(0, 0, image);
  painter.end();
  shown.setDevicePixelRatio(devicePixelRatioF());
  picture_->setPixmap(shown);
}

void PictureDialog::save() {
  const QString path = askPath(this, session_, ending(),
                               QStringLiteral("%1 (*.%2)").arg(kind_->currentText(), ending()));
  if (path.isEmpty()) return;
  if (const auto problem = exportDesign(session_.built(), path, choices())) {
    QMessageBox::warning(this, windowTitle(), problemSentence(*problem, session_.unit()));
    return;
  }
  accept();
}

}  // namespace creasewright
