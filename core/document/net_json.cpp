#include "document/net_json.h"

#include "document/card_json.h"
#include "document/json_parts.h"
#include "document/lies_on.h"
#include "document/plan_json.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

std::string_view kindText(CreaseKind kind) {
  switch (kind) {
    case CreaseKind::Score:
      return "score";
    case CreaseKind::Perforated:
      return "perforated";
    case CreaseKind::Flat:
      return "flat";
  }
  return "";
}

std::string_view shapeText(ProductShape shape) {
  switch (shape) {
    case ProductShape::Box:
      return "box";
    case ProductShape::Cylinder:
      return "cylinder";
    case ProductShape::Sphere:
      return "sphere";
    case ProductShape::Tube:
      return "tube";
    case ProductShape::Card:
      return "card";
  }
  return "";
}

const std::string& idOf(const Net& net, int panel) {
  return net.panels[static_cast<std::size_t>(panel)].id;
}

Json panelsJson(const BuiltPiece& built) {
  Json panels = Json::array();
  for (std::size_t i = 0; i < built.flat.panels.size(); ++i) {
    Json openings = Json::array();
    for (const Polygon& opening : built.flat.openings[i]) openings.push_back(pointsJson(opening));
    panels.push_back({{"id", built.net.panels[i].id},
                      {"outline", pointsJson(built.flat.panels[i])},
                      {"openings", std::move(openings)}});
  }
  return panels;
}

Json creasesJson(const BuiltPiece& built) {
  const Net& net = built.net;
  Json creases = Json::array();
  for (std::size_t i = 0; i < net.creases.size(); ++i) {
    const Crease& crease = net.creases[i];
    creases.push_back({{"a", idOf(net, crease.parent)},
                       {"b", idOf(net, crease.child)},
                       {"p", pointJson(built.flat.creases[i].a)},
                       {"q", pointJson(built.flat.creases[i].b)},
                       {"angle_deg", numberJson(crease.angle.degrees())},
                       {"fold", crease.isValley() ? "valley" : "mountain"},
                       {"stage", crease.stage},
                       {"kind", kindText(crease.kind)},
                       {"loop", crease.loop}});
  }
  return creases;
}

Json mateJson(const Net& net, const Mate& mate) {
  return {{"panel", idOf(net, mate.panel)},
          {"onto", idOf(net, mate.onto)},
          {"face", faceText(mate.face)},
          {"method", methodText(mate.method)},
          {"rim", mate.rim}};
}

/// Joints of whole flaps; what merely rests on something is none.
Json matesJson(const BuiltPiece& built) {
  Json mates = Json::array();
  for (const Mate& mate : built.net.mates)
    if (mate.method != Method::Rest && mate.patch.empty())
      mates.push_back(mateJson(built.net, mate));
  return mates;
}

/// Joints of a part of a panel, the part in blank coordinates.
Json patchesJson(const BuiltPiece& built) {
  Json patches = Json::array();
  for (const Mate& mate : built.net.mates) {
    if (mate.method == Method::Rest || mate.patch.empty()) continue;
    Polygon area;
    for (const Point& p : mate.patch) area.push_back(built.flat.place(mate.panel, p));
    Json json = mateJson(built.net, mate);
    json.erase("rim");
    json["area"] = pointsJson(area);
    patches.push_back(std::move(json));
  }
  return patches;
}

/// The cut edges of that name, as lines in blank coordinates.
Json edgesJson(const BuiltPiece& built, int panel, const std::string& name) {
  const auto i = static_cast<std::size_t>(panel);
  const std::vector<std::string>& edges = built.net.panels[i].edges;
  const Polygon& outline = built.net.panels[i].outline;
  Json lines = Json::array();
  for (std::size_t k = 0; k < edges.size(); ++k)
    if (edges[k] == name)
      lines.push_back(pointsJson({built.flat.place(panel, outline[k]),
                                  built.flat.place(panel, outline[(k + 1) % outline.size()])}));
  return lines;
}

Json openEdgesJson(const BuiltPiece& built) {
  const Net& net = built.net;
  Json list = Json::array();
  for (const OpenEdges& open : net.openEdges)
    list.push_back({{"a", idOf(net, open.panel)},
                    {"a_lines", edgesJson(built, open.panel, open.edge)},
                    {"b", idOf(net, open.other)},
                    {"b_lines", edgesJson(built, open.other, open.otherEdge)},
                    {"why", open.why}});
  return list;
}

Json frameJson(const Transform& frame) {
  const auto list = [](Point3 p) {
    return Json::array({numberJson(p.x), numberJson(p.y), numberJson(p.z)});
  };
  return {{"origin", list(frame.apply(Point3{}))},
          {"x", list(frame.turn({1, 0, 0}))},
          {"y", list(frame.turn({0, 1, 0}))}};
}

/// How a piece is held to another; null for the one that others are held to, and for extras.
Json heldJson(const BuiltPiece& built) {
  if (!built.held) return nullptr;
  const Holding& held = *built.held;
  Json json{{"by", held.by == Hold::Glue   ? "glue"
                   : held.by == Hold::Slot ? "slot"
                                           : "loose"},
            {"to", held.to}};
  if (held.by == Hold::Glue) {
    json["panel"] = held.panel;
    json["onto"] = held.onto;
    json["face"] = faceText(held.face);
  }
  if (held.place) json["place"] = frameJson(*held.place);
  return json;
}

