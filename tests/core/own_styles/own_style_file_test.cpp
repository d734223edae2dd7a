#include "document/own_style_file.h"

#include <filesystem>

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include "document/design_file.h"
#include "document/file_io.h"
#include "support/heart_box.h"

namespace creasewright {
namespace {

using StyleJson = nlohmann::ordered_json;
using testing::heartStyle;

Problem refusalOf(const StyleJson& json) {
  const Result<OwnStyle> read = readOwnStyle(json.dump(), "a.cwstyle");
  return read ? Problem{ProblemCode::NotAStyle, "it was read", {}} : read.problem();
}

StyleJson heartJson() { return StyleJson::parse(writeOwnStyle(heartStyle())); }

TEST(OwnStyleFile, ReadsBackTheSame) {
  const OwnStyle style = heartStyle();
  const Result<OwnStyle> read = readOwnStyle(writeOwnStyle(style), "a");
  ASSERT_TRUE(read.ok()) << codeName(read.problem().code) << ' ' << read.problem().where;
  EXPECT_EQ(*read, style);
  EXPECT_EQ(writeOwnStyle(*read), writeOwnStyle(style));
  EXPECT_TRUE(style.picture.starts_with("<?xml") || style.picture.starts_with("<svg"))
      << style.picture.substr(0, 60);
}

TEST(OwnStyleFile, TheSameStyleIsTheSameBytes) {
  EXPECT_EQ(writeOwnStyle(heartStyle()), writeOwnStyle(heartStyle()));
}

TEST(OwnStyleFile, SavesAndOpensAndADesignIsNone) {
  const std::string path = ::testing::TempDir() + "creasewright-heart.cwstyle";
  EXPECT_EQ(writeOwnStyleFile(heartStyle(), path), std::nullopt);
  const Result<OwnStyle> read = readOwnStyleFile(path);
  ASSERT_TRUE(read.ok());
  EXPECT_EQ(*read, heartStyle());
  std::filesystem::remove(path);
  EXPECT_EQ(readOwnStyleFile(path).problem().code, ProblemCode::FileUnreadable);
  EXPECT_EQ(readOwnStyle(writeDesign(testing::heartBox()), "a").problem().code,
            ProblemCode::NotAStyle);
}

TEST(OwnStyleFile, ADesignCarriesItsStyleWhole) {
  Design design = *newDesign(heartStyle(), *parseProduct("box:50x30x90mm"), cards().front(),
                             Ease::Snug, ToolGrid::sixteenthInch());
  design.edits = {{"corners", "", "front/left/top-dust-flap", "side", {{"size", "3 mm"}}, true}};
  const Result<Design> read = readDesign(writeDesign(design), "a");
  ASSERT_TRUE(read.ok()) << codeName(read.problem().code) << ' ' << read.problem().where;
  EXPECT_EQ(*read, design);
}

TEST(OwnStyleFile, NewerVersionsAreRefused) {
  StyleJson json = heartJson();
  json["version"] = kOwnStyleVersion + 1;
  EXPECT_EQ(refusalOf(json).code, ProblemCode::NewerVersion);
  StyleJson design = StyleJson::parse(
      writeDesign(*newDesign(heartStyle(), std::nullopt, cards().front(), Ease::Easy, {})));
  design["own_style"]["version"] = kOwnStyleVersion + 1;
  const Result<Design> read = readDesign(design.dump(), "a");
  ASSERT_FALSE(read.ok());
  EXPECT_EQ(read.problem(),
            (Problem{ProblemCode::NewerVersion,
                     "own_style",
                     {std::int64_t{kOwnStyleVersion + 1}, std::int64_t{kOwnStyleVersion}}}));
}

TEST(OwnStyleFile, MissingFieldsAreNamed) {
  const StyleJson whole = heartJson();
  for (const auto& [key, value] : whole.items()) {
    if (key == "format" || key == "suits" || key == "picture") continue;
    StyleJson json = whole;
    json.erase(key);
    EXPECT_EQ(refusalOf(json), (Problem{ProblemCode::FieldMissing, key, {}}));
  }
}

TEST(OwnStyleFile, HostileValuesAreNamed) {
  struct Row {
    const char* pointer;
    StyleJson value;
    ProblemCode code;
    const char* where;
  };
  const Row rows[] = {
      {"/version", 0, ProblemCode::FieldUnreadable, "version"},
      {"/id", "", ProblemCode::FieldUnreadable, "id"},
      {"/id", "../../etc/passwd", ProblemCode::FieldUnreadable, "id"},
      {"/id", "Heart", ProblemCode::FieldUnreadable, "id"},
      {"/id", "framed-tray", ProblemCode::FieldUnreadable, "id"},
      {"/id", std::string(81, 'a'), ProblemCode::FieldUnreadable, "id"},
      {"/change", 0, ProblemCode::FieldUnreadable, "change"},
      {"/change", "2", ProblemCode::FieldUnreadable, "change"},
      {"/title", 7, ProblemCode::FieldUnreadable, "title"},
      {"/base", "teapot", ProblemCode::UnknownStyle, "base"},
      {"/suits/least/length", "0 mm", ProblemCode::FieldUnreadable, "suits/least/length"},
      {"/suits/most/width", "1 mm", ProblemCode::FieldUnreadable, "suits/most/width"},
      {"/suits/most", "large", ProblemCode::FieldUnreadable, "suits/most"},
      {"/seen", "depth", ProblemCode::FieldUnreadable, "seen"},
      {"/seen", StyleJson::array({"brim"}), ProblemCode::UnknownParameter, "straight-tuck-box"},
      {"/rules", StyleJson::array(), ProblemCode::FieldUnreadable, "rules"},
      {"/rules/brim", "3 mm", ProblemCode::UnknownParameter, "straight-tuck-box"},
      {"/rules/tuck", 3, ProblemCode::FieldUnreadable, "rules/tuck"},
      {"/parameters/length", "1e9 mm", ProblemCode::FieldUnreadable, "parameters/length"},
      {"/parameters/brim", "1 mm", ProblemCode::UnknownParameter, "straight-tuck-box"},
      {"/edits/0/kind", "blob", ProblemCode::EditUnknown, "edits/1/kind"},
      {"/edits/1/panel", 3, ProblemCode::FieldUnreadable, "edits/2/panel"},
      {"/picture", 3, ProblemCode::FieldUnreadable, "picture"},
  };
  for (const Row& row : rows) {
    StyleJson json = heartJson();
    json[StyleJson::json_pointer(row.pointer)] = row.value;
    EXPECT_EQ(refusalOf(json).code, row.code) << row.pointer << row.value;
    EXPECT_EQ(refusalOf(json).where, row.where) << row.pointer << row.value;
  }
}

TEST(OwnStyleFile, ACarriedStyleOfAnotherBaseIsRefused) {
  StyleJson design = StyleJson::parse(
      writeDesign(*newDesign(heartStyle(), std::nullopt, cards().front(), Ease::Easy, {})));
  design["own_style"]["title"] = 7;
  EXPECT_EQ(readDesign(design.dump(), "a").problem().where, "own_style/title");
  const Design tray =
      *newDesign("framed-tray", std::nullopt, cards().front(), Ease::Easy, ToolGrid::none());
  StyleJson other = StyleJson::parse(writeDesign(tray));
  other["own_style"] = heartJson();
  EXPECT_EQ(readDesign(other.dump(), "a").problem().where, "own_style/base");
}

}  // namespace
}  // namespace creasewright
