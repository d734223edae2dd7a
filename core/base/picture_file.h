#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace creasewright {

enum class PictureKind { Png, Jpeg };

/// What a picture's first bytes say it is (PNG: ISO/IEC 15948, 5.2; JPEG: ISO/IEC 10918-1,
/// B.1.1.3); nothing for all else. Whether the rest can be decoded is not looked at.
std::optional<PictureKind> pictureKind(std::string_view bytes);

struct PixelSize {
  int width = 0;
  int height = 0;
  bool operator==(const PixelSize&) const = default;
};

/// How many pixels a PNG or JPEG says it has (PNG: 11.2.2; JPEG: B.2.2), as they are stored: not
/// turned as its camera says. Nothing where it does not say, or says none.
std::optional<PixelSize> pixelsOf(std::string_view bytes);

/// Whether a PNG goes on to its last chunk (ISO/IEC 15948, 5.3), a JPEG to its end mark by the
/// marks that part it (ISO/IEC 10918-1, B.1.1): what a broken copy or half a download does not.
/// Decoders take half a picture for a whole one. What is coded between is not looked at.
bool isWholePicture(std::string_view bytes);

/// Larger ones are not decoded: so many pixels on a side, and as many in all as take these bytes.
inline constexpr int kWidestPicture = 16'000;
inline constexpr std::int64_t kMostDecodedBytes = 200'000'000;
bool isTooWide(PixelSize size, std::int64_t bytesPerPixel);

/// `image/png` or `image/jpeg` (RFC 2046, the IANA register of media types).
std::string_view mediaType(PictureKind kind);

/// The bytes of a picture as a PNG or JPEG file has them. Copies share them; they never change.
class PictureFile {
 public:
  PictureFile() = default;
  explicit PictureFile(std::string bytes)
      : bytes_(std::make_shared<const std::string>(std::move(bytes))) {}

  [[nodiscard]] std::string_view bytes() const {
    return bytes_ ? std::string_view(*bytes_) : std::string_view();
  }
  [[nodiscard]] std::optional<PictureKind> kind() const { return pictureKind(bytes()); }
  bool operator==(const PictureFile& other) const {
    return bytes_ == other.bytes_ || bytes() == other.bytes();
  }

 private:
  std::shared_ptr<const std::string> bytes_;
};

}  // namespace creasewright