Json netCardJson(const Card& card) {
  Json json{{"id", card.id},
            {"name", card.name},
            {"caliper_mm", numberJson(card.caliper.mm())},
            {"grammage", numberJson(card.grammage)}};
  putColours(json, card.colours);
  return json;
}

/// Which extra a piece belongs to; null for the box's own.
Json extraIndexJson(const BuiltPiece& built) {
  if (!built.role) return nullptr;
  return built.role->extra;
}

std::string_view holdText(LayerHold hold) {
  switch (hold) {
    case LayerHold::Glue:
      return "glue";
    case LayerHold::Tape:
      return "tape";
    case LayerHold::Foam:
      return "foam";
  }
  return {};
}

/// Where a flat piece lies, of which there are several of mats; `origin` and the axes of its own
/// frame in that of the panel.
Json facesJson(const BuiltDesign& built, const ExtraRole& role) {
  Json list = Json::array();
  for (const FacePlace& face : role.faces) {
    const BuiltPiece& on = built.pieces[static_cast<std::size_t>(face.piece)];
    list.push_back({{"piece", on.name},
                    {"panel", on.net.panels[static_cast<std::size_t>(face.panel)].id},
                    {"place", frameJson(face.place)}});
  }
  return list;
}

Json partJson(const BuiltDesign& built, const BuiltPiece& piece) {
  Json json{{"piece", piece.name}, {"faces", facesJson(built, *piece.role)}};
  if (!piece.role->layer) return json;
  const LayerFacts& layer = *piece.role->layer;
  json["hold"] = holdText(layer.hold);
  json["foam"] = numberJson(layer.foam.mm());
  json["foam_dots"] = layer.foamDots;
  json["punched"] = layer.punched;
  json["stamped"] = layer.stamped;
  return json;
}

Json extrasJson(const BuiltDesign& built) {
  Json list = Json::array();
  for (std::size_t i = 0; i < built.design.extras.size(); ++i) {
    const Extra& extra = built.design.extras[i];
    Json parts = Json::array();
    for (const BuiltPiece& piece : built.pieces)
      if (piece.role && piece.role->extra == static_cast<int>(i))
        parts.push_back(partJson(built, piece));
    const std::optional<int> host = liesOn(built, static_cast<int>(i));
    list.push_back({{"kind", extra.kind},
                    {"face", extra.face},
                    {"host", host ? Json(*host) : Json(nullptr)},
                    {"lines", extra.lines},
                    {"parts", std::move(parts)}});
  }
  return list;
}

Json pullJson(const RibbonPull& pull, const BuiltDesign& built) {
  const BuiltPiece& piece = built.pieces[static_cast<std::size_t>(pull.face.piece)];
  return {{"piece", piece.name},
          {"panel", piece.net.panels[static_cast<std::size_t>(pull.face.panel)].id},
          {"holes", pull.holes},
          {"spacing", numberJson(pull.spacing)},
          {"reach", numberJson(pull.reach)},
          {"end", numberJson(pull.end)}};
}

Json ribbonsJson(const BuiltDesign& built) {
  Json list = Json::array();
  for (const RibbonNeed& ribbon : built.ribbons) {
    list.push_back({{"width", numberJson(ribbon.width.mm())},
                    {"length", numberJson(ribbon.length.mm())},
                    {"cross", ribbon.cross}});
    if (ribbon.pull) list.back()["pull"] = pullJson(*ribbon.pull, built);
  }
  return list;
}

std::string_view fontText(Typeface face) {
  switch (face) {
    case Typeface::Plain:
      return "plain";
    case Typeface::Serif:
      return "serif";
    case Typeface::Typewriter:
      return "typewriter";
    case Typeface::Slanted:
      return "slanted";
    case Typeface::Hand:
      return "hand";
  }
  return "";
}

std::string_view sideText(WordsSide side) {
  switch (side) {
    case WordsSide::Left:
      return "left";
    case WordsSide::Centre:
      return "centre";
    case WordsSide::Right:
      return "right";
  }
  return "";
}

/// Lines of words where they stand on the blank.
Json wordsJson(const BuiltPiece& built) {
  Json list = Json::array();
  for (const Inscription& line : built.net.inscriptions) {
    Json words{{"panel", built.net.panels[static_cast<std::size_t>(line.panel)].id},
               {"text", line.text},
               {"at", pointJson(built.flat.place(line.panel, line.at))},
               {"height", numberJson(line.height)},
               {"turn_deg", numberJson(line.turnDegrees)},
               {"font", fontText(line.face)},
               {"align", sideText(line.side)},
               {"column", numberJson(line.column)},
               {"arc", nullptr}};
    if (line.arc)
      words["arc"] = {{"radius", numberJson(line.arc->radius)}, {"lower", line.arc->lower}};
    list.push_back(std::move(words));
  }
  return list;
}

