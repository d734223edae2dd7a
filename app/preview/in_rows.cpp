#include "preview/in_rows.h"

#include <QThreadPool>
#include <algorithm>
#include <atomic>
#include <memory>

namespace creasewright {

namespace {

constexpr int kBlock = 16;

/// Outlives the call, for a helper that comes when there is nothing left to do.
struct Rows {
  int count = 0;
  const std::function<void(int, int)>* work = nullptr;  // until all rows are done
  std::atomic<int> next = 0;
  std::atomic<int> left = 0;

  void doSome() {
    for (int from = next.fetch_add(kBlock); from < count; from = next.fetch_add(kBlock)) {
      const int to = std::min(from + kBlock, count);
      (*work)(from, to);
      if (left.fetch_sub(to - from) == to - from) left.notify_one();
    }
  }
};

}  // namespace

void inRows(int count, const std::function<void(int, int)>& work) {
  if (count <= 0) return;
  const auto rows = std::make_shared<Rows>();
  rows->count = count;
  rows->work = &work;
  rows->left = count;
  if (count > kBlock) QThreadPool::globalInstance()->tryStart([rows] { rows->doSome(); });
  rows->doSome();
  for (int left = rows->left; left > 0; left = rows->left) rows->left.wait(left);
}

}  // namespace creasewright
