#include "document/card_json.h"

#include <utility>

#include "base/base64.h"
#include "base/file_limits.h"
#include "fit/card_pattern.h"
#include "patterns/pattern.h"
#include "units/length_text.h"

namespace creasewright {
namespace {

using Json = nlohmann::ordered_json;

constexpr std::size_t kMostInks = 16;  // more than any pattern has

Result<std::vector<Colour>> readInks(const Fields& fields) {
  std::vector<Colour> colours;
  if (!fields.has("colours")) return colours;
  const Result<std::vector<std::string>> written = fields.texts("colours", kMostInks);
  if (!written) return written.problem();
  for (const std::string& text : *written) {
    const std::optional<Colour> colour = colourFromHex(text);
    if (!colour) return fields.unreadable("colours");
    colours.push_back(*colour);
  }
  return colours;
}

/// The picture of a paper, with its file as base64.
Result<PaperPicture> readPicture(const Fields& paper) {
  const Result<Fields> fields = paper.object("picture");
  if (!fields) return fields.problem();
  PaperPicture picture;
  const Result<bool> tiled = fields->flag("tiled");
  if (!tiled) return tiled.problem();
  picture.tiled = *tiled;
  for (const auto& [key, shift] : {std::pair{"right", &picture.right}, {"up", &picture.up}}) {
    const Result<Length> length = fields->length(key);
    if (!length) return length.problem();
    if (*length > kFarthestShift || *length < kFarthestShift * -1) return fields->unreadable(key);
    *shift = *length;
  }
  const Result<std::string> written = fields->text("file");
  if (!written) return written.problem();
  std::optional<std::string> bytes = fromBase64(*written);
  if (!bytes || !pixelsOf(*bytes)) return fields->unreadable("file");
  const auto size = static_cast<std::int64_t>(bytes->size());
  if (size > kLargestPaperPicture)
    return Problem{
        ProblemCode::PictureTooHeavy, fields->path("file"), {size, kLargestPaperPicture}};
  picture.file = PictureFile(std::move(*bytes));
  return picture;
}

/// The field `pattern` of a card, where it has one.
std::optional<Problem> readPattern(const Fields& card, CardColours& colours) {
  if (!card.has("pattern")) return std::nullopt;
  const Result<Fields> fields = card.object("pattern");
  if (!fields) return fields.problem();
  const Result<std::string> id = fields->text("id");
  if (!id) return id.problem();
  const Result<Length> scale = fields->length("scale");
  if (!scale) return scale.problem();
  const Result<std::int64_t> turn = fields->whole("turn");
  if (!turn) return turn.problem();
  if (*turn < 0 || *turn >= 360) return fields->unreadable("turn");
  const Result<std::string> side = fields->text("side");
  if (!side) return side.problem();
  if (*side != "face" && *side != "back") return fields->unreadable("side");
  const Result<std::vector<Colour>> inks = readInks(*fields);
  if (!inks) return inks.problem();
  PaperPattern written{*id, *scale, static_cast<int>(*turn), *inks};
  if (fields->has("plate")) {
    const Result<bool> plate = fields->flag("plate");
    if (!plate) return plate.problem();
    written.plate = *plate;
  }
  if (*id == kPicturePaper) {
    Result<PaperPicture> picture = readPicture(*fields);
    if (!picture) return picture.problem();
    written.picture = std::move(*picture);
  }
  const Result<PaperPattern> paper = checkedPaper(std::move(written));
  if (!paper) return paper.problem();
  colours.pattern = *paper;
  colours.patternBehind = *side == "back";
  return std::nullopt;
}

Json patternJson(const PaperPattern& paper, bool behind) {
  Json json{{"id", paper.id},
            {"scale", exactText(paper.scale)},
            {"turn", paper.turn},
            {"side", behind ? "back" : "face"}};
  if (paper.plate) json["plate"] = true;
  if (paper.picture)
    json["picture"] = {{"tiled", paper.picture->tiled},
                       {"right", exactText(paper.picture->right)},
                       {"up", exactText(paper.picture->up)}};
  if (paper.colours.empty()) return json;
  json["colours"] = Json::array();
  for (const Colour& colour : paper.colours) json["colours"].push_back(hexText(colour));
  return json;
}

}  // namespace

Result<Card> readCard(const Fields& owner) {
  const Result<Fields> fields = owner.object("card");
  if (!fields) return fields.problem();
  const Result<std::string> id = fields->text("id");
  if (!id) return id.problem();
  const Result<std::string> name = fields->text("name");
  if (!name) return name.problem();
  const Result<Length> caliper = fields->length("caliper");
  if (!caliper) return caliper.problem();
  if (*caliper <= Length()) return fields->unreadable("caliper");
  if (*caliper > kThickestCard)
    return Problem{ProblemCode::CardTooThick, fields->path("caliper"), {*caliper, kThickestCard}};
  const Result<double> grammage = fields->number("grammage");
  if (!grammage) return grammage.problem();
  if (!(*grammage >= 0 && *grammage <= kHeaviestCard)) return fields->unreadable("grammage");
  Card card{*id, *name, *caliper, *grammage};
  for (const auto& [key, side] :
       {std::pair{"face", &card.colours.face}, {"back", &card.colours.back}}) {
    if (!fields->has(key)) continue;
    const Result<std::string> written = fields->text(key);
    if (!written) return written.problem();
    *side = colourFromHex(*written);
    if (!*side) return fields->unreadable(key);
  }
  if (const auto problem = readPattern(*fields, card.colours)) return *problem;
  return card;
}

void putColours(nlohmann::ordered_json& card, const CardColours& colours) {
  if (colours.face) card["face"] = hexText(*colours.face);
  if (colours.back) card["back"] = hexText(*colours.back);
  if (colours.pattern) card["pattern"] = patternJson(*colours.pattern, colours.patternBehind);
}

nlohmann::ordered_json cardJson(const Card& card) {
  nlohmann::ordered_json json{{"id", card.id},
                              {"name", card.name},
                              {"caliper", exactText(card.caliper)},
                              {"grammage", card.grammage}};
  putColours(json, card.colours);
  if (card.colours.pattern && card.colours.pattern->picture)
    json["pattern"]["picture"]["file"] = toBase64(card.colours.pattern->picture->file.bytes());
  return json;
}

}  // namespace creasewright
