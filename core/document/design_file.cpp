#include "document/design_file.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <span>

#include <nlohmann/json.hpp>

#include "base/base64.h"
#include "base/excerpt.h"
#include "base/file_limits.h"
#include "document/build.h"
#include "document/card_json.h"
#include "document/design_fields.h"
#include "document/file_io.h"
#include "document/json_fields.h"
#include "document/limit_problems.h"
#include "document/own_style_file.h"
#include "document/shared_pictures.h"
#include "extras/hosting.h"
#include "extras/layer_stack.h"
#include "styles/registry.h"
#include "units/length_text.h"
#include "units/millimetres.h"

namespace creasewright {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::string_view kFormat = "creasewright-design";
constexpr Length kNarrowestBoard = mm(20);

Result<std::vector<std::string>> readLines(const Fields& fields, std::string_view key) {
  const Result<std::string> text = fields.text(key);
  if (!text) return text.problem();
  std::vector<std::string> lines;
  if (text->empty()) return lines;
  for (std::string_view rest = *text;;) {
    const std::size_t end = rest.find('\n');
    lines.emplace_back(rest.substr(0, end));
    if (end == std::string_view::npos) return lines;
    rest.remove_prefix(end + 1);
  }
}

/// `box`, `outermost`, or the place of another extra in the list, from 1.
Result<int> readHost(const Fields& fields) {
  const Result<std::string> host = fields.text("host");
  if (!host) return host.problem();
  if (*host == "box") return kOnBox;
  if (*host == "outermost") return kOutermost;
  int number = 0;
  const char* end = host->data() + host->size();
  const auto read = std::from_chars(host->data(), end, number);
  const bool known = read.ec == std::errc() && read.ptr == end && number >= 1 &&
                     number <= static_cast<int>(kMostExtras);
  if (!known) return fields.unreadable("host");
  return number - 1;
}

Result<ExtraLayer> readLayer(const Fields& fields) {
  ExtraLayer layer;
  const Result<Parameters> parameters = readParameters(fields, "layer", layerParameters());
  if (!parameters) return parameters.problem();
  layer.parameters = *parameters;
  const Result<Card> card = readCard(fields);
  if (!card) return card.problem();
  layer.card = *card;
  const Result<std::vector<std::string>> lines = readLines(fields, "text");
  if (!lines) return lines.problem();
  layer.lines = *lines;
  return layer;
}

Result<std::vector<ExtraLayer>> readLayers(const Fields& extra, const ExtraKind& kind) {
  std::vector<ExtraLayer> layers;
  if (!extra.has("layers")) return layers;
  const Result<std::vector<Fields>> list = extra.objects("layers", kMostLayers);
  if (!list) return list.problem();
  if (!kind.layered && !list->empty()) return extra.unreadable("layers");
  for (const Fields& fields : *list) {
    Result<ExtraLayer> layer = readLayer(fields);
    if (!layer) return layer.problem();
    layers.push_back(std::move(layer).value());
  }
  return layers;
}

Result<Extra> readExtra(const Fields& fields) {
  const Result<const ExtraKind*> kind = readParsed(fields, "kind", findExtraKind);
  if (!kind) return kind.problem();
  Extra extra;
  extra.kind = (*kind)->id;
  const Result<Parameters> parameters = readParameters(fields, extra.kind, (*kind)->parameters);
  if (!parameters) return parameters.problem();
  extra.parameters = *parameters;
  const Result<Card> card = readCard(fields);
  if (!card) return card.problem();
  extra.card = *card;
  const Result<std::string> face = fields.text("face");
  if (!face) return face.problem();
  extra.face = *face;
  const Result<std::vector<std::string>> lines = readLines(fields, "text");
  if (!lines) return lines.problem();
  extra.lines = *lines;
  const Result<int> host = readHost(fields);
  if (!host) return host.problem();
  extra.host = *host;
  Result<std::vector<ExtraLayer>> layers = readLayers(fields, **kind);
  if (!layers) return layers.problem();
  extra.layers = std::move(layers).value();
  return extra;
}

Result<std::vector<Extra>> readExtras(const Fields& design) {
  const Result<std::vector<Fields>> list = design.objects("extras", kMostExtras);
  if (!list) return list.problem();
  std::vector<Extra> extras;
  for (const Fields& fields : *list) {
    Result<Extra> extra = readExtra(fields);
    if (!extra) return extra.problem();
    extras.push_back(std::move(extra).value());
  }
  return extras;
}

Result<Photo> readPhoto(const Fields& fields) {
  Photo photo;
  const Result<std::string> step = fields.text("step");
  if (!step) return step.problem();
  photo.step = *step;
  const Result<std::string> caption = fields.text("caption");
  if (!caption) return caption.problem();
  photo.caption = *caption;
  const Result<std::string> picture = fields.text("picture");
  if (!picture) return picture.problem();
  std::optional<std::string> bytes = fromBase64(*picture);
  if (!bytes) return fields.unreadable("picture");
  photo.picture = PictureFile(std::move(*bytes));
  return photo;
}

Result<std::vector<Photo>> readPhotos(const Fields& design) {
  std::vector<Photo> photos;
  if (!design.has("photos")) return photos;
  const Result<std::vector<Fields>> list = design.objects("photos", kMostPhotos);
  if (!list) return list.problem();
  for (const Fields& fields : *list) {
    Result<Photo> photo = readPhoto(fields);
    if (!photo) return photo.problem();
    if (!photo->picture.kind()) return fields.unreadable("picture");
    if (findPhoto(photos, photo->step) != nullptr) return fields.unreadable("step");
    photos.push_back(std::move(photo).value());
  }
  return photos;
}

Json photoJson(const Photo& photo) {
  return {{"step", photo.step},
          {"caption", photo.caption},
          {"picture", toBase64(photo.picture.bytes())}};
}

/// The own style that a design carries; its base is the design's style.
Result<OwnStyle> readCarriedStyle(const Fields& fields, std::string_view styleId) {
  constexpr std::string_view kField = "own_style";
  const Result<Fields> carried = fields.object(kField);
  if (!carried) return carried.problem();
  Result<OwnStyle> own = readOwnStyle(carried->asText(), kField);
  if (!own && own.problem().where == kField) return own;
  if (!own) return *inPart(own.problem(), std::string(kField));
  if (own->base != styleId) return carried->unreadable("base");
  return own;
}

Result<Design> readCurrent(const Fields& fields) {
  Design design;
  const Result<const Style*> style = readParsed(fields, "style", findStyle);
  if (!style) return style.problem();
  design.styleId = (*style)->id;
  const Result<std::string> title = fields.text("title");
  if (!title) return title.problem();
  design.title = *title;
  const Result<std::string> notes = fields.text("notes");
  if (!notes) return notes.problem();
  design.notes = *notes;
  if (fields.has("product")) {
    const Result<Product> product = readParsed(fields, "product", parseProduct);
    if (!product) return product.problem();
    design.product = *product;
  }
  const Result<Parameters> parameters = readParameters(fields, (*style)->id, (*style)->parameters);
  if (!parameters) return parameters.problem();
  design.parameters = *parameters;
  const Result<Card> card = readCard(fields);
  if (!card) return card.problem();
  design.card = *card;
  const Result<Ease> ease = readParsed(fields, "ease", parseEase);
  if (!ease) return ease.problem();
  design.ease = *ease;
  const Result<ToolGrid> grid = readParsed(fields, "grid", parseToolGrid);
  if (!grid) return grid.problem();
  design.grid = *grid;
  if (fields.has("tags")) {
    const Result<std::vector<std::string>> tags = fields.texts("tags", kMostTags);
    if (!tags) return tags.problem();
    design.tags = *tags;
  }
  if (fields.has("board")) {
    const Result<Length> board = fields.length("board");
    if (!board) return board.problem();
    if (*board < kNarrowestBoard) return fields.unreadable("board");
    design.board = *board;
  }
  if (fields.has("own_style")) {
    Result<OwnStyle> own = readCarriedStyle(fields, design.styleId);
    if (!own) return own.problem();
    design.ownStyle = std::move(own).value();
  }
  Result<std::vector<Edit>> edits = readEdits(fields);
  if (!edits) return edits.problem();
  design.edits = std::move(edits).value();
  Result<std::vector<Extra>> extras = readExtras(fields);
  if (!extras) return extras.problem();
  design.extras = std::move(extras).value();
  Result<std::vector<Photo>> photos = readPhotos(fields);
  if (!photos) return photos.problem();
  design.photos = std::move(photos).value();
  return design;
}

/// Version 1 knew no extras; its platform insert had one margin all round and a square opening.
void toVersion2(Json& json) {
  json["extras"] = Json::array();
  if (!json.contains("parameters") || !json["parameters"].is_object()) return;
  if (json.value("style", Json()) != "platform-insert") return;
  Json& parameters = json["parameters"];
  if (parameters.contains("margin")) parameters["side-margin"] = parameters["margin"];
  parameters["round"] = false;
}

/// Version 2 knew the crossed-seam pouch by another name, and a framed tray in one order only.
void toVersion3(Json& json) {
  const Json style = json.value("style", Json());
  if (style == "tetra-pouch") json["style"] = "crossed-seam-pouch";
  if (style == "framed-tray" && json.contains("parameters") && json["parameters"].is_object())
    json["parameters"]["long-sides-first"] = false;
}

/// Version 3 knew no changes by hand.
void toVersion4(Json& json) { json["edits"] = Json::array(); }

/// Version 4 knew no own styles, and a reader of it would leave out what they change.
void toVersion5(Json&) {}

/// Version 5 knew no photos, and a reader of it would leave them out.
void toVersion6(Json&) {}

constexpr std::array<std::string_view, 10> kSince7{
    "anchor", "across", "up", "turn", "overhang", "hold", "foam", "punched", "full", "ease"};

/// Version 6 knew no hosts: all lay on the box or went round it. Measures that were added since are
/// at their standards. It knew no pictures as papers either.
void toVersion7(Json& json) {
  if (!json.contains("extras") || !json["extras"].is_array()) return;
  for (Json& extra : json["extras"]) {
    if (!extra.is_object()) continue;
    extra["host"] = "outermost";
    const Json id = extra.value("kind", Json());
    if (!id.is_string() || !extra.contains("parameters") || !extra["parameters"].is_object())
      continue;
    const Result<const ExtraKind*> kind = findExtraKind(id.get<std::string>());
    if (!kind) continue;
    if ((*kind)->hasFaces && (*kind)->onFace) extra["host"] = "box";
    Json& parameters = extra["parameters"];
    const Json standard =
        parametersJson(standardExtra(**kind, cards().front()).parameters, (*kind)->parameters);
    for (const std::string_view key : kSince7)
      if (standard.contains(key) && !parameters.contains(key)) parameters[key] = standard[key];
  }
}

/// Gives extras and their layers measures that they lack, at their standards.
void addMeasures(Json& json, std::span<const std::string_view> keys) {
  if (!json.contains("extras") || !json["extras"].is_array()) return;
  const auto fill = [&](Json& owner, const Json& standard) {
    if (!owner.is_object() || !owner.contains("parameters") || !owner["parameters"].is_object())
      return;
    for (const std::string_view key : keys)
      if (standard.contains(key) && !owner["parameters"].contains(key))
        owner["parameters"][key] = standard[key];
  };
  const Card& card = cards().front();
  const Json layers = parametersJson(standardLayer(card).parameters, layerParameters());
  for (Json& extra : json["extras"]) {
    if (!extra.is_object()) continue;
    const Json id = extra.value("kind", Json());
    if (!id.is_string()) continue;
    const Result<const ExtraKind*> kind = findExtraKind(id.get<std::string>());
    if (!kind) continue;
    fill(extra, parametersJson(standardExtra(**kind, card).parameters, (*kind)->parameters));
    if (!extra.contains("layers") || !extra["layers"].is_array()) continue;
    for (Json& layer : extra["layers"]) fill(layer, layers);
  }
}

/// Version 7 knew one way to set words.
void toVersion8(Json& json) {
  constexpr std::array<std::string_view, 4> kSince8{"font", "align", "curve", "points"};
  addMeasures(json, kSince8);
}

/// Version 8 knew places on a face as lengths alone, which stay as they are.
void toVersion9(Json& json) {
  constexpr std::array<std::string_view, 2> kSince9{"across-share", "up-share"};
  addMeasures(json, kSince9);
}

/// Version 9 knew no list of pictures that stand in several places.
void toVersion10(Json&) {}

/// Labels of an older version stay where they are, but for those that a band hid: they lie on it.
Design withHiddenLabelsOnTop(Design design) {
  const Result<BuiltDesign> built = build(design);
  if (!built) return design;
  for (const Problem& problem : built->problems) {
    if (problem.code != ProblemCode::ExtraCovered) continue;
    for (Extra& extra : design.extras)
      if (extra.kind == problem.where && extra.host == kOnBox) extra.host = kOutermost;
  }
  return design;
}

/// Turns the fields of an older version into those of the newest, one version at a time; each later
/// version adds its step here.
void migrate(Json& json, std::int64_t version) {
  for (; version < kDesignVersion; ++version) {
    if (version == 1) toVersion2(json);
    if (version == 2) toVersion3(json);
    if (version == 3) toVersion4(json);
    if (version == 4) toVersion5(json);
    if (version == 5) toVersion6(json);
    if (version == 6) toVersion7(json);
    if (version == 7) toVersion8(json);
    if (version == 8) toVersion9(json);
    if (version == 9) toVersion10(json);
  }
}

std::string joined(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines) text += (&line == lines.data() ? "" : "\n") + line;
  return text;
}

