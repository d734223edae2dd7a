#include <QFile>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>
#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include <gtest/gtest.h>

#include "drawing/net_drawing.h"
#include "output/pdf_export.h"
#include "papers/template/export.h"
#include "papers/template/template_print.h"
#include "styles/registry.h"
#include "support/picture_measure.h"
#include "support/random.h"

// What a person does with a template of several pages, done with pictures: the pages are
// paintedPages (Poppler, 254 dpi), laid a little askew of where they should, joined where their
// quarter circles close, and compared with the net in one piece. Nothing here knows where a tile
// lies.
namespace creasewright::testing {
namespace {

constexpr double kScanPixels = 10;  // for each mm
constexpr double kMostOff = 0.1;    // mm

/// Darkness of each pixel, 0 to 1; x right, y down.
struct Scan {
  int width = 0;
  int height = 0;
  std::vector<float> dark;

  [[nodiscard]] float pixel(int x, int y) const {
    if (x < 0 || y < 0 || x >= width || y >= height) return 0;
    return dark[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
                static_cast<std::size_t>(x)];
  }
  /// Between the middles of pixels.
  [[nodiscard]] double at(Point p) const {
    const double x = p.x - 0.5;
    const double y = p.y - 0.5;
    const int left = static_cast<int>(std::floor(x));
    const int top = static_cast<int>(std::floor(y));
    const double u = x - left;
    const double v = y - top;
    return (1 - v) * ((1 - u) * pixel(left, top) + u * pixel(left + 1, top)) +
           v * ((1 - u) * pixel(left, top + 1) + u * pixel(left + 1, top + 1));
  }
};

Scan scanOf(const QImage& picture, Point shift) {
  QImage moved(picture.size(), QImage::Format_Grayscale8);
  moved.fill(Qt::white);
  QPainter painter(&moved);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.drawImage(QPointF(shift.x, shift.y), picture);
  painter.end();
  Scan scan{moved.width(), moved.height(), {}};
  for (int y = 0; y < scan.height; ++y)
    for (int x = 0; x < scan.width; ++x)
      scan.dark.push_back(1 - static_cast<float>(qGray(moved.pixel(x, y))) / 255);
  return scan;
}

/// All pages as Poppler paints them; by Cairo, which moves no line onto whole pixels.
std::vector<QImage> paintedPages(const QByteArray& pdf, int pages) {
  const QTemporaryDir dir;
  QFile file(dir.filePath(QStringLiteral("t.pdf")));
  EXPECT_TRUE(file.open(QIODevice::WriteOnly));
  file.write(pdf);
  file.close();
  std::vector<QImage> images;
  for (int page = 1; page <= pages; ++page) {
    const QString number = QString::number(page);
    run(QStringLiteral("pdftocairo"),
        {QStringLiteral("-r"), QStringLiteral("254"), QStringLiteral("-png"), QStringLiteral("-f"),
         number, QStringLiteral("-l"), number, QStringLiteral("-singlefile"), file.fileName(),
         dir.filePath(QStringLiteral("p"))});
    images.emplace_back(dir.filePath(QStringLiteral("p.png")));
  }
  return images;
}

/// Quarter circles around a corner: their middle, and the way into the tile.
struct JointMark {
  Point middle;
  int right = 0;  ///< 1 = the tile lies right of it, -1 left
  int down = 0;
  double worth = 0;
};

/// How much darker the three quarter circles are than what lies between them.
double worthOf(const Scan& scan, Point middle, int right, int down, double perMm) {
  double sum = 0;
  constexpr int kSamples = 14;
  for (int i = 1; i < kSamples; ++i) {
    const double angle = M_PI / 2 * i / kSamples;
    const Point way{right * std::cos(angle) * perMm, down * std::sin(angle) * perMm};
    for (const double radius : {3.0, 5.0, 7.0}) sum += scan.at(middle + way * radius);
    for (const double radius : {4.0, 6.0}) sum -= 1.5 * scan.at(middle + way * radius);
  }
  return sum / (3 * (kSamples - 1));
}

/// A quarter of the size; each pixel as dark as the darkest of its sixteen.
Scan quarterOf(const Scan& scan) {
  Scan out{scan.width / 4, scan.height / 4, {}};
  for (int y = 0; y < out.height; ++y)
    for (int x = 0; x < out.width; ++x) {
      float dark = 0;
      for (int v = 0; v < 4; ++v)
        for (int u = 0; u < 4; ++u) dark = std::max(dark, scan.pixel(4 * x + u, 4 * y + v));
      out.dark.push_back(dark);
    }
  return out;
}

JointMark refined(const Scan& scan, JointMark mark) {
  for (const double step : {1.0, 0.25, 0.05}) {
    const Point around = mark.middle;
    for (int y = -6; y <= 6; ++y)
      for (int x = -6; x <= 6; ++x) {
        const Point here = around + Point{x * step, y * step};
        const double worth = worthOf(scan, here, mark.right, mark.down, kScanPixels);
        if (worth > mark.worth) mark = {here, mark.right, mark.down, worth};
      }
    if (step == 1.0) mark.worth = 0;
  }
  return mark;
}

/// The two best marks anywhere on a page.
std::vector<JointMark> marksOn(const Scan& scan) {
  const Scan coarse = quarterOf(scan);
  std::vector<JointMark> found;
  for (int y = 0; y < coarse.height; ++y)
    for (int x = 0; x < coarse.width; ++x)
      for (const int right : {-1, 1})
        for (const int down : {-1, 1}) {
          const Point here{x + 0.5, y + 0.5};
          // A mark's own corner is dark: the frame runs through it.
          if (coarse.pixel(x, y) < 0.2) continue;
          const double worth = worthOf(coarse, here, right, down, kScanPixels / 4);
          if (worth > 0.12) found.push_back({here * 4, right, down, worth});
        }
  std::ranges::sort(found, std::ranges::greater{}, &JointMark::worth);
  std::vector<JointMark> best;
  for (const JointMark& mark : found) {
    const bool known = std::ranges::any_of(
        best, [&](const JointMark& other) { return distance(other.middle, mark.middle) < 40; });
    if (known) continue;
    JointMark fine = mark;
    fine.worth = 0;
    best.push_back(refined(scan, fine));
    if (best.size() == 6) break;
  }
  std::ranges::sort(best, std::ranges::greater{}, &JointMark::worth);
  if (best.size() > 2) best.resize(2);
  return best;
}

/// Two pages as one picture in the frame of the first.
struct Joined {
  Scan first;
  Scan second;
  Point shift;  ///< of the second page
  bool beside = false;
  double joint = 0;  ///< where the second one begins

