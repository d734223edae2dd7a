#include "widgets/theme.h"

#include <QApplication>
#include <QFile>
#include <QPalette>
#include <QStyleFactory>
#include <utility>
#include <vector>

namespace creasewright {

namespace {

const Theme* inUse = nullptr;

/// Whether the desktop's own palette, before we changed it, is dark.
bool systemIsDark() {
  static const bool dark = QPalette().color(QPalette::Window).lightness() < 110;
  return dark;
}

QPalette paletteFor(const Theme& t) {
  QPalette p;
  p.setColor(QPalette::Window, t.bench);
  p.setColor(QPalette::WindowText, t.ink);
  p.setColor(QPalette::Base, t.surface);
  p.setColor(QPalette::AlternateBase, t.raised);
  p.setColor(QPalette::Text, t.ink);
  p.setColor(QPalette::Button, t.raised);
  p.setColor(QPalette::ButtonText, t.ink);
  p.setColor(QPalette::PlaceholderText, t.quietInk);
  p.setColor(QPalette::ToolTipBase, t.surface);
  p.setColor(QPalette::ToolTipText, t.ink);
  p.setColor(QPalette::Highlight, t.accent);
  p.setColor(QPalette::HighlightedText, t.onAccent);
  p.setColor(QPalette::Link, t.accent);
  p.setColor(QPalette::Mid, t.hairline);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
    QColor faded = t.quietInk;
    faded.setAlpha(130);
    p.setColor(QPalette::Disabled, role, faded);
  }
  return p;
}

}  // namespace

const Theme& lightTheme() {
  static const Theme light{false,     "#F4F1EA", "#FFFFFF", "#FBF9F5", "#D9D3C7",
                           "#23282E", "#4A5560", "#8A5A00", "#FFFFFF", "#E8A200",
                           "#A3005C", "#005F48", "#5A4E3A"};
  return light;
}

const Theme& darkTheme() {
  static const Theme dark{true,      "#22262A", "#2C3136", "#343A40", "#434A51",
                          "#ECE8DF", "#B4BCC4", "#F0B429", "#23282E", "#F0B429",
                          "#FF8AC0", "#7FD1B5", "#000000"};
  return dark;
}

const Theme& theme() { return inUse != nullptr ? *inUse : lightTheme(); }

namespace {

/// A surface with a kShare of the halo over it: what is lit.
QColor litSurface(const Theme& t) {
  constexpr float kShare = 0.35F;
  const auto mixed = [](float a, float b) { return a + (b - a) * kShare; };
  return QColor::fromRgbF(mixed(t.surface.redF(), t.halo.redF()),
                          mixed(t.surface.greenF(), t.halo.greenF()),
                          mixed(t.surface.blueF(), t.halo.blueF()));
}

}  // namespace

QString styleSheetFor(const Theme& t) {
  QFile file(QStringLiteral(":/window.qss"));
  if (!file.open(QIODevice::ReadOnly)) return {};
  QString sheet = QString::fromUtf8(file.readAll());
  sheet.replace(QStringLiteral("@tick"),
                t.dark ? QStringLiteral("tick-dark") : QStringLiteral("tick-light"));
  const std::vector<std::pair<QString, QColor>> names{
      {"@bench", t.bench},       {"@surface", t.surface}, {"@raised", t.raised},
      {"@hairline", t.hairline}, {"@quiet", t.quietInk},  {"@ink", t.ink},
      {"@onaccent", t.onAccent}, {"@accent", t.accent},   {"@halo", t.halo},
      {"@problem", t.problem},   {"@fine", t.fine},       {"@lit", litSurface(t)}};
  for (const auto& [name, colour] : names) sheet.replace(name, colour.name());
  return sheet;
}

void applyTheme(QApplication& app, ThemeChoice choice) {
  const bool system = systemIsDark();
  const bool dark = choice == ThemeChoice::Dark || (choice == ThemeChoice::System && system);
  inUse = dark ? &darkTheme() : &lightTheme();
  QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
  QApplication::setPalette(paletteFor(*inUse));
  app.setStyleSheet(styleSheetFor(*inUse));
}

}  // namespace creasewright
