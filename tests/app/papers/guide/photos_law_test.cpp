#include <QBuffer>
#include <QImage>
#include <algorithm>
#include <map>

#include <gtest/gtest.h>

#include "bridge/decode_picture.h"
#include "bridge/label_text.h"
#include "core/laws/random_design.h"
#include "document/build.h"
#include "guide/make_guide.h"
#include "guide/step_names.h"
#include "lettering/type_width.h"
#include "papers/guide/guide_html.h"
#include "papers/guide/guide_pages.h"
#include "papers/guide/guide_photos.h"
#include "styles/registry.h"

namespace creasewright {
namespace {

PictureFile pictureOf(int width, int height) {
  QImage image(width, height, QImage::Format_RGB32);
  image.fill(Qt::darkCyan);
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "jpeg");
  return PictureFile(bytes.toStdString());
}

/// A photo of the box and of every third step, upright ones and wide ones.
BuiltDesign withItsPhotos(const Style& style) {
  Design design = testing::withItsExtras(style);
  const auto plain = build(design);
  EXPECT_TRUE(plain.ok());
  const std::vector<std::string> names = stepNames(makeGuide(*plain), plain->design);
  design.photos = {{"", "What we made", pictureOf(400, 300)}};
  for (std::size_t i = 0; i < names.size() && design.photos.size() < 10; i += 3)
    design.photos.push_back({names[i], i % 2 == 0 ? "Seen from above" : "",
                             i % 2 == 0 ? pictureOf(300, 400) : pictureOf(480, 270)});
  auto built = build(design);
  EXPECT_TRUE(built.ok());
  return *built;
}

bool apart(const Bounds& a, const Bounds& b) {
  return a.high.x <= b.low.x + 0.1 || b.high.x <= a.low.x + 0.1 || a.high.y <= b.low.y + 0.1 ||
         b.high.y <= a.low.y + 0.1;
}

/// The room of a word that lies or stands: as wide as its letters.
Bounds roomOf(const TextItem& text, const std::string& words) {
  const double wide = typeWidth(words, text.height, text.bold);
  const double from = text.anchor == Anchor::Left     ? 0
                      : text.anchor == Anchor::Centre ? -wide / 2
                                                      : -wide;
  const double low = -0.2 * text.height;
  const double high = 0.75 * text.height;
  if (text.turnDegrees == 90)
    return {text.at + Point{-high, from}, text.at + Point{-low, from + wide}};
  return {text.at + Point{from, low}, text.at + Point{from + wide, high}};
}

/// Each photo lies whole on a page, in its own shape, and nothing stands on it.
void judge(const std::vector<Drawing>& pages, const BuiltDesign& built, std::string_view style) {
  std::map<std::string_view, int> times;
  const Wording wording = wordingIn(Unit::Millimetre);
  for (const Drawing& page : pages) {
    std::vector<Bounds> photos;
    for (const PictureItem& item : page.pictures) {
      ++times[item.file.bytes()];
      const Bounds box{item.at, item.at + Point{item.width, item.height}};
      EXPECT_GT(std::min(box.low.x, box.low.y), 5) << style;
      EXPECT_LT(box.high.x, page.width - 5) << style;
      EXPECT_LT(box.high.y, page.height - 5) << style;
      const QSize size = pictureSize(item.file);
      EXPECT_NEAR(item.width / item.height, 1.0 * size.width() / size.height(), 1e-6) << style;
      EXPECT_GT(std::max(item.width, item.height), 25) << style;
      EXPECT_FALSE(item.words.empty()) << style;
      for (const Bounds& other : photos) EXPECT_TRUE(apart(box, other)) << style;
      photos.push_back(box);
    }
    for (const Bounds& photo : photos) {
      for (const TextItem& text : page.texts)
        EXPECT_TRUE(apart(photo, roomOf(text, wording(text.label))))
            << style << ' ' << wording(text.label);
      for (const PathItem& path : page.paths)
        for (const Polygon& ring : path.rings)
          for (const Point& p : ring)
            EXPECT_FALSE(p.x > photo.low.x + 0.1 && p.x < photo.high.x - 0.1 &&
                         p.y > photo.low.y + 0.1 && p.y < photo.high.y - 0.1)
                << style;
    }
  }
  for (const Photo& photo : built.design.photos) EXPECT_GE(times[photo.picture.bytes()], 1);
  int shown = 0;
  for (const auto& [bytes, count] : times) shown += count;
  EXPECT_EQ(shown, static_cast<int>(built.design.photos.size())) << style;
}

TEST(GuidePhotos, StandWholeOnThePagesOfEveryStyleInEverySizeOfType) {
  for (const Style& style : styles()) {
    const BuiltDesign built = withItsPhotos(style);
    for (const GuideSize size : {GuideSize::Standard, GuideSize::Clear, GuideSize::Large}) {
      GuideForm form;
      form.size = size;
      judge(guidePages(built, GuideUnits::Millimetre, *findPaper("a4"), form), built, style.id);
    }
    EXPECT_EQ(photoWarnings(built, Hand::Right), QStringList()) << style.id;
  }
}

TEST(GuidePhotos, AreInTheWebPageOfEveryStyleEachOnce) {
  for (const Style& style : styles()) {
    const BuiltDesign built = withItsPhotos(style);
    const QByteArray page = guideHtml(built, GuideUnits::Millimetre, QStringLiteral("en"));
    EXPECT_EQ(page.count("<img alt=\"Photo of "),
              static_cast<qsizetype>(built.design.photos.size()))
        << style.id;
    EXPECT_EQ(page.count("src=\"data:image/jpeg;base64,"), page.count("<img")) << style.id;
    EXPECT_EQ(page.count("<figcaption>What we made</figcaption>"), 1) << style.id;
  }
}

/// A picture that starts like one and is none is left out and told; the guide is made.
/// A photo that was kept with a stage is shown at the step that tells the stage today.
TEST(GuidePhotos, OfAStageToldWithAnotherStayWithIt) {
  Design design = testing::asItComes(**findStyle("straight-tuck-box"));
  design.photos = {{"box/fold/bottom-dust-flaps", "Dust flaps", pictureOf(400, 300)}};
  const auto built = build(design);
  ASSERT_TRUE(built);
  EXPECT_TRUE(photoWarnings(*built, Hand::Right).isEmpty());
  const Guide guide = makeGuide(*built);
  const GuidePhotos photos(guide, *built);
  for (std::size_t i = 0; i < guide.steps.size(); ++i)
    EXPECT_EQ(photos.steps[i].has_value(), guide.steps[i].stage == "bottom-lid") << i;
}

TEST(GuidePhotos, WhatCannotBeShownIsTold) {
  const Style& style = **findStyle("framed-tray");
  Design design = testing::asItComes(style);
  design.photos = {{"", "", PictureFile(std::string("\xFF\xD8\xFF\xE0 nothing behind"))},
                   {"gone/step", "Old", pictureOf(40, 30)}};
  const auto built = build(design);
  ASSERT_TRUE(built.ok());
  EXPECT_EQ(photoWarnings(*built, Hand::Right).size(), 2);
  for (const Drawing& page : guidePages(*built, GuideUnits::Inch, *findPaper("letter")))
    EXPECT_TRUE(page.pictures.empty());
}

}  // namespace
}  // namespace creasewright
