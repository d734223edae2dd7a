#include "base/shade_png.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <string_view>

namespace creasewright {
namespace {

void addWhole(std::string& out, std::uint32_t value) {
  for (const int shift : {24, 16, 8, 0}) out += static_cast<char>((value >> shift) & 0xFFU);
}

/// Cyclic redundancy code of a chunk (ISO/IEC 15948, annex D).
std::uint32_t crcOf(std::string_view bytes) {
  std::uint32_t crc = 0xFFFFFFFFU;
  for (const char byte : bytes) {
    crc ^= static_cast<unsigned char>(byte);
    for (int bit = 0; bit < 8; ++bit) crc = (crc >> 1) ^ ((crc & 1U) != 0 ? 0xEDB88320U : 0);
  }
  return ~crc;
}

void addChunk(std::string& out, std::string_view type, std::string_view body) {
  addWhole(out, static_cast<std::uint32_t>(body.size()));
  std::string bytes(type);
  bytes += body;
  out += bytes;
  addWhole(out, crcOf(bytes));
}

/// A zlib stream (RFC 1950) of stored blocks (RFC 1951, 3.2.4).
std::string stored(std::string_view bytes) {
  constexpr std::size_t kMostInBlock = 65535;
  std::string out{'\x78', '\x01'};
  for (std::size_t at = 0; at < bytes.size(); at += kMostInBlock) {
    const std::string_view block = bytes.substr(at, kMostInBlock);
    const auto size = static_cast<unsigned>(block.size());
    out += at + block.size() == bytes.size() ? '\x01' : '\x00';
    for (const unsigned two : {size, ~size}) {
      out += static_cast<char>(two & 0xFFU);
      out += static_cast<char>((two >> 8) & 0xFFU);
    }
    out += block;
  }
  std::uint32_t a = 1;
  std::uint32_t b = 0;
  for (const char byte : bytes) {
    a = (a + static_cast<unsigned char>(byte)) % 65521U;
    b = (b + a) % 65521U;
  }
  addWhole(out, (b << 16) | a);
  return out;
}

constexpr std::size_t kHead = 33;  // bytes before the palette

/// Black in all values, each as clear as it says.
std::string paletteChunks() {
  std::string clearness;
  for (int i = 0; i < 256; ++i) clearness += static_cast<char>(i);
  std::string out;
  addChunk(out, "PLTE", std::string(std::size_t{3} * 256, '\0'));
  addChunk(out, "tRNS", clearness);
  return out;
}

}  // namespace

bool isShadePng(std::string_view bytes) {
  return bytes.starts_with("\x89PNG") && bytes.size() > kHead &&
         bytes.substr(kHead).starts_with(paletteChunks());
}

std::string shadePng(int width, int height, std::span<const std::uint8_t> dark) {
  std::string out = "\x89PNG\r\n\x1a\n";
  std::string head;
  addWhole(head, static_cast<std::uint32_t>(width));
  addWhole(head, static_cast<std::uint32_t>(height));
  head += std::string{'\x08', '\x03', '\x00', '\x00', '\x00'};  // 8 bits, a palette
  addChunk(out, "IHDR", head);
  out += paletteChunks();
  std::string rows;
  for (int y = 0; y < height; ++y) {
    rows += '\0';  // no filter
    for (int x = 0; x < width; ++x)
      rows += static_cast<char>(dark[static_cast<std::size_t>(y) * width + x]);
  }
  addChunk(out, "IDAT", stored(rows));
  addChunk(out, "IEND", {});
  return out;
}

}  // namespace creasewright
