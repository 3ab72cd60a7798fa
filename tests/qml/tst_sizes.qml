import QtQuick
import QtTest
import Mountwright.Bench
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme

// What is cut to a width and a height: a row for each thing, both numbers in it.
Item {
    id: root
    width: 1280
    height: 800

    SizeRows {
        id: rows
        width: 1031
        height: 384
        figure: demo.bench.figure
    }
    BenchScreen {
        id: screen
        anchors.fill: parent
        visible: false
        bench: demo.bench
        watch: demo.watch
        off: demo.off
        meanwhile: demo.meanwhile
        shelf: demo.shelf
    }
    DimensionLine {
        id: line
        y: 500
        width: 200
        height: implicitHeight
    }
    TestCase {
        name: "Sizes"
        when: windowShown

        function initTestCase() {
            demo.settings.turnWay();
            verify(stage.workUntilStep("/cut-blank@"));
            verify(demo.bench.figure.hasSizes);
        }
        function init() {
            demo.bench.figure.begin();
            rows.width = 1031;
            rows.height = 384;
        }
        function named(item, name) {
            let found = [];
            for (let i = 0; i < item.children.length; ++i) {
                const child = item.children[i];
                if (child.objectName === name && child.visible)
                    found.push(child);
                found = found.concat(named(child, name));
            }
            return found;
        }
        function action(name) {
            for (let i = 0; i < screen.actions.length; ++i) {
                if (screen.actions[i].name === name)
                    return screen.actions[i];
            }
            return null;
        }

        function test_bothNumbersStandInEveryRowAndAreEqual() {
            const across = named(rows, "across");
            const down = named(rows, "down");
            verify(across.length > 1);
            compare(down.length, across.length);
            for (let i = 0; i < across.length; ++i) {
                compare(across[i].wholeSize, down[i].wholeSize);
                verify(across[i].x + across[i].width <= down[i].x);
                verify(down[i].x + down[i].width <= rows.width + 1);
            }
        }
        function test_theOneInHandIsBarredColouredAndBold() {
            compare(named(rows, "rowInHand").length, 1);
            compare(named(rows, "bar").length, 1);
            const inks = named(rows, "across").map(one => String(one.ink));
            compare(inks.filter(one => one === String(Theme.worked)).length, 1);
            compare(named(rows, "rowName").filter(one => one.font.bold).length, 1);
        }
        function test_nextGoesToTheNextRow() {
            const first = named(named(rows, "rowInHand")[0], "rowName")[0].text;
            action("nextNumber").trigger();
            const second = named(named(rows, "rowInHand")[0], "rowName")[0].text;
            verify(second !== first);
            screen.ask(ScreenAction.Back);
            compare(named(named(rows, "rowInHand")[0], "rowName")[0].text, first);
        }
        function test_theRowInHandIsAlwaysAmongThoseShown() {
            rows.height = 230;
            do {
                compare(named(rows, "rowInHand").length, 1);
                tryVerify(() => rows.fits);
                const shown = named(rows, "across").length;
                const more = named(rows, "more");
                const hidden = rows.sizes.length - rows.first - shown;
                compare(more.length, hidden > 0 ? 1 : 0);
                if (hidden > 0)
                    compare(more[0].text, "%1 more".arg(hidden));
            } while (demo.bench.figure.onward())
        }
        function test_onAnUprightTabletTheNumbersStandBelowEachOther() {
            rows.width = 551;
            const across = named(rows, "across")[0];
            const down = named(rows, "down")[0];
            verify(across.x >= 0);
            verify(down.y >= across.y || down.x >= across.x + across.width);
            verify(down.x + down.width <= rows.width + 1);
        }
        function test_numbersAreNeverSmallerThanForSeveralRows() {
            for (const number of named(rows, "across"))
                verify(number.wholeSize >= Metrics.figureRow);
        }
        function test_aDimensionLineHasAHeadAtEitherEnd() {
            const picture = grabImage(root);
            const middle = line.y + line.height / 2;
            const dark = (x, y) => picture.pixel(x, y).hslLightness < 0.4;
            // Near an end the head is wide, in the middle the line is thin.
            verify(dark(line.x + line.head - 3, middle + line.spread / 2 - 3));
            verify(dark(line.x + line.width - line.head + 2, middle + line.spread / 2 - 3));
            verify(dark(line.x + line.width / 2, middle));
            verify(!dark(line.x + line.width / 2, middle + line.spread / 2 - 3));
        }
    }
}
