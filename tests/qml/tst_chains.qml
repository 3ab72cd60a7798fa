import QtQuick
import QtTest
import Mountwright.Components
import Mountwright.Theme
import Mountwright.ViewModels

// Dimension chains beside a drawing: figures in their line where they fit, beside it and clear of each other where not.
Item {
    id: root
    width: 900
    height: 700

    DimensionChain {
        id: chain
        anchors.fill: parent
        edge: ChainsModel.Bottom
        along: [0, 90, 210, 300]
        across: [200, 150, 150, 200]
        shown: ["90.0", "120.0", "90.0"]
        held: [false, true, false]
        origin: Qt.point(110, 100)
        scaling: 2
        drawn: Qt.size(300, 200)
    }
    TestCase {
        name: "Chains"
        when: windowShown

        function init() {
            chain.edge = ChainsModel.Bottom;
            chain.along = [0, 90, 210, 300];
            chain.across = [200, 150, 150, 200];
            chain.shown = ["90.0", "120.0", "90.0"];
            chain.held = [false, true, false];
            chain.scaling = 2;
        }
        function figures() {
            const found = [];
            const collect = item => {
                if (item.text !== undefined && item.visible && item.text !== "")
                    found.push(item);
                for (let i = 0; i < item.children.length; ++i)
                    collect(item.children[i]);
            };
            collect(chain);
            return found;
        }
        function boxOf(item) {
            return item.mapToItem(root, 0, 0, item.width, item.height);
        }
        function apart(a, b) {
            return a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y || b.y + b.height <= a.y;
        }
        function test_figuresStandInTheirLine() {
            const all = figures();
            compare(all.length, 3);
            const middles = [200, 410, 620];
            for (let i = 0; i < 3; ++i) {
                const box = boxOf(all[i]);
                fuzzyCompare(box.x + box.width / 2, middles[i], 1.5);
                fuzzyCompare(box.y + box.height / 2, chain.line, 1.5);
            }
            // Below the drawing, whose lower edge is at 500.
            verify(chain.line > 500);
        }
        function test_onlyTheMeasureInHandIsInItsColour() {
            for (const one of figures())
                compare(String(one.color), String(one.text === "120.0" ? Theme.worked : Theme.ink));
        }
        function test_whatIsTooShortStandsBesideAndClear_data() {
            return [
                {
                    "tag": "below",
                    "edge": ChainsModel.Bottom
                },
                {
                    "tag": "above",
                    "edge": ChainsModel.Top
                },
                {
                    "tag": "right",
                    "edge": ChainsModel.Right
                },
                {
                    "tag": "left",
                    "edge": ChainsModel.Left
                }
            ];
        }
        function test_whatIsTooShortStandsBesideAndClear(data) {
            chain.edge = data.edge;
            chain.along = [0, 4, 9, 12, 188, 191, 196, 200];
            chain.across = [200, 150, 150, 150, 150, 150, 150, 200];
            chain.held = [false, true, false, false, false, true, false];
            chain.shown = ["4.0", "5.0", "3.0", "176.0", "3.0", "5.0", "4.0"];
            const all = figures();
            compare(all.length, 7);
            for (let i = 0; i < all.length; ++i) {
                const box = boxOf(all[i]);
                verify(box.x >= 0 && box.y >= 0 && box.x + box.width <= root.width && box.y + box.height <= root.height, all[i].text + " " + box);
                for (let j = i + 1; j < all.length; ++j)
                    verify(apart(box, boxOf(all[j])), all[i].text + " / " + all[j].text);
                // None lies on the drawing itself.
                const inside = box.x + box.width > 112 && box.x < 508 && box.y + box.height > 102 && box.y < 498;
                verify(!inside, all[i].text);
            }
        }
        function test_anExtensionLineReachesWhatIsMeant() {
            chain.scaling = 1;
            compare(chain.measures.length, 3);
            compare(chain.measures[1].from, 200);
            compare(chain.measures[1].to, 320);
        }
    }
}
