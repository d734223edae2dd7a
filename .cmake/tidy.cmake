# cmake -S . -B build/tidy -G Ninja -C .cmake/tidy.cmake   (needs clang-tidy)
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_CXX_CLANG_TIDY clang-tidy CACHE STRING "")
