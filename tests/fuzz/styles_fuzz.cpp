#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <iostream>

#include "fuzz/readers.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string fault =
      creasewright::fuzz::styleFault({reinterpret_cast<const char*>(data), size});
  if (!fault.empty()) {
    std::cerr << fault << '\n';
    std::abort();
  }
  return 0;
}
