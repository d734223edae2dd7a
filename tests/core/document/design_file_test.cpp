#include "document/design_file.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "document/file_io.h"
#include "extras/extra_kind.h"
#include "extras/layer_stack.h"
#include "fit/card_pattern.h"
#include "patterns/pattern.h"
#include "styles/registry.h"
#include "support/random.h"

namespace creasewright {
namespace {

using Json = nlohmann::ordered_json;

constexpr const char* kGolden = CREASEWRIGHT_TESTS_DIR "/golden/document/soap-tray.cwdesign";

/// Soap measures: typical, measure yours.
Design soapTray() {
  Design design = newDesign("framed-tray", *parseProduct("box:89x64x25mm"), cards()[0], Ease::Easy,
                            ToolGrid::sixteenthInch())
                      .value();
  design.parameters.set("frame", Length::inches(3, 8));
  design.title = "Soap tray";
  design.notes = "The Alder Mill Paper Circle\nThursday group, 12 pieces \u00BD price";
  return design;
}

Json soapJson() { return Json::parse(writeDesign(soapTray())); }

Problem problemOf(const Json& json) {
  const Result<Design> design = readDesign(json.dump(), "a.cwdesign");
  if (design) return Problem{ProblemCode::NotADesign, "it was read", {}};
  return design.problem();
}

TEST(DesignFile, GoldenFile) {
  const Result<std::string> golden = readFile(kGolden, 1 << 20);
  ASSERT_TRUE(golden.ok());
  EXPECT_EQ(writeDesign(soapTray()), *golden);
  const Result<Design> design = readDesign(*golden, kGolden);
  ASSERT_TRUE(design.ok());
  EXPECT_EQ(*design, soapTray());
}

TEST(DesignFile, AFileOfVersionOneIsStillRead) {
  std::string path = kGolden;
  path.insert(path.rfind('.'), "-version-1");
  const Result<Design> design = readDesignFile(path);
  ASSERT_TRUE(design.ok());
  EXPECT_EQ(*design, soapTray());
}

/// Before version 3 a framed tray had no choice of its order.
TEST(DesignFile, AFileOfVersionTwoIsStillRead) {
  std::string path = kGolden;
  path.insert(path.rfind('.'), "-version-2");
  const Result<Design> design = readDesignFile(path);
  ASSERT_TRUE(design.ok());
  EXPECT_EQ(*design, soapTray());
}

/// Before version 4 there were no changes by hand.
TEST(DesignFile, AFileOfVersionThreeIsStillRead) {
  std::string path = kGolden;
  path.insert(path.rfind('.'), "-version-3");
  const Result<Design> design = readDesignFile(path);
  ASSERT_TRUE(design.ok());
  EXPECT_EQ(*design, soapTray());
}

/// Before version 5 there were no own styles.
TEST(DesignFile, AFileOfVersionFourIsStillRead) {
  std::string path = kGolden;
  path.insert(path.rfind('.'), "-version-4");
  const Result<Design> design = readDesignFile(path);
  ASSERT_TRUE(design.ok());
  EXPECT_EQ(*design, soapTray());
}

/// Before version 6 there were no photos.
TEST(DesignFile, AFileOfVersionFiveIsStillRead) {
  std::string path = kGolden;
  path.insert(path.rfind('.'), "-version-5");
  const Result<Design> design = readDesignFile(path);
  ASSERT_TRUE(design.ok());
  EXPECT_EQ(*design, soapTray());
}

/// Before version 7 no picture could be a paper.
TEST(DesignFile, AFileOfVersionSixIsStillRead) {
  std::string path = kGolden;
  path.insert(path.rfind('.'), "-version-6");
  const Result<Design> design = readDesignFile(path);
  ASSERT_TRUE(design.ok());
  EXPECT_EQ(*design, soapTray());
}

/// Before version 8 words had one way to be set.
TEST(DesignFile, AFileOfVersionSevenIsStillRead) {
  std::string path = kGolden;
  path.insert(path.rfind('.'), "-version-7");
  const Result<Design> design = readDesignFile(path);
  ASSERT_TRUE(design.ok());
  EXPECT_EQ(*design, soapTray());
}

/// Before version 8 words were set in one way.
TEST(DesignFile, WordsOfVersionSevenAreSetAsBefore) {
  Design design = soapTray();
  Extra label = standardExtra(**findExtraKind("label"), design.card);
  label.lines = {"Soap"};
  label.layers = {standardLayer(design.card)};
  design.extras = {label};
  Json json = Json::parse(writeDesign(design));
  json["version"] = 7;
  for (const char* key : {"font", "align", "curve", "points"}) {
    EXPECT_EQ(json["extras"][0]["parameters"].erase(key), 1U) << key;
    EXPECT_EQ(json["extras"][0]["layers"][0]["parameters"].erase(key), 1U) << key;
  }
  const Result<Design> read = readDesign(json.dump(), "a");
  ASSERT_TRUE(read.ok()) << read.problem().where;
  EXPECT_EQ(*read, design);
  json["version"] = kDesignVersion;
  EXPECT_FALSE(readDesign(json.dump(), "a").ok());
}

/// A PNG of noise: its first bytes, then so many others.
std::string pictureOf(int bytes, int seed) {
  testing::Random random(static_cast<unsigned>(seed));
  std::string out("\x89PNG\r\n\x1A\n\0\0\0\x0DIHDR\0\0\0\x40\0\0\0\x40", 24);
  for (int i = 0; i < bytes; ++i) out += static_cast<char>(random.whole(0, 255));
  return out;
}

CardColours printedWith(const std::string& picture) {
  CardColours colours;
  colours.pattern = PaperPattern{kPicturePaper, mm(40), 0, {{1, 2, 3}, {1, 2, 3}, {1, 2, 3}}};
  colours.pattern->picture = PaperPicture{PictureFile(picture), true, {}, {}};
  return colours;
}

/// A box and twelve labels of one picture of a megabyte hold it once; another one is held beside
/// it.
TEST(DesignFile, APictureThatIsOnManyPartsIsKeptOnce) {
  const std::string often = pictureOf(1'000'000, 1);
  const std::string once = pictureOf(50'000, 2);
  Design design = soapTray();
  design.card.colours = printedWith(often);
  for (int i = 0; i < 12; ++i) {
    Extra label = standardExtra(**findExtraKind("label"), design.card);
    label.card.colours = printedWith(i == 0 ? once : often);
    design.extras.push_back(label);
  }
  const std::string text = writeDesign(design);
  EXPECT_LT(text.size(), 1'500'000U);
  const Result<Design> read = readDesign(text, "a");
  ASSERT_TRUE(read.ok()) << read.problem().where;
  EXPECT_EQ(*read, design);

  // The number of none is one sentence, and so is a list that would fill the memory.
  Json json = Json::parse(text);
  ASSERT_EQ(json["pictures"].size(), 1U);
  EXPECT_EQ(json["card"]["pattern"]["picture"]["file"], "#1");
  for (const char* none : {"#2", "#0", "#", "#99999999999999999999", "#1x"}) {
    Json wrong = json;
    wrong["card"]["pattern"]["picture"]["file"] = none;
    EXPECT_EQ(problemOf(wrong).code, ProblemCode::FieldUnreadable) << none;
  }
  json["pictures"] = 3;
  EXPECT_EQ(problemOf(json).code, ProblemCode::FieldUnreadable);
}

/// Pictures that make a file larger than may be read are told before it is written.
TEST(DesignFile, ADesignTooHeavyToBeReadIsNotWritten) {
  Design design = soapTray();
  for (int i = 0; i < 12; ++i) {
    Extra label = standardExtra(**findExtraKind("label"), design.card);
    label.card.colours = printedWith(pictureOf(1'200'000, i));
    design.extras.push_back(label);
  }
  const Result<std::string> text = designFileText(design, "gift.cwdesign");
  ASSERT_FALSE(text.ok());
  EXPECT_EQ(text.problem().code, ProblemCode::DesignTooHeavy);
}

TEST(DesignFile, TheOldNameOfTheCrossedSeamPouchIsKnownInOldFilesOnly) {
  const Design pouch =
      newDesign("crossed-seam-pouch", std::nullopt, cards()[0], Ease::Easy, ToolGrid::millimetre())
          .value();
  Json json = Json::parse(writeDesign(pouch));
  json["style"] = "tetra-pouch";
  for (const int version : {1, 2}) {
    json["version"] = version;
    const Result<Design> read = readDesign(json.dump(), "a");
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(*read, pouch);
  }
  json["version"] = kDesignVersion;
  EXPECT_EQ(problemOf(json).code, ProblemCode::UnknownStyle);
}

TEST(DesignFile, EveryDesignReadsBackTheSame) {
  testing::Random random(1603);
  for (const Style& style : styles()) {
    for (int i = 0; i < 200; ++i) {
      Design design;
      design.styleId = style.id;
      design.title = "Title \"" + std::to_string(i) + "\" \u00E4\\\t";
      design.card = {"own", "own card", Length::nanometres(random.whole(1, 3'000'000)),
                     random.between(0, 500)};
      design.grid = *parseToolGrid(i % 2 == 0 ? "none" : "1/8in");
      design.ease = static_cast<Ease>(random.whole(0, 2));
      if (i % 2 == 0)
        design.card.colours.face = namedColours()[static_cast<std::size_t>(i) % 26].colour;
      if (i % 3 == 0) design.card.colours.back = Colour{1, 0xFE, static_cast<std::uint8_t>(i)};
      if (i % 3 == 1)
        design.card.colours =
            *withPattern(design.card.colours, i % 2 == 0 ? "tartan:scale=1/2in:turn=15:side=back"
                                                         : "dots:colours=sage,#010203");
      if (i % 5 == 0) {
        // A PNG's signature and its header chunk (ISO/IEC 15948, 5.2 and 11.2.2).
        const std::string png("\x89PNG\r\n\x1A\n\0\0\0\rIHDR\0\0\0\3\0\0\0\2", 24);
        PaperPattern paper{kPicturePaper, Length::mm(3 + i), i, {{1, 2, 3}, {0, 0, 0}}};
        paper.picture = PaperPicture{PictureFile(png + std::to_string(i)), i % 2 == 0,
                                     Length::nanometres(random.whole(-900'000'000, 900'000'000)),
                                     Length::inches(-1, 16)};
        paper.plate = i % 2 == 1;
        design.card.colours.pattern = paper;
        design.product = parseProduct("sphere:42.7mm:#0A1B2C").value();
      }
      if (i % 4 == 0) design.tags = {"autumn", "\u00E4, \"quoted\""};
      if (i % 5 == 0) design.board = Length::inches(12);
      if (i % 3 != 0) design.product = parseProduct("cylinder:40x120mm").value();
      for (const ParameterSpec& spec : style.parameters)
        design.parameters.setCount(spec.key, spec.kind == ParameterKind::Flag
                                                 ? random.whole(0, 1)
                                                 : random.whole(-2'000'000, 2'000'000'000));
      const Result<Design> read = readDesign(writeDesign(design), "a");
      ASSERT_TRUE(read.ok()) << writeDesign(design);
      EXPECT_EQ(*read, design) << writeDesign(design);
    }
  }
}

TEST(DesignFile, SavesAndOpens) {
  const std::string path = ::testing::TempDir() + "creasewright-saves-and-opens.cwdesign";
  EXPECT_EQ(writeDesignFile(soapTray(), path), std::nullopt);
  const Result<Design> design = readDesignFile(path);
  ASSERT_TRUE(design.ok());
  EXPECT_EQ(*design, soapTray());
  std::remove(path.c_str());
  EXPECT_EQ(readDesignFile(path).problem().code, ProblemCode::FileUnreadable);
}

TEST(DesignFile, BrokenTextIsWrittenAsUtf8) {
  Design design = soapTray();
  design.title = "a\xFFz";
  const Result<Design> read = readDesign(writeDesign(design), "a");
  ASSERT_TRUE(read.ok());
  EXPECT_EQ(read->title, "a\uFFFDz");
}

TEST(DesignFile, UnknownFieldsArePassedOver) {
  Json json = soapJson();
  json["from-tomorrow"] = {{"deep", {1, 2, {3}}}};
  json["card"]["colour"] = "moss";
  const Result<Design> read = readDesign(json.dump(), "a");
  ASSERT_TRUE(read.ok());
  EXPECT_EQ(*read, soapTray());
}

TEST(DesignFile, LengthsMayBeWholeNanometres) {
  Json json = soapJson();
  json["parameters"]["depth"] = 25'400'000;
  json["card"]["caliper"] = "0,3";
  const Result<Design> read = readDesign(json.dump(), "a");
  ASSERT_TRUE(read.ok());
  EXPECT_EQ(read->parameters.length("depth"), Length::inches(1));
  EXPECT_EQ(read->card.caliper, Length::mm(0.3));
}

/// Photos: a JPEG and a PNG by their first bytes (the core decodes none).
TEST(DesignFile, PhotosReadBackAndWhatIsNoneIsRefused) {
  Design design = soapTray();
  design.photos = {{"", "Our box", PictureFile(std::string("\xFF\xD8\xFF\0\1", 5))},
                   {"tray/fold/x", "", PictureFile(std::string("\x89PNG\r\n\x1A\n\0", 9))}};
  const Result<Design> read = readDesign(writeDesign(design), "a");
  ASSERT_TRUE(read.ok()) << read.problem().where;
  EXPECT_EQ(*read, design);
  const Json whole = Json::parse(writeDesign(design));
  const auto where = [&](const char* pointer, const Json& value) {
    Json json = whole;
    json[Json::json_pointer(pointer)] = value;
    const Problem problem = problemOf(json);
    EXPECT_EQ(problem.code, ProblemCode::FieldUnreadable) << pointer;
    return problem.where;
  };
  EXPECT_EQ(where("/photos/0/picture", "no base 64!"), "photos/1/picture");
  EXPECT_EQ(where("/photos/1/picture", "R0lGODlh"), "photos/2/picture");  // a GIF
  EXPECT_EQ(where("/photos/1/step", ""), "photos/2/step");                // the box a second time
  EXPECT_EQ(where("/photos/0/caption", 7), "photos/1/caption");
  EXPECT_EQ(where("/photos", "x"), "photos");
}

TEST(DesignFile, NewerVersionIsRefused) {
  Json json = soapJson();
  json["version"] = kDesignVersion + 1;
  EXPECT_EQ(problemOf(json),
            (Problem{ProblemCode::NewerVersion,
                     "a.cwdesign",
                     {std::int64_t{kDesignVersion + 1}, std::int64_t{kDesignVersion}}}));
  json.erase("style");  // the version is looked at first
  EXPECT_EQ(problemOf(json).code, ProblemCode::NewerVersion);
}

TEST(DesignFile, AnythingElseIsNotADesign) {
  for (const char* text : {"", "{", "[]", "null", "7", "{}", "{\"format\":7}", "\xFF\xFE",
                           "{\"format\":\"creasewright-net\",\"version\":1}", "<svg/>"}) {
    const Result<Design> design = readDesign(text, "a.cwdesign");
    ASSERT_FALSE(design.ok()) << text;
    EXPECT_EQ(design.problem(), (Problem{ProblemCode::NotADesign, "a.cwdesign", {}})) << text;
  }
}

TEST(DesignFile, MissingFieldsAreNamedByTheirPath) {
  const Json whole = soapJson();
  for (const auto& [key, value] : whole.items()) {
    if (key == "format" || key == "product") continue;  // not a design; not needed
    Json json = soapJson();
    json.erase(key);
    EXPECT_EQ(problemOf(json), (Problem{ProblemCode::FieldMissing, key, {}}));
  }
  for (const char* group : {"card", "parameters"})
    for (const auto& [key, value] : whole[group].items()) {
      Json json = soapJson();
      json[group].erase(key);
      EXPECT_EQ(problemOf(json),
                (Problem{ProblemCode::FieldMissing, std::string(group) + "/" + key, {}}));
    }
}

TEST(DesignFile, WrongTypesAreNamedByTheirPath) {
  const Json wrong[] = {nullptr, Json::array({1}), Json::object({{"a", 1}}), true, -1.5};
  for (const Json& value : wrong) {
    for (const char* key : {"version", "title", "style", "product", "ease", "grid", "notes"}) {
      Json json = soapJson();
      json[key] = value;
      EXPECT_EQ(problemOf(json).code, ProblemCode::FieldUnreadable) << key << value;
      EXPECT_EQ(problemOf(json).where, key);
    }
    for (const char* key : {"id", "name", "caliper", "grammage"}) {
      Json json = soapJson();
      json["card"][key] = value;
      EXPECT_EQ(problemOf(json).code, ProblemCode::FieldUnreadable) << key << value;
      EXPECT_EQ(problemOf(json).where, "card/" + std::string(key));
    }
  }
  Json json = soapJson();
  json["parameters"] = "none";
  EXPECT_EQ(problemOf(json),
            (Problem{ProblemCode::FieldUnreadable, "parameters", {std::string("none")}}));
}

TEST(DesignFile, HostileValuesAreNamed) {
  struct Row {
    const char* pointer;
    Json value;
    ProblemCode code;
    const char* where;
  };
  const Row rows[] = {
      {"/version", 0, ProblemCode::FieldUnreadable, "version"},
      {"/version", "1", ProblemCode::FieldUnreadable, "version"},
      {"/version", 18446744073709551615u, ProblemCode::FieldUnreadable, "version"},
      {"/version", 1.0, ProblemCode::FieldUnreadable, "version"},
      {"/style", "teapot", ProblemCode::UnknownStyle, "style"},
      {"/product", "box:1x2", ProblemCode::ProductUnreadable, "product"},
      {"/product", "box:1x2x3000", ProblemCode::ProductTooLarge, "product"},
      {"/ease", "tight", ProblemCode::EaseUnknown, "ease"},
      {"/grid", "", ProblemCode::GridUnknown, "grid"},
      {"/parameters/depth", "1e9 mm", ProblemCode::FieldUnreadable, "parameters/depth"},
      {"/parameters/depth", 9223372036854775807, ProblemCode::FieldUnreadable, "parameters/depth"},
      {"/parameters/depth", 2.5, ProblemCode::FieldUnreadable, "parameters/depth"},
      {"/parameters/deepth", "1 mm", ProblemCode::UnknownParameter, "framed-tray"},
      {"/card/caliper", "0 mm", ProblemCode::FieldUnreadable, "card/caliper"},
      {"/card/caliper", "-1 mm", ProblemCode::FieldUnreadable, "card/caliper"},
      {"/card/caliper", "3.1 mm", ProblemCode::CardTooThick, "card/caliper"},
      {"/card/grammage", -1, ProblemCode::FieldUnreadable, "card/grammage"},
      {"/card/grammage", 1e300, ProblemCode::FieldUnreadable, "card/grammage"},
      {"/card/face", "sage", ProblemCode::FieldUnreadable, "card/face"},
      {"/card/back", 7, ProblemCode::FieldUnreadable, "card/back"},
  };
  for (const Row& row : rows) {
    Json json = soapJson();
    json[Json::json_pointer(row.pointer)] = row.value;
    EXPECT_EQ(problemOf(json).code, row.code) << row.pointer << row.value;
    EXPECT_EQ(problemOf(json).where, row.where) << row.pointer << row.value;
  }
}

TEST(DesignFile, FlagsAreTrueOrFalse) {
  Json json = Json::parse(
      writeDesign(*newDesign("straight-tuck-box", {}, cards()[0], Ease::Easy, ToolGrid::none())));
  EXPECT_TRUE(json["parameters"]["thumb-notch"].is_boolean());
  json["parameters"]["thumb-notch"] = 1;
  EXPECT_TRUE(readDesign(json.dump(), "a")->parameters.flag("thumb-notch"));
  json["parameters"]["thumb-notch"] = 2;
  EXPECT_EQ(problemOf(json).where, "parameters/thumb-notch");
}

TEST(DesignFile, NothingInAMessageIsLong) {
  Json json = soapJson();
  json["parameters"]["depth"] = std::string(100'000, 'x');
  EXPECT_LE(std::get<std::string>(problemOf(json).values.at(0)).size(), 64u);
}

TEST(DesignFile, APatternThatMakesNoSenseIsNamed) {
  Design design = soapTray();
  design.card.colours = *withPattern({}, "dots:colours=sage,cream");
  Json json = Json::parse(writeDesign(design));
  const auto with = [&](const char* key, const Json& value) {
    Json changed = json;
    changed["card"]["pattern"][key] = value;
    return problemOf(changed);
  };
  EXPECT_EQ(with("id", "dotz").code, ProblemCode::PatternUnknown);
  EXPECT_EQ(with("scale", "0 mm").code, ProblemCode::PatternScaleOff);
  EXPECT_EQ(with("scale", "99000 mm").code, ProblemCode::PatternScaleOff);
  EXPECT_EQ(with("scale", "wide").where, "card/pattern/scale");
  EXPECT_EQ(with("turn", 360).where, "card/pattern/turn");
  EXPECT_EQ(with("side", "top").where, "card/pattern/side");
  EXPECT_EQ(with("colours", Json::array({"sage"})).where, "card/pattern/colours");
  const Json many = Json::array({"#000000", "#000000", "#000000", "#000000"});
  EXPECT_EQ(with("colours", many).code, ProblemCode::PatternColours);
  EXPECT_EQ(with("id", nullptr).code, ProblemCode::FieldUnreadable);
}

}  // namespace
}  // namespace creasewright
