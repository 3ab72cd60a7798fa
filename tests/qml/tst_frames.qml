import QtQuick
import QtTest
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme

// The two frames and the stack of screens.
Item {
    id: root
    width: 1280
    height: 800
    property var told: []

    Component {
        id: bench

        CornerFrame {
            shelf: demo.shelf
            function done() {
                root.told.push("done");
                over();
            }
            actions: ScreenAction {
                name: "extra"
                text: "Extra"
                place: ScreenAction.AboveDone
                onTriggered: root.told.push(name)
            }
        }
    }
    Component {
        id: page

        DeskFrame {
            place: "stock"
            watch: demo.watch
            function closed() {
                root.told.push("closed");
            }
        }
    }
    Stack {
        id: stack
        anchors.fill: parent
        rows: [
            QtObject {
                readonly property string name: "bench"
                readonly property string on: ""
                readonly property Component source: bench
                readonly property var given: ({})
            },
            QtObject {
                readonly property string name: "pieces"
                readonly property string on: "bench"
                readonly property Component source: page
                readonly property var given: ({})
            },
            QtObject {
                readonly property string name: "piece"
                readonly property string on: "pieces"
                readonly property Component source: page
                readonly property var given: ({})
            },
            QtObject {
                readonly property string name: "anywhere"
                readonly property string on: ""
                readonly property Component source: page
                readonly property var given: ({})
            }
        ]
    }
    SignalSpy {
        id: asked
        signalName: "asked"
    }
    TestCase {
        name: "Frames"
        when: windowShown

        function initTestCase() {
            stack.begin();
        }
        function init() {
            stack.open("bench");
            root.told = [];
            root.width = 1280;
            root.height = 800;
            wait(Touch.screenGuard);
        }
        function press(key) {
            mousePress(key, 20, 20);
            wait(Touch.shortestContact + 30);
            mouseRelease(key, 20, 20);
        }
        function test_cornersStandWhereTheyAlwaysStand() {
            const screen = stack.current;
            for (const size of [[1280, 800], [800, 1280]]) {
                root.width = size[0];
                root.height = size[1];
                const back = findChild(screen, "back");
                const done = findChild(screen, "done");
                compare(back.x, Metrics.edge);
                compare(done.x + done.width, root.width - Metrics.edge);
                compare(back.y + back.height, root.height - Metrics.edge);
                compare(done.y, back.y);
                const extra = findChild(screen, "extra");
                verify(extra.mapToItem(root, 0, extra.height).y <= done.y - Metrics.gap);
            }
        }
        function test_doneAndWhatStandsAboveItAct() {
            press(findChild(stack.current, "extra"));
            press(findChild(stack.current, "done"));
            compare(root.told, ["extra", "done"]);
        }
        function test_backIsTheWayOneCame() {
            stack.open("piece");
            compare(stack.names, ["bench", "pieces", "piece"]);
            stack.leave();
            compare(stack.screen, "pieces");
            compare(root.told, ["closed"]);
            stack.open("anywhere");
            compare(stack.names, ["bench", "pieces", "anywhere"]);
            stack.leave();
            compare(stack.screen, "pieces");
        }
        function test_aScreenGoneThroughAlreadyIsGoneBackTo() {
            stack.open("piece");
            stack.open("bench");
            compare(stack.names, ["bench"]);
            // The one between was never seen, and so never made.
            compare(root.told, ["closed"]);
            stack.leave();
            compare(stack.screen, "bench");
        }
        function test_aScreenNobodyKnowsIsAMistakeOfOurs() {
            let thrown = false;
            try {
                stack.open("nowhere");
            } catch (error) {
                thrown = true;
            }
            verify(thrown);
            compare(stack.screen, "bench");
        }
        function test_theDesksHeadLeadsToItsRooms() {
            stack.open("pieces");
            wait(Touch.screenGuard);
            asked.target = stack.current;
            asked.clear();
            for (const room of ["bench", "pieces", "stock", "settings"])
                press(findChild(stack.current, "to-" + room));
            compare(asked.count, 4);
            compare([0, 1, 2, 3].map(i => asked.signalArguments[i][0]), ["bench", "pieces", "stock", "settings"]);
            verify(findChild(stack.current, "to-stock").sunk);
            verify(!findChild(stack.current, "to-pieces").sunk);
        }
        function test_theDesksHeadHoldsNowAndTheWayToTheBenchAtItsEnds() {
            stack.open("pieces");
            const now = findChild(stack.current, "now");
            compare(now.text, demo.watch.time);
            verify(now.text !== "");
            compare(now.mapToItem(root, 0, 0).x, Metrics.deskMargin);
            const out = findChild(stack.current, "to-bench");
            // A row is laid out with the next frame.
            tryVerify(() => out.mapToItem(root, out.width, 0).x === root.width - Metrics.deskMargin);
            verify(out.filled);
            // Each key is as wide as its words need, and none lies on another.
            let edge = now.mapToItem(root, now.width, 0).x;
            for (const name of ["to-pieces", "to-stock", "to-settings", "to-bench"]) {
                const key = findChild(stack.current, name);
                const left = key.mapToItem(root, 0, 0).x;
                verify(left >= edge);
                edge = left + key.width;
            }
        }
    }
}
