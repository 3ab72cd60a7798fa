import QtQuick
import QtTest
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme

// Colours stand on keys of their own: a press or a key chooses one, and the chosen one is seen to be.
Item {
    width: 700
    height: 500

    ListModel {
        id: colours
        ListElement {
            title: "cream"
            value: "#f2e6c6"
            chosen: false
        }
        ListElement {
            title: "indigo"
            value: "#3e4b85"
            chosen: true
        }
        ListElement {
            title: "umber"
            value: "#6b4f3a"
            chosen: false
        }
    }
    ActionArea {
        anchors.fill: parent

        SwatchGrid {
            id: grid
            width: parent.width
            model: colours

            property var rows: []

            onAsked: row => rows.push(row)
        }
    }
    TestCase {
        name: "Swatches"
        when: windowShown

        function init() {
            grid.rows = [];
            wait(Touch.screenGuard + Touch.sameKeyLockout);
        }
        function keyOf(row) {
            const key = findChild(grid, "swatch" + row);
            verify(key !== null);
            return key;
        }
        function test_aPressChoosesItsColour() {
            const key = keyOf(2);
            mousePress(key, key.width / 2, key.height / 2);
            wait(Touch.shortestContact + 30);
            mouseRelease(key, key.width / 2, key.height / 2);
            compare(grid.rows, [2]);
        }
        function test_theKeyboardChoosesToo() {
            const key = keyOf(0);
            key.forceActiveFocus(Qt.TabFocusReason);
            keyPress(Qt.Key_Space);
            wait(Touch.shortestContact + 30);
            keyRelease(Qt.Key_Space);
            compare(grid.rows, [0]);
        }
        function test_theChosenOneIsSunk() {
            compare(keyOf(1).sunk, true);
            compare(keyOf(0).sunk, false);
        }
        function test_eachShowsItsVeryColour() {
            const picture = grabImage(grid);
            for (const row of [0, 1, 2]) {
                const key = keyOf(row);
                compare(picture.pixel(key.x + key.width / 2, key.y + Metrics.mm(5)), Qt.color(colours.get(row).value));
            }
        }
        function test_keysAreLargeEnoughAndApart() {
            const one = keyOf(0), other = keyOf(1);
            verify(one.height >= Metrics.mm(9) && one.width >= Metrics.mm(9));
            verify(other.x - one.x - one.width >= Metrics.deskGap - 0.5);
        }
    }
}
