#include "cli/edit_argument.h"

#include <algorithm>

#include "bridge/text.h"
#include "cli/output.h"
#include "cli/settings_argument.h"
#include "edits/kinds/apply_edits.h"
#include "edits/kinds/edit_kind.h"
#include "styles/registry.h"

namespace creasewright {

namespace {

const QString editArgumentName = QStringLiteral("--edit");

/// The pieces as the style and the changes so far make them; for their names, which do not depend
/// on sizes.
std::vector<Piece> piecesOf(const Design& design) {
  const Result<const Style*> style = findStyle(design.styleId);
  if (!style) return {};
  const Workbench bench = benchOf(design);
  std::vector<Piece> pieces = (*style)->build(design.parameters, bench);
  applyEdits(allEdits(design), design.parameters, lengthKeys((*style)->parameters), bench, pieces);
  return pieces;
}

std::string dashed(std::string name) {
  std::ranges::replace(name, '/', '-');
  return name;
}

struct NamedPanel {
  std::string piece;
  const Panel* panel;
};

/// The panels that a name may mean: the one it is, or those it ends.
std::vector<NamedPanel> panelsCalled(std::string_view written, const std::vector<Piece>& pieces) {
  const std::size_t colon = written.find(':');
  const std::string_view piece =
      colon == std::string_view::npos ? std::string_view() : written.substr(0, colon);
  const std::string name =
      dashed(std::string(colon == std::string_view::npos ? written : written.substr(colon + 1)));
  std::vector<NamedPanel> ending;
  for (const Piece& p : pieces) {
    if (!piece.empty() && p.name != piece) continue;
    for (const Panel& panel : p.net.panels) {
      const std::string id = dashed(panel.id);
      if (id == name) return {{p.name, &panel}};
      if (id.ends_with("-" + name)) ending.push_back({p.name, &panel});
    }
  }
  return ending;
}

QString listed(QStringList names) {
  constexpr qsizetype kMost = 40;
  names.removeDuplicates();
  if (names.size() > kMost) names = names.mid(0, kMost) << QStringLiteral("…");
  return names.join(QStringLiteral(", "));
}

QString panelNames(const std::vector<Piece>& pieces) {
  QStringList names;
  for (const Piece& piece : pieces)
    for (const Panel& panel : piece.net.panels) {
      const QString name = text(panel.id);
      names += pieces.size() == 1 ? name : text(piece.name) + QLatin1Char(':') + name;
    }
  return listed(names);
}

/// Sets the place; false when it is not there (that is told).
bool setPlace(Edit& edit, const EditKind& kind, std::string_view on,
              const std::vector<Piece>& pieces) {
  const std::vector<NamedPanel> panels = panelsCalled(on, pieces);
  if (panels.size() != 1) {
    fail(Cli::tr("--edit: “%1” names no single panel of this style. Write on= and one of these: "
                 "%2.")
             .arg(shown(std::string(on)), panelNames(pieces)));
    return false;
  }
  edit.piece = panels.front().piece;
  edit.panel = panels.front().panel->id;
  if (kind.place == EditPlace::Panel) {
    if (edit.edge.empty()) return true;
    fail(Cli::tr("--edit: %1 belongs to a panel and takes no edge. Leave edge= out.")
             .arg(text(kind.id)));
    return false;
  }
  const std::vector<std::string>& edges = panels.front().panel->edges;
  if (std::ranges::find(edges, edit.edge) != edges.end()) return true;
  QStringList names;
  for (const std::string& edge : edges) names += text(edge);
  fail(Cli::tr("--edit: “%1” is no edge of this panel. Write edge= and one of these: %2.")
           .arg(shown(edit.edge), listed(names)));
  return false;
}

}  // namespace

std::optional<Edit> readEditArgument(const std::string& argument, const Design& design) {
  const auto [head, settings] = readSettings(argument, "words");
  const Result<const EditKind*> kind = findEditKind(head);
  if (!kind) {
    fail(editArgumentName, kind.problem());
    return std::nullopt;
  }
  Edit edit;
  edit.kind = (*kind)->id;
  std::string on;
  for (const Setting& setting : settings) {
    if (!setting.equals) {
      fail(Cli::tr("--edit: “%1” has no equals sign. Write KIND:KEY=VALUE,KEY=VALUE, such as "
                   "--edit opening:on=front,shape=heart.")
               .arg(shown(std::string(setting.written))));
      return std::nullopt;
    }
    if (setting.key == "on")
      on = setting.value;
    else if (setting.key == "edge")
      edit.edge = setting.value;
    else if (std::ranges::find((*kind)->measures, setting.key, &EditMeasure::key) !=
             (*kind)->measures.end())
      edit.measures[std::string(setting.key)] = setting.value;
    else {
      fail(Cli::tr("--edit: %1 has no measure “%2”. “creasewright edits” lists the ones it has.")
               .arg(text((*kind)->id), shown(std::string(setting.key))));
      return std::nullopt;
    }
  }
  if (!setPlace(edit, **kind, on, piecesOf(design))) return std::nullopt;
  return edit;
}

}  // namespace creasewright
