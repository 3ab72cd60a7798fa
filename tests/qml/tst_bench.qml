import QtQuick
import QtTest
import Mountwright.Bench
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme

// The parts of the bench: its head, the drawing on the plate, what stands beside it, and keys of its usual size.
Item {
    id: root
    width: 1280
    height: 800
    property int pressed: 0

    BenchHead {
        id: head
        width: 1000
        bench: demo.bench
        watch: demo.watch
    }
    PiecePane {
        id: piece
        y: 300
        width: 400
        height: 300
        bench: demo.bench
    }
    StepPane {
        id: step
        x: 420
        y: 300
        width: 500
        height: 300
        bench: demo.bench
    }
    ActionArea {
        x: 1000
        y: 300
        width: 280
        height: 400

        BenchKey {
            id: benchKey
            offers: ScreenAction {
                name: "tried"
                text: "Number"
                onTriggered: root.pressed += 1
            }
        }
        DeskKey {
            id: deskKey
            y: 200
            offers: ScreenAction {
                name: "triedAtDesk"
                text: "Record"
                onTriggered: root.pressed += 10
            }
        }
    }
    TestCase {
        name: "Bench"
        when: windowShown

        function init() {
            head.width = 1000;
            step.height = 300;
        }
        function shownTexts(item) {
            let texts = [];
            for (let i = 0; i < item.children.length; ++i) {
                const child = item.children[i];
                if (!child.visible)
                    continue;
                if (child.text !== undefined && child.text !== "")
                    texts.push(child);
                texts = texts.concat(shownTexts(child));
            }
            return texts;
        }
        // Of what the head says no two texts lie on each other, and none leaves it.
        function checkApart() {
            const texts = shownTexts(head);
            for (let i = 0; i < texts.length; ++i) {
                const one = texts[i].mapToItem(head, 0, 0, texts[i].width, texts[i].contentHeight);
                verify(one.x >= -1 && one.x + texts[i].contentWidth <= head.width + 1, texts[i].text);
                for (let j = 0; j < i; ++j) {
                    const other = texts[j].mapToItem(head, 0, 0, texts[j].width, texts[j].contentHeight);
                    const across = Math.min(one.x + texts[i].contentWidth, other.x + texts[j].contentWidth) - Math.max(one.x, other.x);
                    const down = Math.min(one.y + one.height, other.y + other.height) - Math.max(one.y, other.y);
                    verify(across <= 1 || down <= Metrics.label * 0.3, texts[i].text + " on " + texts[j].text);
                }
            }
        }
        function press(key) {
            mousePress(key);
            wait(Touch.shortestContact + 30);
            mouseRelease(key);
            wait(Touch.sameKeyLockout);
        }

        function test_1_theHeadTellsTheTimeTheActAndThePiece() {
            verify(stage.workUntilStep("/mark-window@"));
            compare(findChild(head, "title").text, demo.bench.title);
            compare(findChild(head, "watch").text, demo.watch.time);
            verify(findChild(head, "pieceName").visible);
            compare(findChild(head, "pieceName").text, demo.bench.shortPiece);
            compare(findChild(head, "where").text, demo.bench.figure.datum);
            compare(findChild(head, "side").text, demo.bench.side);
            verify(findChild(head, "stageStrip").visible);
            waitForRendering(root);
            checkApart();
        }
        function test_1_whatWasDoneLastIsShortenedAndNeverLeftOut_data() {
            return [1200, 1000, 820, 560].map(width => ({ "tag": String(width), "width": width }));
        }
        function test_1_whatWasDoneLastIsShortenedAndNeverLeftOut(data) {
            head.width = data.width;
            waitForRendering(root);
            const above = findChild(head, "above");
            const words = demo.bench.above.split(" ");
            verify(words.length > 3, demo.bench.above);
            verify(above.visible, demo.bench.above);
            verify(above.text.startsWith(words.slice(0, 2).join(" ")), above.text);
            verify(above.text.endsWith(words[words.length - 1]), above.text);
            verify(above.text === demo.bench.above || above.text.includes("…"), above.text);
            checkApart();
        }
        function test_1_aLineIsShortenedByWholeWordsToWhatHasRoom() {
            const said = "✓ Rule the copper lines, inner first 13:26";
            compare(head.shortened(said, 10000), said);
            const some = head.shortened(said, 400);
            verify(some.endsWith(" … 13:26") && said.startsWith(some.slice(0, -8)), some);
            verify(!some.includes(", …"), some);
            compare(head.shortened(said, 20), "");
            // What has no time keeps its beginning.
            const undone = head.shortened("undone: measure of the window of the top board", 400);
            verify(undone.startsWith("undone: measure") && undone.endsWith("…"), undone);
        }
        function test_1_whatKeepsAnAlertFromBeingHeardTakesTheFirstLine() {
            stage.trouble("No sound device: watch the shelf.");
            const watch = findChild(head, "watch");
            tryVerify(() => watch.text.includes("No sound device"));
            verify(watch.text.startsWith(demo.watch.time));
            verify(!findChild(head, "above").visible);
            verify(!findChild(head, "pieceName").visible);
            checkApart();
            stage.trouble("");
            tryVerify(() => findChild(head, "above").visible);
        }
        function test_2_anActWithoutNumbersIsDrawnAndToldInOrder() {
            verify(stage.workUntilStep("/soak"));
            verify(!demo.bench.figure.present);
            verify(piece.acted);
            verify(findChild(piece, "plateDrawing").visible);
            const told = shownTexts(step).map(text => text.text);
            verify(told.includes("1"), told.join("; "));
            verify(told.includes(step.told[0]), told.join("; "));
        }
        function test_3_keysOfBenchAndDeskHaveTheirSizesAndTakeAPress() {
            wait(Touch.screenGuard);
            compare(benchKey.width, Metrics.corner);
            verify(benchKey.height >= Metrics.mm(25));
            verify(deskKey.height >= Metrics.mm(9) && deskKey.width >= Metrics.mm(9));
            root.pressed = 0;
            press(benchKey);
            compare(root.pressed, 1);
            press(deskKey);
            compare(root.pressed, 11);
        }
    }
}
