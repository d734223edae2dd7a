#include "base/base64.h"

#include <gtest/gtest.h>

#include "base/picture_file.h"
#include "support/random.h"

namespace creasewright {
namespace {

/// The vectors of RFC 4648, section 10.
TEST(Base64, WritesAndReadsThePublishedVectors) {
  const std::pair<const char*, const char*> vectors[]{{"", ""},
                                                      {"f", "Zg=="},
                                                      {"fo", "Zm8="},
                                                      {"foo", "Zm9v"},
                                                      {"foob", "Zm9vYg=="},
                                                      {"fooba", "Zm9vYmE="},
                                                      {"foobar", "Zm9vYmFy"}};
  for (const auto& [bytes, text] : vectors) {
    EXPECT_EQ(toBase64(bytes), text);
    EXPECT_EQ(fromBase64(text), bytes);
  }
}

TEST(Base64, RandomBytesComeBack) {
  testing::Random random(4648);
  for (int round = 0; round < 300; ++round) {
    std::string bytes;
    for (int i = random.whole(0, 80); i > 0; --i) bytes += static_cast<char>(random.whole(0, 255));
    EXPECT_EQ(fromBase64(toBase64(bytes)), bytes);
  }
}

TEST(Base64, WhatIsNoneIsRefused) {
  for (const char* text : {"Zg", "Zg=", "Zg==Zg==", "=Zg=", "Z===", "Zm9*", "Zm 9", "Zh==", "Zm9="})
    EXPECT_EQ(fromBase64(text), std::nullopt) << text;
}

TEST(PictureFile, KindsAreToldByTheirFirstBytes) {
  using namespace std::string_view_literals;
  EXPECT_EQ(pictureKind("\x89PNG\r\n\x1A\n\0\0"sv), PictureKind::Png);
  EXPECT_EQ(pictureKind("\xFF\xD8\xFF\xE0"sv), PictureKind::Jpeg);
  for (const std::string_view other : {""sv, "\x89PNG"sv, "\xFF\xD8"sv, "GIF89a"sv, "<svg/>"sv})
    EXPECT_EQ(pictureKind(other), std::nullopt);
}

TEST(PictureFile, CopiesShareBytesAndEqualBytesAreEqual) {
  const PictureFile one(std::string("abc"));
  const PictureFile copy = one;
  EXPECT_EQ(copy.bytes().data(), one.bytes().data());
  EXPECT_EQ(PictureFile(std::string("abc")), one);
  EXPECT_NE(PictureFile(std::string("abd")), one);
  EXPECT_EQ(PictureFile(), PictureFile(std::string()));
}

}  // namespace
}  // namespace creasewright