  [[nodiscard]] double at(Point p) const {
    const bool other = (beside ? p.x : p.y) > joint;
    return other ? second.at(p - shift) : first.at(p);
  }
};

std::optional<Joined> joinPages(Scan first, Scan second) {
  const std::vector<JointMark> a = marksOn(first);
  const std::vector<JointMark> b = marksOn(second);
  if (a.size() < 2 || b.size() < 2) return std::nullopt;
  Joined out{std::move(first), std::move(second), {}, a[0].right == a[1].right, 0};
  int pairs = 0;
  for (const JointMark& mine : a)
    for (const JointMark& other : b) {
      const bool meet = out.beside ? mine.down == other.down && mine.right == -other.right
                                   : mine.right == other.right && mine.down == -other.down;
      if (!meet) continue;
      out.shift = out.shift + (mine.middle - other.middle);
      out.joint += out.beside ? mine.middle.x : mine.middle.y;
      ++pairs;
    }
  if (pairs != 2) return std::nullopt;
  out.shift = out.shift / 2;
  out.joint /= 2;
  return out;
}

/// A place on a cut, in mm of the blank with y down, and the way across the line.
struct CutPlace {
  Point at;
  Point across;
};

std::vector<CutPlace> placesOn(const FlatNet& flat, bool turned) {
  std::vector<CutPlace> places;
  const auto put = [&](Point p) {
    return turned ? Point{flat.height - p.y, flat.width - p.x} : Point{p.x, flat.height - p.y};
  };
  for (const Polyline& cut : cutLines(flat))
    for (std::size_t i = 0; i + 1 < cut.size(); ++i) {
      const Point a = put(cut[i]);
      const Point b = put(cut[i + 1]);
      const double whole = distance(a, b);
      for (double at = 3; at < whole - 3; at += 4)
        places.push_back({a + (b - a) * (at / whole), turnLeft((b - a) / whole)});
    }
  return places;
}

/// Where the line is that should run through a pixel: off it by so many pixels. Nothing where
/// something else lies near.
std::optional<double> offBy(const Joined& picture, Point pixel, Point across) {
  double weight = 0;
  double moment = 0;
  for (double off = -5; off <= 5; off += 0.25) {
    const double dark = picture.at(pixel + across * off);
    if (std::abs(off) > 4 && dark > 0.05) return std::nullopt;
    weight += dark;
    moment += dark * off;
  }
  if (weight * 0.25 < 2) return std::nullopt;
  return moment / weight;
}

/// The net's top left corner in the picture, pixels, to about a tenth of a millimetre: there the
/// places are darkest.
Point cornerIn(const Joined& picture, const std::vector<CutPlace>& places) {
  Point best;
  double darkest = -1;
  const auto look = [&](Point around, double reach, double step, std::size_t each) {
    for (double y = -reach; y <= reach; y += step)
      for (double x = -reach; x <= reach; x += step) {
        double dark = 0;
        for (std::size_t i = 0; i < places.size(); i += each)
          dark += picture.at(around + Point{x, y} + places[i].at * kScanPixels);
        if (dark > darkest) {
          darkest = dark;
          best = around + Point{x, y};
        }
      }
  };
  look({700, 700}, 700, 3, 9);
  look(best, 4, 1, 1);
  return best;
}

class ScannedTemplate : public ::testing::TestWithParam<std::tuple<const char*, double, double>> {};

TEST_P(ScannedTemplate, TilesJoinedByTheirMarksAreTheWholeNet) {
  const auto [paper, length, width] = GetParam();
  Random random(254);
  Design design =
      *newDesign("two-piece-box", std::nullopt, cards().front(), Ease::Easy, ToolGrid::none());
  design.parameters.set("length", Length::mm(length));
  design.parameters.set("width", Length::mm(width));
  const auto built = build(design);
  ASSERT_TRUE(built.ok());
  TemplateOptions options;
  options.setup.paper = *findPaper(paper);
  options.piece = QString::fromStdString(built->pieces[0].name);
  const auto pages = templatePages(*built, options);
  ASSERT_TRUE(pages.ok());
  ASSERT_EQ(pages->size(), 2U);
  const auto pdf = renderPdf(*pages, [](const Label& label) { return label.literal; },
                             {QStringLiteral("t"), {}, PdfKind::Template});
  ASSERT_TRUE(pdf.ok());
  const std::vector<QImage> images = paintedPages(*pdf, 2);
  const auto anywhere = [&] { return Point{random.between(-20, 20), random.between(-20, 20)}; };
  const Point moved = anywhere();
  const auto joined = joinPages(scanOf(images[0], moved), scanOf(images[1], anywhere()));
  ASSERT_TRUE(joined) << "no joint marks found";

  std::optional<double> worst;
  std::size_t measured = 0;
  for (const bool turned : {false, true}) {
    const std::vector<CutPlace> places = placesOn(built->pieces[0].flat, turned);
    const Point corner = cornerIn(*joined, places);
    std::array<std::size_t, 2> onPage{};
    // How the picture as a whole lies: across and down, by what most lines say.
    std::array<std::vector<double>, 2> off;
    std::vector<std::pair<CutPlace, double>> all;
    for (const CutPlace& place : places) {
      const Point pixel = corner + place.at * kScanPixels;
      const auto by = offBy(*joined, pixel, place.across);
      if (!by) continue;
      all.emplace_back(place, *by);
      ++onPage.at((joined->beside ? pixel.x : pixel.y) > joined->joint ? 1 : 0);
      if (std::abs(place.across.x) > 0.999) off[0].push_back(*by * place.across.x);
      if (std::abs(place.across.y) > 0.999) off[1].push_back(*by * place.across.y);
    }
    if (all.size() < places.size() / 2 || off[0].empty() || off[1].empty()) continue;
    for (std::vector<double>& each : off) std::ranges::sort(each);
    const Point lie{off[0][off[0].size() / 2], off[1][off[1].size() / 2]};
    double most = 0;
    for (const auto& [place, by] : all)
      most = std::max(most, std::abs(by - dot(lie, place.across)) / kScanPixels);
    EXPECT_GT(onPage[0], 10U);
    EXPECT_GT(onPage[1], 10U);
    worst = most;
    measured = all.size();
  }
  ASSERT_TRUE(worst) << "the net was not found in the joined picture";
  EXPECT_GT(measured, 100U);
  EXPECT_LT(*worst, kMostOff);
  RecordProperty("worst_micrometres", static_cast<int>(*worst * 1000));
  RecordProperty("places", static_cast<int>(measured));
  std::cout << "worst " << *worst << " mm at " << measured << " places\n";
}

INSTANTIATE_TEST_SUITE_P(Papers, ScannedTemplate,
                         ::testing::Values(std::tuple{"a4", 220.0, 200.0},
                                           std::tuple{"letter", 210.0, 120.0},
                                           std::tuple{"a4", 260.0, 90.0}));

}  // namespace
}  // namespace creasewright::testing
