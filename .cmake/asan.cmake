# cmake -S . -B build/asan -G Ninja -C .cmake/asan.cmake
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CREASEWRIGHT_TESTS ON CACHE BOOL "")
set(CREASEWRIGHT_SANITIZE "address,undefined" CACHE STRING "")
