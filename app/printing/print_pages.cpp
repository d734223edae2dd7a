#include "printing/print_pages.h"

#include <QPageSize>
#include <QPainter>
#include <QPrinter>
#include <QPrinterInfo>

#include "bridge/label_text.h"
#include "bridge/paint_drawing.h"

namespace creasewright {

namespace {

constexpr double kMmPerInch = 25.4;

QPageLayout layoutFor(const Drawing& page) {
  const bool sideways = page.width > page.height;
  const QSizeF upright =
      sideways ? QSizeF(page.height, page.width) : QSizeF(page.width, page.height);
  const QPageSize size(upright, QPageSize::Millimeter, {}, QPageSize::FuzzyMatch);
  QPageLayout layout(size, sideways ? QPageLayout::Landscape : QPageLayout::Portrait, {});
  layout.setMode(QPageLayout::FullPageMode);
  return layout;
}

}  // namespace

QStringList printers() {
  QStringList names = QPrinterInfo::availablePrinterNames();
  const QString usual = QPrinterInfo::defaultPrinterName();
  if (names.removeOne(usual)) names.prepend(usual);
  return names;
}

bool printPages(const std::vector<Drawing>& pages, const QString& printer, const QString& title,
                Unit unit) {
  if (pages.empty()) return false;
  QPrinter device(QPrinterInfo::printerInfo(printer), QPrinter::HighResolution);
  device.setDocName(title);
  device.setFullPage(true);
  device.setPageLayout(layoutFor(pages.front()));
  QPainter painter;
  if (!painter.begin(&device)) return false;
  PaintOptions options;
  options.scale = device.resolution() / kMmPerInch;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    if (i > 0) {
      device.setPageLayout(layoutFor(pages[i]));
      if (!device.newPage()) return false;
    }
    paintDrawing(painter, pages[i], wordingIn(unit), options);
  }
  return painter.end();
}

}  // namespace creasewright
