#include "preview/in_rows.h"

#include <QSemaphore>
#include <QThreadPool>
#include <atomic>
#include <vector>

#include <gtest/gtest.h>

namespace creasewright {
namespace {

void expectEachRowOnce(int count) {
  std::vector<std::atomic<int>> done(static_cast<std::size_t>(count));
  inRows(count, [&](int from, int to) {
    for (int row = from; row < to; ++row) ++done[static_cast<std::size_t>(row)];
  });
  for (int row = 0; row < count; ++row)
    ASSERT_EQ(done[static_cast<std::size_t>(row)], 1) << "row " << row << " of " << count;
}

TEST(InRows, EachRowIsDoneOnceBeforeItReturns) {
  for (const int count : {0, 1, 15, 16, 17, 33, 900}) expectEachRowOnce(count);
  for (int i = 0; i < 2000; ++i) expectEachRowOnce(200);
}

TEST(InRows, IsDoneAloneWhereNoOtherThreadIsFree) {
  QThreadPool& pool = *QThreadPool::globalInstance();
  QSemaphore begun;
  QSemaphore may;
  const int others = pool.maxThreadCount();
  for (int i = 0; i < others; ++i)
    pool.start([&] {
      begun.release();
      may.acquire();
    });
  begun.acquire(others);
  expectEachRowOnce(900);
  may.release(others);
  pool.waitForDone();
}

}  // namespace
}  // namespace creasewright
