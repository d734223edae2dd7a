# cmake -S . -B build/tidy -G Ninja -C .cmake/tidy.cmake   (needs clang-tidy; .clang-tidy says what it looks for)
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
# Clang can read no precompiled header of GCC's, and does not know all of its warnings.
set(CMAKE_DISABLE_PRECOMPILE_HEADERS ON CACHE BOOL "")
set(CMAKE_CXX_CLANG_TIDY clang-tidy --extra-arg=-Wno-unknown-warning-option CACHE STRING "")
