#include "output/pdf_export.h"

#include <QBuffer>
#include <QMarginsF>
#include <QPageSize>
#include <QPainter>
#include <QPainterPath>
#include <QPdfWriter>
#include <algorithm>
#include <exception>

#include "bridge/language.h"
#include "bridge/paint_drawing.h"
#include "drawing/role.h"
#include "output/pdf_layers.h"

namespace creasewright {

namespace {

constexpr int kResolution = 1200;

std::vector<Role> rolesOf(const Drawing& page) {
  std::vector<Role> roles;
  for (const Role role : paintOrder()) {
    const auto ofRole = [role](const auto& item) { return item.role == role; };
    if (std::any_of(page.paths.begin(), page.paths.end(), ofRole) ||
        std::any_of(page.texts.begin(), page.texts.end(), ofRole))
      roles.push_back(role);
  }
  return roles;
}

LayeredPage layeredPage(const Drawing& page) {
  LayeredPage layered{page.width, page.height, {}};
  for (const Role role : rolesOf(page)) {
    const RoleStyle& style = roleStyle(role);
    layered.layers.push_back({std::string(style.id), std::string(style.group)});
  }
  return layered;
}

Drawing onlyRole(const Drawing& page, Role role) {
  Drawing out{page.width, page.height, {}, {}};
  const auto ofRole = [role](const auto& item) { return item.role == role; };
  std::copy_if(page.paths.begin(), page.paths.end(), std::back_inserter(out.paths), ofRole);
  std::copy_if(page.texts.begin(), page.texts.end(), std::back_inserter(out.texts), ofRole);
  return out;
}

void setPage(QPdfWriter& writer, const LayeredPage& page) {
  writer.setPageSize(QPageSize(QSizeF(page.width, page.height), QPageSize::Millimeter, QString(),
                               QPageSize::ExactMatch));
  writer.setPageMargins(QMarginsF(0, 0, 0, 0));
}

/// The beginning of a layer, for pdf_layers to find.
void markLayer(QPainter& painter, int layer) {
  QPainterPath mark(QPointF(kLayerMark, layer));
  mark.lineTo(kLayerMark, layer + 1);
  mark.lineTo(kLayerMark + 1, layer);
  mark.closeSubpath();
  painter.fillPath(mark, Qt::black);
}

/// The scale comes from the resolution alone.
QByteArray paintLayers(const std::vector<Drawing>& pages, const std::vector<LayeredPage>& layered,
                       const Wording& wording, const PaintLook& look) {
  QByteArray painted;
  QBuffer buffer(&painted);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter writer(&buffer);
  writer.setResolution(kResolution);
  setPage(writer, layered.front());
  QPainter painter(&writer);
  const PaintOptions options{.scale = writer.resolution() / 25.4, .look = look};
  for (std::size_t i = 0; i < pages.size(); ++i) {
    if (i > 0) {
      setPage(writer, layered[i]);
      writer.newPage();
    }
    if (layered[i].layers.empty()) {
      paintDrawing(painter, pages[i], wording, options);
      continue;
    }
    int layer = 0;
    for (const Role role : rolesOf(pages[i])) {
      markLayer(painter, layer++);
      paintDrawing(painter, onlyRole(pages[i], role), wording, options);
    }
  }
  painter.end();
  return painted;
}

}  // namespace

Result<QByteArray> renderPdf(const std::vector<Drawing>& pages, const Wording& wording,
                             const PdfInfo& info) {
  std::vector<LayeredPage> layered;
  for (const Drawing& page : pages) {
    layered.push_back(info.kind == PdfKind::Template ? layeredPage(page)
                                                     : LayeredPage{page.width, page.height, {}});
  }
  if (layered.empty()) return Problem{ProblemCode::FileNotWritten, {}, {std::string("no pages")}};
  const QString created =
      info.created.isValid()
          ? info.created.toUTC().toString(QStringLiteral("'D:'yyyyMMddHHmmss'Z'"))
          : QString();
  try {
    return assembleLayers(
        paintLayers(pages, layered, wording, info.look), layered,
        {info.title.toStdString(), created.toStdString(), languageSpoken().toStdString()});
  } catch (const std::exception& error) {
    return Problem{ProblemCode::FileNotWritten, {}, {std::string(error.what())}};
  }
}

}  // namespace creasewright
