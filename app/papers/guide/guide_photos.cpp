#include "papers/guide/guide_photos.h"

#include <algorithm>
#include <iterator>
#include <set>

#include "bridge/decode_picture.h"
#include "bridge/problem_text.h"
#include "bridge/text.h"
#include "guide/make_guide.h"
#include "guide/step_names.h"
#include "output/page_flow.h"
#include "papers/guide/guide_cells.h"
#include "papers/guide/guide_words.h"

namespace creasewright {

namespace {

std::optional<GuidePhoto> shownPhoto(const Design& design, std::string_view step,
                                     const QString& alt) {
  const Photo* photo = findPhoto(design.photos, step);
  if (photo == nullptr || pictureSize(photo->picture).isEmpty()) return std::nullopt;
  return GuidePhoto{photo, alt, text(photo->caption)};
}

}  // namespace

GuidePhotos::GuidePhotos(const Guide& guide, const BuiltDesign& built) {
  steps.resize(guide.steps.size());
  if (built.design.photos.empty()) return;
  finished = shownPhoto(built.design, {}, GuideTr::tr("Photo of the finished piece"));
  const std::vector<std::string> names = stepNames(guide, built.design);
  for (std::size_t i = 0; i < names.size(); ++i) {
    const QString alt = GuideTr::tr("Photo of step %1").arg(i + 1);
    steps[i] = shownPhoto(built.design, names[i], alt);
    for (const std::string& earlier : earlierNames(guide, guide.steps[i]))
      if (!steps[i]) steps[i] = shownPhoto(built.design, earlier, alt);
  }
}

QStringList photoWarnings(const BuiltDesign& built, Hand hand) {
  QStringList warnings;
  const std::vector<Photo>& photos = built.design.photos;
  if (photos.empty()) return warnings;
  const Guide guide = makeGuide(built, hand);
  std::vector<std::string> names = stepNames(guide, built.design);
  for (const Step& step : guide.steps)
    std::ranges::move(earlierNames(guide, step), std::back_inserter(names));
  for (std::size_t i = 0; i < photos.size(); ++i) {
    const Photo& photo = photos[i];
    const QString name =
        photo.caption.empty() ? GuideTr::tr("photo %1").arg(i + 1) : text(photo.caption);
    if (!photo.step.empty() && std::ranges::find(names, photo.step) == names.end())
      warnings += GuideTr::tr(
                      "The photo “%1” belongs to a step that the guide does not have; it is kept "
                      "in the design and not printed.")
                      .arg(name);
    else if (const Result<QImage> image =
                 decodePicture(photo.picture.bytes(), name.toStdString(), 64);
             !image)
      warnings += problemSentence(image.problem(), Unit::Millimetre);
  }
  return warnings;
}

Drawing photoBlock(const GuidePhoto& photo, const FigureRoom& room, const GuideType& type) {
  const QSizeF size = pictureSize(photo.photo->picture);
  const double scale = scaleInto(size.width(), size.height(), room);
  PictureItem item{photo.photo->picture,
                   {},
                   size.width() * scale,
                   size.height() * scale,
                   photo.alt.toStdString()};
  Drawing picture{item.width, item.height, {}, {}};
  picture.pictures.push_back(std::move(item));
  if (photo.caption.isEmpty()) return picture;
  TextBlock caption(room.width);
  caption.add(photo.caption, TypeStyle{type.detail, false, type.lead});
  return stacked({picture, caption.take()}, 0.8);
}

}  // namespace creasewright
