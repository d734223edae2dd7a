#pragma once

#include <cstddef>
#include <cstdint>

namespace creasewright {

// The most that files of ours hold: one table for readers, which refuse more, and for writers,
// which refuse it before anything is written. So whatever was written can be read.

inline constexpr std::int64_t kLargestDesignFile = 12 << 20;  // bytes; without photos about 1000
inline constexpr std::int64_t kLargestStyleFile = 4 << 20;    // bytes
inline constexpr std::int64_t kLargestKitFile = 48 << 20;     // bytes
inline constexpr std::int64_t kLargestBundleFile = 128 << 20;
inline constexpr std::int64_t kLargestPhoto = 300'000;           // bytes of one, as it is kept
inline constexpr std::int64_t kLargestPaperPicture = 1'500'000;  // bytes of a paper's, kept
inline constexpr std::int64_t kLargestTable = 4 << 20;           // bytes of comma-separated values
inline constexpr std::int64_t kLargestNamesFile = 1 << 20;

inline constexpr std::size_t kMostExtras = 50;  // of a design
inline constexpr std::size_t kMostLayers = 12;  // of an extra
inline constexpr std::size_t kMostEdits = 100;  // of a design
inline constexpr std::size_t kMostPhotos = 24;  // of a design
inline constexpr std::size_t kMostTags = 1000;
inline constexpr std::size_t kMostLines = 50;       // of an extra's text
inline constexpr std::size_t kMostItems = 200;      // designs of a kit
inline constexpr std::size_t kMostBlanks = 200;     // of a kit
inline constexpr std::size_t kMostNames = 1000;     // of takers
inline constexpr std::size_t kMostSheets = 1000;    // kinds of sheets in a kit, bundle or table
inline constexpr std::size_t kMostSupplies = 1000;  // kinds of supplies there
inline constexpr std::size_t kMostStyles = 1000;    // own styles of a folder
inline constexpr std::size_t kMostDesigns = 5000;   // of a bundle
inline constexpr std::size_t kMostKeys = 1000;      // fields of one JSON object

// Characters, not bytes.
inline constexpr std::size_t kLongestTitle = 200;  // also every name and line
inline constexpr std::size_t kLongestNotes = 100'000;
inline constexpr std::size_t kLongestPicture = 500'000;  // of an own style

inline constexpr std::int64_t kMostCounted = 1'000'000;  // sheets or packs at hand, pieces in one
inline constexpr std::int64_t kDearest = 1'000'000'000;  // smallest coins

}  // namespace creasewright
