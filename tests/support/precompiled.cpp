// Carries the headers that the tests share precompiled; see tests/CMakeLists.txt.
