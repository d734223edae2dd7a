#include "base/file_limits.h"

#include <algorithm>
#include <filesystem>

#include <gtest/gtest.h>
#include <unistd.h>

#include "document/design_file.h"
#include "document/file_io.h"
#include "document/limit_problems.h"
#include "extras/extra_kind.h"
#include "kits/bundle.h"
#include "kits/class_kit.h"
#include "support/random.h"
#include "units/length_text.h"

// The law of base/file_limits.h: what is written reads back equal, at each limit; over it, a
// problem that names the limit, before anything is written.

namespace creasewright {
namespace {

Design plainDesign() {
  return *newDesign("framed-tray", {}, cards().front(), Ease::Easy, ToolGrid::sixteenthInch());
}

OwnStyle plainStyle() {
  OwnStyle style;
  style.id = "plain-style-1";
  style.base = "framed-tray";
  style.parameters = plainDesign().parameters;
  return style;
}

Extra plainExtra() {
  Extra extra;
  extra.kind = "label";
  for (const auto& spec : (*findExtraKind("label"))->parameters)
    extra.parameters.setCount(spec.key, spec.standard);
  extra.card = cards().front();
  return extra;
}

SupplyItem roll(Length length) {
  return {"", "Tape", SupplyItemKind::Tape, Length::mm(6), length, 0, 0, 0};
}

StockSheet sheet(int number) {
  return {"Sheet " + std::to_string(number), Length::inches(12), Length::inches(12)};
}

/// A limit: something that holds so many of it, or so much.
template <class Whole>
struct Limit {
  std::string name;
  std::int64_t most;
  void (*fill)(Whole&, std::int64_t);
};

Photo photo(std::int64_t number, std::size_t bytes) {
  std::string jpeg("\xFF\xD8\xFF\xE0");
  jpeg.resize(bytes, '\x07');
  return {"step/" + std::to_string(number), "", PictureFile(std::move(jpeg))};
}

std::string text(std::int64_t characters) {
  std::string out;
  for (std::int64_t i = 0; i < characters; ++i) out += i % 3 == 0 ? "\u00FC" : "a";
  return out;
}

const std::vector<Limit<Design>>& designLimits() {
  static const std::vector<Limit<Design>> limits{
      {"title", kLongestTitle, [](Design& d, std::int64_t n) { d.title = text(n); }},
      {"notes", kLongestNotes, [](Design& d, std::int64_t n) { d.notes = text(n); }},
      {"card", kLongestTitle, [](Design& d, std::int64_t n) { d.card.name = text(n); }},
      {"tags", kMostTags, [](Design& d, std::int64_t n) { d.tags.assign(n, "tag"); }},
      {"tag", kLongestTitle, [](Design& d, std::int64_t n) { d.tags = {text(n)}; }},
      {"extras", kMostExtras, [](Design& d, std::int64_t n) { d.extras.assign(n, plainExtra()); }},
      {"edits", kMostEdits,
       [](Design& d, std::int64_t n) {
         d.edits.assign(n, {"opening", {}, "base", {}, {}, true});
       }},
      {"formula", kLongestTitle,
       [](Design& d, std::int64_t n) {
         d.edits = {{"opening", {}, "base", {}, {{"width", text(n)}}, true}};
       }},
      {"style's title", kLongestTitle,
       [](Design& d, std::int64_t n) {
         d.ownStyle = plainStyle();
         d.ownStyle->title = text(n);
       }},
      {"style's summary", kLongestNotes,
       [](Design& d, std::int64_t n) {
         d.ownStyle = plainStyle();
         d.ownStyle->summary = text(n);
       }},
      {"style's picture", kLongestPicture,
       [](Design& d, std::int64_t n) {
         d.ownStyle = plainStyle();
         d.ownStyle->picture = text(n);
       }},
      {"style's rule", kLongestTitle,
       [](Design& d, std::int64_t n) {
         d.ownStyle = plainStyle();
         d.ownStyle->rules["depth"] = text(n);
       }},
      {"style's edits", kMostEdits,
       [](Design& d, std::int64_t n) {
         d.ownStyle = plainStyle();
         d.ownStyle->edits.assign(n, {"opening", {}, "base", {}, {}, true});
       }},
      {"photos", kMostPhotos,
       [](Design& d, std::int64_t n) {
         for (std::int64_t i = 0; i < n; ++i)
           d.photos.push_back(photo(i, static_cast<std::size_t>(kLargestPhoto)));
       }},
      {"caption", kLongestTitle,
       [](Design& d, std::int64_t n) {
         d.photos = {photo(1, 10)};
         d.photos[0].caption = text(n);
       }},
      {"lines", kMostLines,
       [](Design& d, std::int64_t n) {
         d.extras = {plainExtra()};
         d.extras[0].lines.assign(n, "");
       }},
      {"line", kLongestTitle,
       [](Design& d, std::int64_t n) {
         d.extras = {plainExtra()};
         d.extras[0].lines = {text(n)};
       }},
  };
  return limits;
}

const std::vector<Limit<ClassKit>>& kitLimits() {
  static const std::vector<Limit<ClassKit>> limits{
      {"title", kLongestTitle, [](ClassKit& k, std::int64_t n) { k.title = text(n); }},
      {"takers", kMostTakers, [](ClassKit& k, std::int64_t n) { k.takers = static_cast<int>(n); }},
      {"names", kMostNames, [](ClassKit& k, std::int64_t n) { k.names.assign(n, "Ann"); }},
      {"name", kLongestTitle, [](ClassKit& k, std::int64_t n) { k.names = {text(n)}; }},
      {"stock", kMostSheets, [](ClassKit& k, std::int64_t n) { k.stock.assign(n, sheet(1)); }},
      {"supplies", kMostSupplies,
       [](ClassKit& k, std::int64_t n) { k.supplies.assign(n, roll(Length::mm(25'000))); }},
      {"roll", kLongestRoll.nm(),
       [](ClassKit& k, std::int64_t n) { k.supplies = {roll(Length::nanometres(n))}; }},
      {"items", kMostItems,
       [](ClassKit& k, std::int64_t n) {
         k.items.assign(n, {plainDesign(), 1});
       }},
      {"blanks", kMostBlanks,
       [](ClassKit& k, std::int64_t n) {
         k.blanks.assign(n, {"Panel", Length::mm(50), Length::mm(40), cards().front(), 1});
       }},
      {"price", kDearest,
       [](ClassKit& k, std::int64_t n) {
         k.stock = {sheet(1)};
         k.stock[0].price = n;
       }},
      {"at hand", kMostCounted,
       [](ClassKit& k, std::int64_t n) {
         k.stock = {sheet(1)};
         k.stock[0].atHand = static_cast<int>(n);
       }},
  };
  return limits;
}

/// Whether a problem tells the limit among its values.
bool tells(const Problem& problem, std::int64_t most) {
  return std::ranges::count(problem.values, ProblemValue(most)) > 0 ||
         (problem.code == ProblemCode::RollTooLong &&
          std::ranges::count(problem.values, ProblemValue(most / 1'000'000'000)) > 0);
}

TEST(FileLimits, DesignsReadBackEqualAtTheirLimitsAndAreRefusedOverThem) {
  const std::string path = (std::filesystem::temp_directory_path() /
                            ("creasewright-limits-" + std::to_string(::getpid()) + ".cwdesign"))
                               .string();
  for (const auto& limit : designLimits()) {
    SCOPED_TRACE(limit.name);
    for (const std::int64_t number : {std::int64_t{2}, limit.most}) {
      Design design = plainDesign();
      limit.fill(design, number);
      ASSERT_EQ(writeDesignFile(design, path), std::nullopt);
      const Result<Design> read = readDesignFile(path);
      ASSERT_TRUE(read.ok()) << codeName(read.problem().code) << read.problem().where;
      EXPECT_EQ(*read, design);
    }
    std::filesystem::remove(path);
    Design over = plainDesign();
    limit.fill(over, limit.most + 1);
    const auto problem = writeDesignFile(over, path);
    ASSERT_TRUE(problem);
    EXPECT_TRUE(tells(*problem, limit.most)) << codeName(problem->code);
    EXPECT_FALSE(std::filesystem::exists(path));
    const Result<Design> forced = readDesign(writeDesign(over), "a");
    EXPECT_FALSE(forced.ok());
  }
}

TEST(FileLimits, APhotoIsAtMostAsLargeAsIsTold) {
  Design design = plainDesign();
  design.photos = {photo(1, static_cast<std::size_t>(kLargestPhoto) + 1)};
  const auto problem = fileLimitProblem(design);
  ASSERT_TRUE(problem);
  EXPECT_EQ(problem->code, ProblemCode::PictureTooHeavy);
  EXPECT_EQ(problem->where, "photos/1");
  EXPECT_TRUE(tells(*problem, kLargestPhoto));
  EXPECT_FALSE(readDesign(writeDesign(design), "a").ok());
}

TEST(FileLimits, KitsReadBackEqualAtTheirLimitsAndAreRefusedOverThem) {
  for (const auto& limit : kitLimits()) {
    SCOPED_TRACE(limit.name);
    ClassKit kit;
    limit.fill(kit, limit.most);
    const Result<std::string> written = kitFileText(kit, "a");
    ASSERT_TRUE(written.ok()) << codeName(written.problem().code) << written.problem().where;
    const Result<ClassKit> read = readKit(*written, "a");
    ASSERT_TRUE(read.ok()) << codeName(read.problem().code) << read.problem().where;
    EXPECT_EQ(writeKit(*read), *written);
    EXPECT_EQ(read->supplies, kit.supplies);
    limit.fill(kit, limit.most + 1);
    const Result<std::string> over = kitFileText(kit, "a");
    ASSERT_FALSE(over.ok());
    EXPECT_TRUE(tells(over.problem(), limit.most)) << codeName(over.problem().code);
    EXPECT_FALSE(readKit(writeKit(kit), "a").ok());
  }
}

TEST(FileLimits, BundlesReadBackEqualAtTheirLimitsAndAreRefusedOverThem) {
  Bundle bundle;
  bundle.designs.assign(kMostDesigns, plainDesign());
  bundle.stock.assign(kMostSheets, sheet(1));
  bundle.supplies.assign(kMostSupplies, roll(kLongestRoll));
  const Result<std::string> written = bundleFileText(bundle, "a");
  ASSERT_TRUE(written.ok()) << codeName(written.problem().code);
  const Result<Bundle> read = readBundle(*written, "a");
  ASSERT_TRUE(read.ok()) << codeName(read.problem().code) << read.problem().where;
  EXPECT_EQ(read->designs, bundle.designs);
  EXPECT_EQ(read->supplies, bundle.supplies);
  const auto refuses = [](Bundle over, std::size_t most) {
    const Result<std::string> text = bundleFileText(over, "a");
    return !text.ok() && tells(text.problem(), static_cast<std::int64_t>(most));
  };
  EXPECT_TRUE(
      refuses({std::vector<Design>(kMostDesigns + 1, plainDesign()), {}, {}}, kMostDesigns));
  EXPECT_TRUE(refuses({{}, std::vector<StockSheet>(kMostSheets + 1, sheet(1)), {}}, kMostSheets));
}

/// Every text at its limit and of characters that take six bytes each in a file.
TEST(FileLimits, AFileThatWouldBeTooLargeIsNotMade) {
  const std::string line(kLongestTitle, '\x01');
  Design large = plainDesign();
  large.notes = std::string(kLongestNotes, '\x01');
  large.tags.assign(kMostTags, line);
  large.extras.assign(kMostExtras, plainExtra());
  for (Extra& extra : large.extras) extra.lines.assign(kMostLines, line);
  for (std::size_t i = 0; i < kMostPhotos; ++i)
    large.photos.push_back(
        photo(static_cast<std::int64_t>(i), static_cast<std::size_t>(kLargestPhoto)));
  EXPECT_EQ(fileLimitProblem(large), std::nullopt);
  const Result<std::string> text = designFileText(large, "a.cwdesign");
  ASSERT_FALSE(text.ok());
  EXPECT_EQ(text.problem().code, ProblemCode::DesignTooHeavy);
  EXPECT_EQ(text.problem().where, "a.cwdesign");
}

/// Rolls as shops sell them, and random ones to the nanometre, in tables and in kits.
TEST(FileLimits, RollsReadBackEqual) {
  testing::Random random(2407);
  std::vector<SupplyItem> rolls{roll(Length::mm(250'000)), roll(Length::inches(110 * 36)),
                                roll(kLongestRoll), roll(Length::nanometres(1))};
  for (int i = 0; i < 500; ++i)
    rolls.push_back(roll(Length::nanometres(
        1 + static_cast<std::int64_t>(random.between(0, 1) *
                                      static_cast<double>(kLongestRoll.nm() - 1)))));
  const auto table = readSupplyTable(writeSupplyTable(rolls), "t");
  ASSERT_TRUE(table.ok()) << table.problem().where;
  EXPECT_EQ(*table, rolls);
  ClassKit kit;
  kit.supplies = rolls;
  const auto read = readKit(writeKit(kit), "k");
  ASSERT_TRUE(read.ok()) << read.problem().where;
  EXPECT_EQ(read->supplies, rolls);
  EXPECT_FALSE(readSupplyTable("name,kind,width,length\nTape,tape,6 mm,1001 m\n", "t").ok());
}

/// A table of a person's own reads back equal whatever stands in its texts, formulas included.
TEST(FileLimits, TablesReadBackEqual) {
  const char* const texts[] = {"=SUM(A1)",   "'=x",        "''+1",     "-5",
                               "@x",         "\ttab",      "\rreturn", "a,b;c\td",
                               "say \"so\"", "two\nlines", "'plain",   "\u00FCber"};
  std::vector<SupplyItem> supplies;
  std::vector<StockSheet> stock;
  for (const char* each : texts) {
    supplies.push_back(roll(Length::mm(1000)));
    supplies.back().name = each;
    supplies.back().code = each;
    stock.push_back(sheet(1));
    stock.back().name = each;
    stock.back().code = each;
  }
  const std::string csv = writeSupplyTable(supplies);
  for (const char* start : {",=", ",+", ",-", ",@", ",\"\t", ",\"\r"})
    EXPECT_EQ(csv.find(start), std::string::npos) << start;
  EXPECT_EQ(readSupplyTable(csv, "t").value(), supplies);
  const auto read = readStockTable(writeStockTable(stock), "t");
  ASSERT_TRUE(read.ok());
  for (std::size_t i = 0; i < stock.size(); ++i) {
    EXPECT_EQ((*read)[i].name, stock[i].name);
    EXPECT_EQ((*read)[i].code, stock[i].code);
  }
}

/// What a bundle brings can stand in a person's own table.
TEST(FileLimits, WhatATableCannotHoldNoBundleBrings) {
  const auto refused = [](const char* stock, const char* supplies) {
    const std::string text =
        std::string(R"({"format":"creasewright-bundle","version":2,"designs":[],"stock":[)") +
        stock + R"(],"supplies":[)" + supplies + "]}";
    return !readBundle(text, "b").ok();
  };
  EXPECT_FALSE(refused("", ""));
  EXPECT_TRUE(refused(R"({"name":"","width":"1 in","height":"1 in"})", ""));
  EXPECT_TRUE(refused("", R"({"code":"","name":"","kind":"glue","width":"0 mm","length":"0 mm",
                              "pieces":0,"price":0,"at_hand":0})"));
  EXPECT_TRUE(refused("", R"({"code":"","name":"T","kind":"tape","width":"6 mm","length":"0 mm",
                              "pieces":0,"price":0,"at_hand":0})"));
}

/// A blank or a roll without a size is refused where it is read, the smallest one is not.
TEST(FileLimits, WhatHasNoSizeIsRefused) {
  ClassKit kit;
  kit.blanks = {{"Panel", Length::mm(50), Length::mm(40), cards().front(), 1}};
  const std::string written = kitFileText(kit, "a").value();
  const auto with = [&](const std::string& length) {
    std::string text = written;
    const std::string before = "\"width\": \"50 mm\"";
    const std::size_t at = text.find(before);
    EXPECT_NE(at, std::string::npos) << text;
    return readKit(text.replace(at, before.size(), "\"width\": \"" + length + '"'), "a").ok();
  };
  EXPECT_TRUE(with("50 mm"));
  EXPECT_TRUE(with("1 mm"));
  EXPECT_FALSE(with("0 mm"));
  EXPECT_FALSE(with("-5 mm"));
  Bundle bundle;
  bundle.supplies = {roll(Length::mm(1000))};
  const std::string rolls = bundleFileText(bundle, "a").value();
  const auto rolled = [&](const std::string& length) {
    std::string text = rolls;
    const std::size_t at = text.find("\"length\": \"1 m\"");
    EXPECT_NE(at, std::string::npos) << text;
    return readBundle(text.replace(at, 15, "\"length\": \"" + length + "\""), "a").ok();
  };
  EXPECT_TRUE(rolled("1000 mm"));
  EXPECT_FALSE(rolled("0 mm"));
}

}  // namespace
}  // namespace creasewright
