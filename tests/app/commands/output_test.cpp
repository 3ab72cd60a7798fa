// Where what was asked for goes may be full, closed or gone: then nothing is said to be done.
#include <streambuf>

#include "tests/app/commands/ran.h"
#include "tests/support/catch.h"

using namespace tests;

namespace {

// Takes so many bytes and then no more, as a disk that fills up.
class Full : public std::streambuf {
 public:
  explicit Full(std::size_t room) : m_room(room) {}

 protected:
  int_type overflow(int_type c) override { return m_room == 0 ? traits_type::eof() : (--m_room, c); }

 private:
  std::size_t m_room;
};

// Takes everything and loses it when it is sent on.
class Closed : public std::streambuf {
 protected:
  int_type overflow(int_type c) override { return c; }
  int sync() override { return -1; }
};

Ran into(std::streambuf& buffer, const QStringList& arguments) {
  std::ostream out(&buffer);
  std::ostringstream err;
  Ran ran;
  ran.exit = app::commands::run(arguments, out, err);
  ran.err = err.str();
  return ran;
}

constexpr char kNotWritten[] =
    "not all of it could be written: there is no room left where it goes, or nobody takes it\n";

}  // namespace

TEST_CASE("every command that writes says so where not all of it was taken, and leaves with 3") {
  const Commands commands;
  const QString job = commands.file("c.job.json", workedExample());
  const QString bad = commands.file("b.job.json", "{}");
  const QString data = commands.path("data");
  REQUIRE(QDir().mkpath(data));
  for (QStringList arguments :
       {QStringList{"figures", job}, QStringList{"figures", job, "--json"}, QStringList{"materials", job},
        QStringList{"materials", job, "--json"}, QStringList{"steps", job}, QStringList{"steps", job, "--json"},
        QStringList{"rehearse", job}, QStringList{"rehearse", job, "--json"}, QStringList{"care", job},
        QStringList{"care", job, "--json"}, QStringList{"check", bad}, QStringList{"--help"},
        QStringList{"--version"}}) {
    INFO(arguments.join(' ').toStdString());
    if (!arguments.first().startsWith('-')) arguments << "--data" << data;
    Full none(0);
    Full some(7);
    Closed closed;
    for (std::streambuf* buffer : std::initializer_list<std::streambuf*>{&none, &some, &closed}) {
      const Ran ran = into(*buffer, arguments);
      CHECK(ran.exit == 3);
      CHECK(core::base::endsWith(ran.err, kNotWritten));
    }
    Full enough(10'000'000);
    const Ran ran = into(enough, arguments);
    CHECK(ran.exit < 2);
    CHECK_FALSE(core::base::endsWith(ran.err, kNotWritten));
  }
}

TEST_CASE("a command that has nothing to write does not mind where it would go") {
  const Commands commands;
  Full none(0);
  const QString job = commands.file("c.job.json", workedExample());
  REQUIRE(QDir().mkpath(commands.path("data")));
  CHECK(into(none, {"check", job, "--data", commands.path("data")}).exit == 0);
}
