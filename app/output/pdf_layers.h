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

/// A painted page and its layers, lowest first.
struct LayeredPage {
  double width = 0;  ///< mm
  double height = 0;
  std::vector<PdfLayer> layers;  ///< empty: the page has none
};

/// Where the `k`-th layer of a painted page begins, an area is filled whose path begins at
/// (kLayerMark, k) in device units, far off the page: it is put out and the layer's mark put in.
inline constexpr int kLayerMark = -987654;

struct LayeredInfo {
  std::string title;          ///< UTF-8
  std::string created;        ///< PDF date: `D:20260102030405Z`
  std::string language = {};  ///< of the words, as `en`; empty = not told
};

/// Turns a painted PDF into pages with optional content groups, exact page boxes and the wish not
/// to scale. Throws what libqpdf throws, and where a layer's beginning is not found
/// (std::exception).
QByteArray assembleLayers(const QByteArray& painted, const std::vector<LayeredPage>& pages,
                          const LayeredInfo& info);

}  // namespace creasewright
