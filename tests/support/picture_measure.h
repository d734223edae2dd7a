#pragma once

#include <QImage>
#include <QProcess>
#include <QStringList>
#include <vector>

#include <gtest/gtest.h>

namespace creasewright::testing {

constexpr double kPixel = 0.1;  ///< mm for each pixel at 254 dpi

/// Standard output of another program, which must end well.
inline QByteArray run(const QString& program, const QStringList& arguments) {
  QProcess process;
  process.start(program, arguments);
  process.waitForFinished(60000);
  EXPECT_EQ(process.exitCode(), 0) << program.toStdString();
  return process.readAllStandardOutput();
}

/// Darkness of one row or column, as if all its pixels stood in one.
inline std::vector<double> darkness(const QImage& image, bool columns) {
  const int count = columns ? image.width() : image.height();
  const int across = columns ? image.height() : image.width();
  std::vector<double> sums(static_cast<std::size_t>(count), 0);
  for (int i = 0; i < count; ++i) {
    for (int k = 0; k < across; ++k) {
      sums[static_cast<std::size_t>(i)] +=
          1 - qGray(columns ? image.pixel(i, k) : image.pixel(k, i)) / 255.0;
    }
  }
  return sums;
}

/// Middles in mm of all lines that are about `longest` mm long (check bars are shorter), from the
/// darkness weighted mean.
inline std::vector<double> linesAt(const std::vector<double>& sums, double longest) {
  std::vector<double> found;
  for (std::size_t i = 0; i < sums.size(); ++i) {
    if (sums[i] * kPixel < longest * 0.8) {
      continue;
    }
    double weight = 0;
    double moment = 0;
    for (; i < sums.size() && sums[i] * kPixel > longest / 8; ++i) {
      weight += sums[i];
      moment += sums[i] * (static_cast<double>(i) + 0.5);
    }
    found.push_back(moment / weight * kPixel);
  }
  return found;
}

}  // namespace creasewright::testing
