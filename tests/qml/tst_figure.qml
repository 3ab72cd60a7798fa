import QtQuick
import QtTest
import Mountwright.Components
import Mountwright.Theme

// A number in its dimension, beside what it is measured on.
Item {
    id: root
    width: 1100
    height: 420

    FigurePlate {
        id: plate
        width: 1055
        height: 400
        figure: demo.bench.figure
        next: "act 3 of 40 · clean hands"
    }
    TestCase {
        name: "Figure"
        when: windowShown

        function initTestCase() {
            verify(stage.workUntilStep("cut-strips"));
            tryVerify(() => plate.figure.present && plate.figure.total > 1);
        }
        function init() {
            plate.figure.begin();
            plate.width = 1055;
            plate.height = 400;
            waitForRendering(plate);
        }
        function item(name) {
            const found = findChild(plate, name);
            verify(found !== null, name);
            return found;
        }
        function forwardTo(level) {
            while (plate.figure.level !== level || !plate.figure.hasStrip)
                verify(plate.figure.forward());
            waitForRendering(plate);
        }
        // Both ends on the glass, as far apart as the strip is long there.
        function test_theDimensionOfALengthRunsAlongTheStrip() {
            forwardTo(true);
            const measure = item("measure");
            const strip = item("measured");
            verify(measure.visible);
            verify(measure.from.x >= 0 && measure.to.x <= strip.x + strip.width + 1);
            fuzzyCompare(measure.from.y, measure.to.y, 0.5);
            const length = Math.abs(plate.figure.measureTo.x - plate.figure.measureFrom.x);
            fuzzyCompare((measure.to.x - measure.from.x) * strip.mmPerPixel(), length, 0.5);
            verify(measure.beside < strip.y);
        }
        function test_theNumberStandsInItsLine() {
            forwardTo(true);
            const measure = item("measure");
            const number = item("figure");
            verify(number.x > measure.from.x);
            if (plate.between)
                verify(number.x + number.width < measure.to.x);
            else
                verify(number.x > measure.to.x);
            const middle = number.y + number.height / 2;
            fuzzyCompare(middle, measure.beside, Metrics.mm(4));
        }
        function test_aHeightHasItsDimensionBesideIt() {
            while (plate.figure.level || !plate.figure.hasMeasure)
                verify(plate.figure.forward());
            waitForRendering(plate);
            const measure = item("measure");
            fuzzyCompare(measure.from.x, measure.to.x, 0.5);
            const strip = item("measured");
            verify(measure.beside >= strip.x + strip.width - 1);
            verify(item("figure").x > measure.beside);
        }
        function test_theNextNumberTakesItsPlace() {
            const first = plate.figure.plain;
            verify(plate.figure.forward());
            verify(plate.figure.plain !== first || plate.figure.label !== "");
            verify(item("label").text.indexOf(plate.figure.place) > 0);
        }
        // In every room the number keeps its least size and the words find theirs.
        function test_wordsYieldBeforeTheNumber_data() {
            return [{ "tag": "wide", "w": 1055, "h": 400 }, { "tag": "low", "w": 1055, "h": 210 }, { "tag": "upright", "w": 620, "h": 560 }];
        }
        function test_wordsYieldBeforeTheNumber(row) {
            plate.width = row.w;
            plate.height = row.h;
            do {
                waitForRendering(plate);
                wait(20);
                verify(plate.fits, plate.figure.label);
                const number = item("figure");
                verify(number.wholeSize >= Metrics.figureLeast);
                verify(number.x >= 0 && number.x + number.width <= plate.width + 1, plate.figure.label);
            } while (plate.figure.forward());
        }
    }
}
