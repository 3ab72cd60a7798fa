#pragma once
// Hides which Catch2 is installed: version 2 on Debian 12, version 3 on newer systems.
#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>
using Catch::Approx;
#else
#include <catch2/catch.hpp>
#endif
