#include <QApplication>
#include <QImage>
#include <QKeyEvent>
#include <QPainter>

#include <benchmark/benchmark.h>

#include "bench/wanted.h"
#include "preview/fold_view.h"
#include "session/design_session.h"
#include "shelf/samples_window.h"

namespace creasewright {
namespace {

constexpr QSize kScreen{1200, 900};

Design giftAt(std::size_t index) {
  const std::vector<Design> gifts = sampleGifts(Unit::Inch);
  bench::wanted(index < gifts.size(), "no such sample");
  return gifts[index];
}

QImage screen() {
  QImage image(kScreen, QImage::Format_RGB32);
  image.fill(Qt::white);
  return image;
}

bool isBlank(const QImage& image) {
  for (int x = 0; x < image.width(); ++x)
    if (image.pixel(x, image.height() / 2) != qRgb(255, 255, 255)) return false;
  return true;
}

/// One frame of the finished gift while it is turned by a key: hidden surfaces, colours, patterns,
/// words and edges, painted.
void giftFrame(benchmark::State& state) {
  DesignSession session;
  session.start(giftAt(static_cast<std::size_t>(state.range(0))), {});
  FoldView view(session);
  view.resize(kScreen);
  QImage image = screen();
  view.render(&image);
  for ([[maybe_unused]] auto _ : state) {
    QKeyEvent key(QEvent::KeyPress, Qt::Key_Left, Qt::NoModifier);
    QApplication::sendEvent(&view, &key);
    view.render(&image);
  }
  bench::wanted(!isBlank(image), "an empty picture");
  state.SetLabel(session.design().title);
}
BENCHMARK(giftFrame)->DenseRange(0, 9)->Unit(benchmark::kMillisecond);

/// The first picture after a change: the gift built anew, dressed and painted.
void giftFirstPicture(benchmark::State& state) {
  const Design gift = giftAt(static_cast<std::size_t>(state.range(0)));
  DesignSession session;
  session.start(gift, {});
  FoldView view(session);
  view.resize(kScreen);
  QImage image = screen();
  for ([[maybe_unused]] auto _ : state) {
    session.start(gift, {});
    view.render(&image);
  }
  bench::wanted(!isBlank(image), "an empty picture");
  state.SetLabel(gift.title);
}
BENCHMARK(giftFirstPicture)->DenseRange(0, 9)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace creasewright
