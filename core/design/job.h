#pragma once
// A job as read from its file: what the maker entered, exactly. Nothing here is computed.
//
// No text of a job is longer than 200 characters (base::kLongestName) and none holds a control character: no escapes,
// line ends or marks of direction. Its lists hold no more than the counts below. Nothing that is computed from the
// entered lengths and has to be cut is longer than 10 m (units::kLongestLength) either: the mount, a strip with its
// trim and one repeat, the paper of a spandrel with its trim. Anything beyond a limit is reported at its place with the
// limit.
#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/geometry/shape.h"
#include "core/units/angle.h"
#include "core/units/climate.h"
#include "core/units/deliver.h"
#include "core/units/length.h"
#include "core/units/length_display.h"
#include "core/units/money.h"

namespace core::design {

using units::Length;

// Far beyond what a maker means, and few enough for every command to stay quick.
inline constexpr std::size_t kMostBoards = 3;
inline constexpr std::size_t kMostBands = 20;
inline constexpr std::size_t kMostLines = 60;
inline constexpr std::size_t kMostSpandrels = 20;
inline constexpr std::size_t kMostWashes = 60;
inline constexpr std::size_t kMostLeafFields = 40;
inline constexpr std::size_t kMostStock = 200;
inline constexpr std::size_t kMostRoles = 100;  // techniques chosen

// The place of an element in the file, for messages.
struct Place {
  std::string pointer;
  std::size_t order = 0;
};

struct Sheet {
  Length width, height;
  Length left, top;  // where the shown part starts on it
};

struct Artwork {
  Place place;
  Length width, height;  // what is to be shown
  Length thickness = Length::nanometres(300'000);
  Sheet sheet;
  Place sheetPlace;
};

using geometry::Head;
using geometry::Shape;

struct Window {
  Place place;
  geometry::ShapeEntry form;
  // Exactly one of the two: the mount covers the shown part by `overlap`, or leaves `margin` of air round the
  // whole sheet (a float).
  bool floats = false;
  Length distance;
};

struct Board {
  Place place;
  std::string id;
  Length thickness;
  Length reveal;  // inner boards; zero on the outermost
  units::Angle bevelAngle;
  std::optional<std::string> bevelColour;
  std::string material;  // what stock it is cut from; "" where any of its thickness will do
};

// Bottom border in terms of the top: bottom = top x ratio, or bottom = top + addition.
struct Weighting {
  bool byAddition = false;
  double ratio = 1;
  Length addition;
};

struct FourBorders {
  Length top, bottom, left, right;
};
struct SidesAndWeighting {
  Length sides;
  Weighting weighting;
};
struct OuterAndWeighting {
  Length width, height;
  Weighting weighting;
};

struct Borders {
  Place place;
  std::variant<FourBorders, SidesAndWeighting, OuterAndWeighting> entry;
};

struct Rebate {
  Place place;
  Length allowanceTotal = Length::wholeMillimetres(3);
  Length cover = Length::wholeMillimetres(6);
};

enum class Motif { Mirror, Directional, Plain };
enum class Centring { Motif, Ground };
enum class Grain { Along, Across, Any };

struct Band {
  Place place;
  std::string id;
  std::string paper;
  Length offsetSides, offsetTopBottom;
  Length width;
  Length trim;
  std::optional<Length> dryEnd;
  std::optional<Length> repeat;
  Motif motif = Motif::Plain;
  Centring centreHorizontal = Centring::Motif;
  Centring centreVertical = Centring::Motif;
  std::optional<Grain> grain;
};

enum class Edge { Window, BandInner, BandOuter };

struct Line {
  Place place;
  std::string id;
  Edge along = Edge::Window;
  std::string band;  // of the edge, where it is a band's
  Length gap;        // may be negative, down to -width
  Length width;
  std::string colour;
};

// Paper round the head of the window, between it and a rectangular frame.
struct Spandrel {
  Place place;
  std::string id;
  std::string paper;
  std::string frameBand;  // the frame is this band's inner edge; "": the face box moved out by frameOffset
  Length frameOffset;
  Length under;                              // tucked beyond the frame
  bool fromSill = false;                     // down to the sill; otherwise above the springing line alone
  Length shy = Length::nanometres(300'000);  // distance it stays back from the face edge
  Length trim;
  std::optional<Grain> grain;
};

// A tinted panel between two lines, or following an edge as a line does.
struct Wash {
  Place place;
  std::string id;
  std::string colour;
  bool between = false;
  std::string lineA, lineB;  // between
  Edge along = Edge::Window;
  std::string band;  // of the edge, where it is a band's
  Length gap;
  Length width;
  bool washFirst = false;  // before the lines; otherwise after them
};

enum class RegionKind { Face, Outside, Inside, On, Spandrel, Bevel };
enum class LeafMethod { Scattered, Laid };
enum class SizeKind { MethylCellulose, Starch, Water, Oil };

// As its label says: "gold" of 22 carats or more, and "brass" for imitation gold.
enum class Metal { Gold, Palladium, Aluminium, Silver, Copper, Brass };

struct Leaf {
  Place place;
  std::string id;
  std::optional<Metal> metal;  // nothing: not known yet
  RegionKind region = RegionKind::Face;
  std::string regionOf;  // band, board or spandrel
  LeafMethod method = LeafMethod::Laid;
  double coverage = 1;  // scattered
  SizeKind size = SizeKind::Water;
  Length keepOffEdge, keepOffLines;
  Length leafWidth = Length::wholeMillimetres(80);
  Length leafHeight = Length::wholeMillimetres(80);
  Length lap = Length::wholeMillimetres(3);
  double waste = 0.24;
  double spread = 100;  // ml/m2
  double potLoss = 0.5;
};

struct Package {
  Place place;
  Length glazing = Length::nanometres(2'000'000);
  Length spacer;
  std::optional<Length> spacerWidth;  // nothing: as the lip hides it
  std::optional<Length> support;      // of a float, how thick; nothing: as the innermost board, under a spacer
  Length decoration = Length::nanometres(200'000);
  Length hinge = Length::nanometres(200'000);
  Length backMount = Length::nanometres(1'500'000);
  Length backing = Length::nanometres(3'000'000);
  Length seal = Length::nanometres(500'000);
  Length fixing = Length::nanometres(3'000'000);
};

enum class StockKind { Board, Paper };
enum class SheetSide { Width, Height };

// Sheets on hand or to be bought. In the file `grain` is the side the fibres run along, or "along" and "across" for the
// sheet's long and short side.
struct Stock {
  Place place;
  std::string id;
  StockKind kind = StockKind::Board;
  Length width, height;
  std::optional<Length> thickness;
  std::string material;              // as a board's `material` or a band's or spandrel's `paper`; "" where not stated
  std::optional<SheetSide> grain;    // the side the fibres run along; nothing: not known
  std::optional<SheetSide> pattern;  // the side its repeat runs along; nothing: not known, or no pattern
  Length usableMargin = Length::wholeMillimetres(5);
  Length kerf;
  std::optional<int> quantity;  // nothing: as many as are needed; one for an offcut where the file states none
  std::optional<units::Money> price;
  bool offcut = false;  // left from earlier work: paid for, used first
};

// The prices the maker pays or asks for everything that is not counted in sheets.
struct Prices {
  std::optional<units::Money> labour;              // an hour
  std::optional<units::Money> leaf;                // a leaf
  std::optional<units::Money> size, paste, paint;  // a litre
};

inline constexpr int kMostPieces = 99;

struct Job {
  std::string title;  // "" where not given
  std::string reference;
  std::string client;
  std::string due;
  Artwork artwork;
  Window window;
  std::vector<Board> boards;  // from the face inwards
  Borders borders;
  Rebate rebate;
  std::vector<Band> bands;  // innermost first
  std::vector<Line> lines;
  std::vector<Spandrel> spandrels;
  std::vector<Wash> washes;
  std::vector<Leaf> leaf;
  Package package;
  std::vector<Stock> stock;
  Prices prices;
  std::string currency;                           // of every price of the job; "" where none is named
  std::map<std::string, std::string> techniques;  // role -> technique id
  units::Deliver deliver = units::Deliver::Framed;
  int count = 1;  // of identical pieces, 1 to kMostPieces
  std::optional<units::Room> room;
  // The unit the artwork's width is written in decides how figures are shown unless the maker chooses another.
  units::UnitSystem units = units::UnitSystem::Millimetres;
};

}  // namespace core::design