Json extraJson(const Extra& extra) {
  const Result<const ExtraKind*> kind = findExtraKind(extra.kind);
  Json json{{"kind", extra.kind},
            {"parameters", parametersJson(extra.parameters, kind ? (*kind)->parameters
                                                                 : std::vector<ParameterSpec>{})},
            {"card", cardJson(extra.card)},
            {"face", extra.face},
            {"host", hostText(extra.host)},
            {"text", joined(extra.lines)}};
  for (const ExtraLayer& layer : extra.layers)
    json["layers"].push_back({{"parameters", parametersJson(layer.parameters, layerParameters())},
                              {"card", cardJson(layer.card)},
                              {"text", joined(layer.lines)}});
  return json;
}

}  // namespace

std::string writeDesign(const Design& design) {
  Json json;
  json["format"] = kFormat;
  json["version"] = kDesignVersion;
  json["title"] = design.title;
  json["style"] = design.styleId;
  if (design.product) json["product"] = productText(*design.product);
  const Result<const Style*> style = findStyle(design.styleId);
  json["parameters"] = parametersJson(design.parameters,
                                      style ? (*style)->parameters : std::vector<ParameterSpec>{});
  json["card"] = cardJson(design.card);
  json["ease"] = easeText(design.ease);
  json["grid"] = toolGridText(design.grid);
  if (!design.tags.empty()) json["tags"] = design.tags;
  if (design.board > Length()) json["board"] = exactText(design.board);
  if (design.ownStyle)
    json["own_style"] = Json::parse(writeOwnStyle(*design.ownStyle), nullptr, false);
  json["edits"] = editsJson(design.edits);
  json["extras"] = Json::array();
  for (const Extra& extra : design.extras) json["extras"].push_back(extraJson(extra));
  for (const Photo& photo : design.photos) json["photos"].push_back(photoJson(photo));
  json["notes"] = design.notes;
  sharePictures(json);
  return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

Result<Design> readDesign(std::string_view text, std::string_view where) {
  Result<OwnFile> own = openOwnFile(
      text, where, {kFormat, kDesignVersion, kLargestDesignFile, ProblemCode::NotADesign});
  if (!own) return own.problem();
  OwnFile file = std::move(own).value();
  unsharePictures(file.json);
  migrate(file.json, file.version);
  Result<Design> design = readCurrent(Fields(file.json, ""));
  if (!design) return design;
  if (const auto problem = fileLimitProblem(*design)) return *problem;
  if (file.version < 7) return withHiddenLabelsOnTop(std::move(design).value());
  return design;
}

Result<Design> readDesignFile(const std::string& path) {
  const Result<std::string> text = readFile(path, kLargestDesignFile);
  if (!text) return text.problem();
  return readDesign(*text, path);
}

Result<std::string> designFileText(const Design& design, std::string_view where) {
  if (const auto problem = fileLimitProblem(design)) return *problem;
  std::string text = writeDesign(design);
  const auto size = static_cast<std::int64_t>(text.size());
  if (size > kLargestDesignFile)
    return Problem{ProblemCode::DesignTooHeavy, std::string(where), {size, kLargestDesignFile}};
  return text;
}

std::optional<Problem> writeDesignFile(const Design& design, const std::string& path) {
  const Result<std::string> text = designFileText(design, path);
  return text ? writeFileAtomically(path, *text) : std::optional(text.problem());
}

}  // namespace creasewright