Json pieceJson(const BuiltPiece& built, ToolGrid grid) {
  Json cuts = Json::array();
  for (const Polyline& cut : cutLines(built.flat)) cuts.push_back(pointsJson(cut));
  return {{"name", built.name},
          {"count", built.count},
          {"extra", extraIndexJson(built)},
          {"card", netCardJson(built.card)},
          {"blank",
           {{"width", numberJson(built.flat.width)}, {"height", numberJson(built.flat.height)}}},
          {"panels", panelsJson(built)},
          {"words", wordsJson(built)},
          {"creases", creasesJson(built)},
          {"mates", matesJson(built)},
          {"patches", patchesJson(built)},
          {"open_edges", openEdgesJson(built)},
          {"held", heldJson(built)},
          {"cuts", std::move(cuts)},
          {"score_plan", scorePlanJson(built.scorePlan, grid)},
          {"cut_plan", cutPlanJson(built)},
          {"glue_plan", gluePlanJson(built, grid)},
          {"fold_plan", foldPlanJson(built)}};
}

Json productJson(const std::optional<Product>& product) {
  if (!product) return nullptr;
  return {{"shape", shapeText(product->shape)},
          {"length", numberJson(product->length.mm())},
          {"width", numberJson(product->width.mm())},
          {"height", numberJson(product->height.mm())}};
}

Json point3Json(Point3 p) {
  return Json::array({numberJson(p.x), numberJson(p.y), numberJson(p.z)});
}

/// A corner of the free box and its three edges, as seen with the cavity's panel lying in the flat
/// net: x and y in the sheet, z above the drawn face.
Json cavityBoxJson(const BuiltPiece& piece) {
  const std::string& id = piece.cavity->panel;
  const Transform& frame = piece.flat.frames[static_cast<std::size_t>(*piece.net.find(id))];
  const Point3 size = piece.cavityBox.high - piece.cavityBox.low;
  return {{"piece", piece.name},
          {"panel", id},
          {"corner", point3Json(frame.apply(piece.cavityBox.low))},
          {"edges", Json::array({point3Json(frame.turn({size.x, 0, 0})),
                                 point3Json(frame.turn({0, size.y, 0})),
                                 point3Json(frame.turn({0, 0, size.z}))})}};
}

/// Where a round product stands, in the same coordinates; null where the free box holds it.
Json roundRoomJson(const BuiltPiece& piece) {
  if (!piece.roundRoom) return nullptr;
  const std::string& id = piece.cavity->panel;
  const Transform& frame = piece.flat.frames[static_cast<std::size_t>(*piece.net.find(id))];
  return {{"shape", piece.roundRoom->size.ball ? "ball" : "cylinder"},
          {"across", numberJson(piece.roundRoom->size.across)},
          {"foot", point3Json(frame.apply(piece.roundRoom->foot))},
          {"along", point3Json(frame.turn(piece.roundRoom->along))}};
}

/// Of the piece that holds the product.
Json cavityJson(const BuiltDesign& built) {
  for (const BuiltPiece& piece : built.pieces)
    if (piece.cavitySize && !piece.over)
      return {{"length", numberJson(piece.cavitySize->length)},
              {"width", numberJson(piece.cavitySize->width)},
              {"height", numberJson(piece.cavitySize->height)},
              {"box", cavityBoxJson(piece)},
              {"round", roundRoomJson(piece)}};
  return nullptr;
}

Json parametersJson(const BuiltDesign& built) {
  Json json = Json::object();
  for (const ParameterSpec& spec : built.style->parameters) {
    const Parameters& values = built.design.parameters;
    const std::string key(spec.key);
    switch (spec.kind) {
      case ParameterKind::Length:
        json[key] = exactText(values.length(key));
        break;
      case ParameterKind::Count:
        json[key] = values.count(key);
        break;
      case ParameterKind::Flag:
        json[key] = values.flag(key);
        break;
    }
  }
  return json;
}

/// What the net itself shows; the way of folding is for everyProblem().
Problems allProblems(const BuiltDesign& built) {
  Problems all = built.problems;
  all.insert(all.end(), built.warnings.begin(), built.warnings.end());
  return all;
}

Json problemsJson(const Problems& problems) {
  Json list = Json::array();
  for (const Problem& problem : problems)
    list.push_back({{"code", codeName(problem.code)},
                    {"where", problem.where},
                    {"severity", problem.severity == Severity::Error ? "error" : "warning"}});
  return list;
}

}  // namespace

std::string writeNetJson(const BuiltDesign& built) {
  Json json{{"format", "creasewright-net"},
            {"version", 1},
            {"units", "mm"},
            {"title", built.design.title},
            {"style", built.style->id},
            {"parameters", parametersJson(built)},
            {"card", netCardJson(built.design.card)}};
  json["pieces"] = Json::array();
  for (const BuiltPiece& piece : built.pieces)
    json["pieces"].push_back(pieceJson(piece, built.design.grid));
  json["extras"] = extrasJson(built);
  json["ribbons"] = ribbonsJson(built);
  json["product"] = productJson(built.design.product);
  json["cavity"] = cavityJson(built);
  json["problems"] = problemsJson(allProblems(built));
  return json.dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace creasewright
