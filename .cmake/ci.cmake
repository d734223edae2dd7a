# cmake -S . -B build/ci -G Ninja -C .cmake/ci.cmake
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(CREASEWRIGHT_TESTS ON CACHE BOOL "")
set(CREASEWRIGHT_WERROR ON CACHE BOOL "")
