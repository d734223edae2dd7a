# cmake -S . -B build/asan -G Ninja -C .cmake/asan.cmake
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
# Optimized a little, or the whole suite takes hours.
set(CMAKE_CXX_FLAGS_DEBUG "-O1 -g1 -fno-omit-frame-pointer" CACHE STRING "")
set(CREASEWRIGHT_TESTS ON CACHE BOOL "")
set(CREASEWRIGHT_SANITIZE "address,undefined" CACHE STRING "")
