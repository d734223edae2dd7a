#include "document/file_io.h"

#include <filesystem>
#include <fstream>

#include <gtest/gtest.h>
#include <sys/stat.h>
#include <unistd.h>

namespace creasewright {
namespace {

namespace fs = std::filesystem;

class FileIo : public ::testing::Test {
 protected:
  void SetUp() override {
    const auto* info = ::testing::UnitTest::GetInstance()->current_test_info();
    directory_ = fs::temp_directory_path() /
                 ("creasewright-" + std::string(info->name()) + "-" + std::to_string(::getpid()));
    fs::create_directories(directory_);
  }
  void TearDown() override { fs::remove_all(directory_); }

  [[nodiscard]] std::string path(const char* name) const { return (directory_ / name).string(); }
  [[nodiscard]] std::string bytes(const char* name) const {
    return readFile(path(name), 1 << 30).value();
  }
  [[nodiscard]] std::ptrdiff_t entries() const {
    return std::distance(fs::directory_iterator(directory_), fs::directory_iterator());
  }

  fs::path directory_;
};

TEST_F(FileIo, WritesAndReadsAnyBytes) {
  std::string all;
  for (int i = 0; i < 300'000; ++i) all += static_cast<char>(i * 7 + i / 256);
  EXPECT_EQ(writeFileAtomically(path("a"), all), std::nullopt);
  EXPECT_EQ(bytes("a"), all);
  EXPECT_EQ(writeFileAtomically(path("a"), ""), std::nullopt);
  EXPECT_EQ(bytes("a"), "");
  EXPECT_EQ(entries(), 1);
}

TEST_F(FileIo, NewFileGetsTheUsualPermissions) {
  const mode_t mask = ::umask(027);
  EXPECT_EQ(writeFileAtomically(path("a"), "x"), std::nullopt);
  ::umask(mask);
  EXPECT_EQ(fs::status(path("a")).permissions(), fs::perms(0640));
}

TEST_F(FileIo, OldFileKeepsItsPermissions) {
  EXPECT_EQ(writeFileAtomically(path("a"), "old"), std::nullopt);
  fs::permissions(path("a"), fs::perms(0604));
  EXPECT_EQ(writeFileAtomically(path("a"), "new"), std::nullopt);
  EXPECT_EQ(fs::status(path("a")).permissions(), fs::perms(0604));
  EXPECT_EQ(bytes("a"), "new");
}

TEST_F(FileIo, ALinkStaysALinkAndItsTargetIsWritten) {
  fs::create_directory(directory_ / "far");
  fs::create_symlink("far/target", path("second"));
  fs::create_symlink("second", path("first"));
  EXPECT_EQ(writeFileAtomically(path("first"), "one"), std::nullopt);  // target not there yet
  EXPECT_EQ(writeFileAtomically(path("first"), "two"), std::nullopt);
  EXPECT_TRUE(fs::is_symlink(path("first")));
  EXPECT_TRUE(fs::is_symlink(path("second")));
  EXPECT_EQ(bytes("far/target"), "two");
}

TEST_F(FileIo, EndlessLinksAreRefused) {
  fs::create_symlink("b", path("a"));
  fs::create_symlink("a", path("b"));
  const auto problem = writeFileAtomically(path("a"), "x");
  ASSERT_TRUE(problem.has_value());
  EXPECT_EQ(problem->code, ProblemCode::FileNotWritten);
  EXPECT_EQ(readFile(path("a"), 10).problem().code, ProblemCode::FileUnreadable);
  EXPECT_EQ(entries(), 2);
}

TEST_F(FileIo, WhatCannotBeWrittenLeavesNothingBehind) {
  fs::create_directory(directory_ / "directory");
  EXPECT_EQ(::mkfifo(path("pipe").c_str(), 0600), 0);
  for (const std::string& bad :
       {path("directory"), path("pipe"), path("missing/a"), path("pipe/a"), std::string(),
        path(std::string(300, 'n').c_str()), std::string("/dev/null"), std::string("/dev/full")}) {
    const auto problem = writeFileAtomically(bad, "x");
    ASSERT_TRUE(problem.has_value()) << bad;
    EXPECT_EQ(problem->code, ProblemCode::FileNotWritten);
    EXPECT_EQ(problem->where, bad);
    EXPECT_FALSE(std::get<std::string>(problem->values.at(0)).empty());
  }
  EXPECT_EQ(entries(), 2);
}

TEST_F(FileIo, AWriteProtectedFileIsNotReplaced) {
  if (::geteuid() == 0) GTEST_SKIP() << "root may write everywhere";
  EXPECT_EQ(writeFileAtomically(path("a"), "old"), std::nullopt);
  fs::permissions(path("a"), fs::perms(0444));
  EXPECT_TRUE(writeFileAtomically(path("a"), "new").has_value());
  EXPECT_EQ(bytes("a"), "old");
}

TEST_F(FileIo, ReadsNoMoreThanTheLimit) {
  EXPECT_EQ(writeFileAtomically(path("a"), std::string(1001, 'x')), std::nullopt);
  EXPECT_TRUE(readFile(path("a"), 1001).ok());
  const auto large = readFile(path("a"), 1000);
  ASSERT_FALSE(large.ok());
  EXPECT_EQ(
      large.problem(),
      (Problem{ProblemCode::FileTooLarge, path("a"), {std::int64_t{1001}, std::int64_t{1000}}}));
}

TEST_F(FileIo, WhatIsNoFileIsRefusedAtOnce) {
  EXPECT_EQ(::mkfifo(path("pipe").c_str(), 0600), 0);
  for (const std::string& bad : {path("missing"), path("pipe"), directory_.string(), std::string(),
                                 std::string("/dev/zero")}) {
    const auto read = readFile(bad, 1 << 20);
    ASSERT_FALSE(read.ok()) << bad;
    EXPECT_EQ(read.problem().code, ProblemCode::FileUnreadable);
    EXPECT_EQ(read.problem().where, bad);
  }
}

}  // namespace
}  // namespace creasewright
