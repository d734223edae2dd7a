#include "shelf/sample_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <string_view>

namespace creasewright {

namespace {

constexpr std::array kTexts = {
    QT_TRANSLATE_NOOP("samples", "Lavender soap tray"),
    QT_TRANSLATE_NOOP("samples",
                      "A full band keeps the soap in its tray; it slides off at one end."),
    QT_TRANSLATE_NOOP("samples", "House for bean seeds"),
    QT_TRANSLATE_NOOP(
        "samples",
        "Six packets of seeds stand in it. The ribbon goes over the ridge and under the floor."),
    QT_TRANSLATE_NOOP("samples", "Box for six truffles"),
    QT_TRANSLATE_NOOP("samples", "Line the tray with food-safe paper; the lid lifts off."),
    QT_TRANSLATE_NOOP("samples", "Opening memory box"),
    QT_TRANSLATE_NOOP("samples",
                      "Photo mats on the inside of every wall: it opens when the lid is lifted."),
    QT_TRANSLATE_NOOP("samples", "Carton for plum jam"),
    QT_TRANSLATE_NOOP("samples", "The bottom locks under the weight of the jar."),
    QT_TRANSLATE_NOOP("samples", "Drawer for knitted baby shoes"),
    QT_TRANSLATE_NOOP("samples", "Pull the drawer by its ribbon; the slip lies under the shoes."),
    QT_TRANSLATE_NOOP("samples", "Six-sided tea box"),
    QT_TRANSLATE_NOOP("samples", "For a round tin, or for tea in a bag of its own."),
    QT_TRANSLATE_NOOP("samples", "Pillow with a tag"),
    QT_TRANSLATE_NOOP("samples", "A first curved box: fold the ends over a spoon."),
    QT_TRANSLATE_NOOP("samples", "Window box for a beeswax stub"),
    QT_TRANSLATE_NOOP("samples", "For show, unlit: keep card away from flames."),
    QT_TRANSLATE_NOOP("samples", "Envelope for bean seeds"),
    QT_TRANSLATE_NOOP("samples", "The first lesson: four scores, one seam."),
};

std::string translated(const std::string& text) {
  return QCoreApplication::translate("samples", text.c_str()).toStdString();
}

}  // namespace

Design inReadersWords(Design sample) {
  if (isSampleText(sample.title)) sample.title = translated(sample.title);
  if (isSampleText(sample.notes)) sample.notes = translated(sample.notes);
  return sample;
}

bool isSampleText(const std::string& text) {
  return std::ranges::any_of(
      kTexts, [&](std::string_view each) { return each == text; });
}

}  // namespace creasewright
