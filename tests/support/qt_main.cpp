// Runs the tests with an application object, which QtSql's drivers and timers need. No display, no event loop.
#if __has_include(<catch2/catch_session.hpp>)
#include <catch2/catch_session.hpp>
#else
#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>
#endif
#include <QCoreApplication>

int main(int argc, char* argv[]) {
  QCoreApplication application(argc, argv);
  return Catch::Session().run(argc, argv);
}
