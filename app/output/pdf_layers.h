#pragma once

#include <QByteArray>
#include <string>
#include <vector>

namespace creasewright {

// Knows libqpdf and nothing of ours that asks for C++20: its headers are no C++20 to every
// compiler.

/// One layer: its name, and the group of processing steps it belongs to (empty = none).
struct PdfLayer {
  std::string id;
  std::string group;
};

/// A page put together from layers: each layer is one page of the painted PDF, lowest first.
struct LayeredPage {
  double width = 0;  ///< mm
  double height = 0;
  std::vector<PdfLayer> layers;  ///< empty: one painted page, which is no layer
};

struct LayeredInfo {
  std::string title;          ///< UTF-8
  std::string created;        ///< PDF date: `D:20260102030405Z`
  std::string language = {};  ///< of the words, as `en`; empty = not told
};

/// Turns a painted PDF, one page for each layer in order, into pages with optional content groups,
/// exact page boxes and the wish not to scale. Throws what libqpdf throws (std::exception).
QByteArray assembleLayers(const QByteArray& painted, const std::vector<LayeredPage>& pages,
                          const LayeredInfo& info);

}  // namespace creasewright
