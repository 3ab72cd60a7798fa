import QtQuick
import QtTest
import Mountwright.Bench
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme

// From a bench that waits to another piece and back, and the line that undoes what was just done: with real presses.
Item {
    id: root
    width: 1280
    height: 800
    property var asked: []

    BenchScreen {
        id: bench
        anchors.fill: parent
        bench: demo.bench
        watch: demo.watch
        off: demo.off
        meanwhile: demo.meanwhile
        shelf: demo.shelf
        onAsked: screen => root.asked.push(screen)
    }
    Loader {
        id: page
        anchors.fill: parent
        active: false
        sourceComponent: WaitsPage {
            places: demo.places
            watch: demo.watch
            shelf: demo.shelf
            onAsked: screen => root.asked.push(screen)
            onOver: root.asked.push("over")
        }
    }
    TestCase {
        name: "Elsewhere"
        when: windowShown

        function init() {
            root.asked = [];
        }
        function press(item, x, y) {
            wait(Touch.screenGuard + 50);
            mousePress(item, x, y);
            wait(Touch.shortestContact + 40);
            mouseRelease(item, x, y);
        }
        function keyOf(area, name) {
            const key = findChild(area, name);
            verify(key !== null, name);
            tryVerify(() => key.visible, 2000, name);
            return key;
        }
        function shownKeys(item) {
            let keys = [];
            for (let i = 0; i < item.children.length; ++i) {
                const child = item.children[i];
                if (!child.visible)
                    continue;
                if (child.isKey === true)
                    keys.push(child);
                keys = keys.concat(shownKeys(child));
            }
            return keys;
        }

        function test_1_whatWasDoneIsUndoneByAPressAnywhereInTheHead() {
            verify(stage.workUntilJustDone());
            const undo = keyOf(bench, "undo");
            const step = demo.bench.stepId;
            verify(undo.width > Metrics.mm(100));
            verify(undo.height >= Metrics.mm(20));
            verify(findChild(bench, "undoWord").visible);
            verify(shownKeys(bench).length <= 6);
            press(undo, undo.width - 20, undo.height - 8);
            verify(demo.bench.stepId !== step);
            verify(!undo.visible);
            // The head is still there where it was.
            tryVerify(() => findChild(bench, "title").visible);
            compare(findChild(bench, "title").text, demo.bench.title);
            demo.bench.putBack();
        }
        function test_2_theUndoIsGoneAfterTenSeconds() {
            verify(stage.workUntilJustDone());
            const undo = keyOf(bench, "undo");
            stage.advance(10);
            tryVerify(() => !undo.visible);
            verify(findChild(bench, "title").visible);
            // Where the head was, nothing is pressed now.
            const step = demo.bench.stepId;
            press(bench, 400, 60);
            compare(demo.bench.stepId, step);
        }
        function test_3_aPressThatWasOnItsWayUndoesNothing() {
            verify(stage.workUntilJustDone());
            const undo = keyOf(bench, "undo");
            const step = demo.bench.stepId;
            mousePress(undo, 300, 60);
            wait(Touch.shortestContact + 40);
            mouseRelease(undo, 300, 60);
            compare(demo.bench.stepId, step);
            stage.advance(10);
        }
        function test_4_theShelfIsAKeyThatOpensAllPlaces() {
            const shelf = keyOf(bench, "waits");
            verify(shelf.width > Metrics.mm(100));
            press(shelf, 60, 100);
            compare(root.asked, ["waits"]);
        }
        function test_5_meanwhileLeadsToAnotherPieceInOnePress() {
            verify(stage.workUntilMeanwhile());
            const key = keyOf(bench, "meanwhile");
            // It stands in the place of the shelf, which has another key then; Done keeps its own and is dotted.
            verify(!findChild(bench, "waits").visible);
            verify(findChild(bench, "allWaits").visible);
            const done = findChild(bench, "done");
            verify(done.visible && !done.enabled);
            verify(shownKeys(bench).length <= 6);
            compare(findChild(key, "meanwhileAct").text, demo.meanwhile.act);
            verify(/: done by \d{1,2}:\d\d$/.test(findChild(key, "meanwhileTerms").text), findChild(key, "meanwhileTerms").text);
            const piece = demo.bench.shortPiece;
            press(key, 300, 90);
            verify(demo.bench.shortPiece !== piece);
            verify(!key.visible);
            tryVerify(() => findChild(bench, "waits").visible);
            verify(findChild(bench, "done").enabled);
        }
        function test_6_theFirstRowLeadsBackAndAWaitsRowToItsTest() {
            page.active = true;
            const waits = page.item;
            const from = demo.bench.shortPiece;
            const back = keyOf(waits, "place0");
            verify(shownKeys(waits).length <= 6);
            verify(back.isReturn);
            press(back, 200, 60);
            compare(root.asked, ["over"]);
            verify(demo.bench.shortPiece !== from);
            // And here the other one is first, the waits behind it.
            root.asked = [];
            const test = keyOf(waits, "place1");
            verify(test.isWait);
            verify(findChild(test, "brief").text !== "");
            press(test, 200, 60);
            compare(root.asked, ["test"]);
            verify(demo.places.look.present);
            for (const name of ["ahead", "today"]) {
                const said = findChild(waits, name);
                verify(said.text !== "", name);
            }
            page.active = false;
        }
    }
}
