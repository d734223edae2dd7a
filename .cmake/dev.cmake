# cmake -S . -B build/dev -G Ninja -C .cmake/dev.cmake
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(CREASEWRIGHT_TESTS ON CACHE BOOL "")
