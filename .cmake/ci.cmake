# cmake -S . -B build/ci -G Ninja -C .cmake/ci.cmake
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
# A third quicker to compile than -O3, and quick enough for the laws. The standard library checks bounds:
# an index past the end stops the test that does it.
set(CMAKE_CXX_FLAGS_RELEASE "-O1 -DNDEBUG -D_GLIBCXX_ASSERTIONS" CACHE STRING "")
set(CREASEWRIGHT_TESTS ON CACHE BOOL "")
set(CREASEWRIGHT_WERROR ON CACHE BOOL "")
set(CREASEWRIGHT_TOGETHER ON CACHE BOOL "")
# It links in a third of the time, and every binutils has it.
find_program(CREASEWRIGHT_GOLD ld.gold)
if(CREASEWRIGHT_GOLD)
  set(CMAKE_EXE_LINKER_FLAGS "-fuse-ld=gold" CACHE STRING "")
endif()
