#include "document/folder_io.h"

#include <filesystem>
#include <fstream>
#include <set>
#include <thread>

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include "document/file_io.h"
#include "document/temporary.h"

namespace creasewright {
namespace {

namespace fs = std::filesystem;

class FolderIo : public ::testing::Test {
 protected:
  void SetUp() override {
    std::string name = (fs::temp_directory_path() / "creasewright-folder-XXXXXX").string();
    ASSERT_NE(::mkdtemp(name.data()), nullptr);
    root_ = name;
  }
  void TearDown() override { fs::remove_all(root_); }

  static std::set<std::string> namesIn(const fs::path& folder) {
    std::set<std::string> names;
    for (const auto& entry : fs::directory_iterator(folder))
      names.insert(entry.path().filename().string());
    return names;
  }
  static std::string contentOf(const fs::path& file) {
    return readFile(file.string(), 1 << 20).value();
  }

  fs::path root_;
};

TEST_F(FolderIo, MakesTheFolderAndItsParents) {
  const fs::path folder = root_ / "a" / "b";
  EXPECT_EQ(writeFolderAtomically(folder.string() + "/", {{"one", "1"}, {"two", "2"}}),
            std::nullopt);
  EXPECT_EQ(contentOf(folder / "one"), "1");
  EXPECT_EQ(namesIn(folder), (std::set<std::string>{".creasewright-files", "one", "two"}));
}

TEST_F(FolderIo, WhatItNoLongerHoldsGoesAndFilesOfOthersStay) {
  ASSERT_EQ(writeFolderAtomically(root_.string(), {{"one", "1"}, {"two", "2"}}), std::nullopt);
  std::ofstream(root_ / "mine") << "mine";
  ASSERT_EQ(writeFolderAtomically(root_.string(), {{"one", "new"}}), std::nullopt);
  EXPECT_EQ(namesIn(root_), (std::set<std::string>{".creasewright-files", "mine", "one"}));
  EXPECT_EQ(contentOf(root_ / "one"), "new");
}

/// A folder lies where the last file should go: those before it come back as they were.
TEST_F(FolderIo, StaysOldAsAWholeWhenOneFileCannotBePut) {
  ASSERT_EQ(writeFolderAtomically(root_.string(), {{"one", "1"}, {"two", "2"}}), std::nullopt);
  fs::create_directory(root_ / "three");
  const auto before = namesIn(root_);
  const auto problem =
      writeFolderAtomically(root_.string(), {{"new", "n"}, {"one", "changed"}, {"three", "3"}});
  ASSERT_TRUE(problem);
  EXPECT_EQ(problem->code, ProblemCode::FileNotWritten);
  EXPECT_EQ(problem->where, (root_ / "three").string());
  EXPECT_EQ(namesIn(root_), before);
  EXPECT_EQ(contentOf(root_ / "one"), "1");
  EXPECT_EQ(contentOf(root_ / "two"), "2");
}

TEST_F(FolderIo, NamesThatLeaveTheFolderAreRefused) {
  for (const char* name : {"../out", "a/b", "", ".."})
    EXPECT_TRUE(writeFolderAtomically((root_ / "f").string(), {{name, "x"}})) << name;
  EXPECT_TRUE(namesIn(root_).empty());
}

/// Twenty at once, each with names and contents of its own: one of them is there as a whole.
TEST_F(FolderIo, OfManyAtOnceOneIsThereWhole) {
  const fs::path folder = root_ / "class";
  std::vector<std::thread> threads;
  for (int t = 0; t < 20; ++t)
    threads.emplace_back([&, t] {
      const std::string mark = std::to_string(t);
      EXPECT_EQ(writeFolderAtomically(folder.string(), {{"shared", mark}, {"only-" + mark, mark}}),
                std::nullopt);
    });
  for (std::thread& thread : threads) thread.join();
  const std::string winner = contentOf(folder / "shared");
  EXPECT_EQ(namesIn(folder),
            (std::set<std::string>{".creasewright-files", "shared", "only-" + winner}));
  EXPECT_EQ(contentOf(folder / ("only-" + winner)), winner);
  EXPECT_EQ(namesIn(root_), std::set<std::string>{"class"});
}

/// What a killed process left is swept by the next write; what a living one holds is not.
TEST_F(FolderIo, TemporariesOfKilledRunsAreSwept) {
  const pid_t child = ::fork();
  if (child == 0) {
    const Temporary file = temporaryFile(root_.string());
    const Temporary folder = temporaryFolder(root_.string());
    std::ofstream(fs::path(folder.path) / "inside") << "x";
    ::_exit(file.held.isOpen() && folder.held.isOpen() ? 0
                                                       : 1);  // as killed: nothing is cleaned up
  }
  int status = 0;
  ASSERT_EQ(::waitpid(child, &status, 0), child);
  ASSERT_EQ(WEXITSTATUS(status), 0);
  ASSERT_EQ(namesIn(root_).size(), 2U);
  const Temporary living = temporaryFile(root_.string());
  EXPECT_EQ(namesIn(root_), std::set<std::string>{fs::path(living.path).filename().string()});
  EXPECT_EQ(writeFileAtomically((root_ / "a").string(), "a"), std::nullopt);
  EXPECT_TRUE(fs::exists(living.path));
}

}  // namespace
}  // namespace creasewright
