import QtQuick
import QtTest
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme

// What the pages of the bench share: their head, their row of keys, the numbers in the drawing of an act.
ActionArea {
    id: root
    width: 1280
    height: 800
    property var heard: []

    actions: [
        ScreenAction {
            id: first
            name: "one"
            text: "One"
            onTriggered: root.heard.push("one")
        },
        ScreenAction {
            id: second
            name: "two"
            text: "Two"
            onTriggered: root.heard.push("two")
        },
        ScreenAction {
            id: third
            name: "three"
            text: "Three"
            onTriggered: root.heard.push("three")
        }
    ]

    PageHead {
        id: head
        width: 1200
        watch: demo.watch
        piece: "Heron"
        note: "no. 1 of 6"
        title: "Measure the opening"
        where: "side to side: width"
        thing: "top board"
        side: "back up"
        backUp: true
    }
    KeyRow {
        id: row
        y: 300
        width: 1256
        offered: [first, second, third]
    }
    NumberDisc {
        id: disc
        y: 500
        number: 2
    }
    PagedText {
        id: pages
        y: 560
        width: 600
        height: 220
        paragraphs: ["Slip a strip under.", "Cut both papers.", "Good: they meet."]
        numbered: 2
    }
    TestCase {
        name: "Pages"
        when: windowShown

        function all(item, name) {
            let found = item.toString().indexOf(name) === 0 ? [item] : [];
            for (let i = 0; i < item.children.length; ++i)
                found = found.concat(all(item.children[i], name));
            return found;
        }
        function place(name) {
            const key = findChild(row, name);
            return key.mapToItem(row, 0, 0).x;
        }
        function press(name) {
            const key = findChild(row, name);
            mousePress(key, 20, 20);
            wait(Touch.shortestContact + 30);
            mouseRelease(key, 20, 20);
        }
        function test_theHeadSaysTimePieceActAndHowItLies() {
            compare(findChild(head, "watch").text, demo.watch.time);
            compare(findChild(head, "pieceName").font.family, Metrics.artworkFamily);
            compare(findChild(head, "title").font.pixelSize, Metrics.act);
            verify(findChild(head, "note").visible);
            verify(findChild(head, "thing").visible);
            const bottom = item => item.mapToItem(head, 0, item.height).y;
            verify(bottom(findChild(head, "where")) <= head.height + 1);
            verify(bottom(findChild(head, "lies")) <= head.height + 1);
        }
        function test_aNoteWithoutRoomIsLeftOutAndTheNameStays() {
            head.width = 300;
            tryVerify(() => !findChild(head, "note").visible);
            verify(findChild(head, "pieceName").visible);
            head.width = 1200;
            tryVerify(() => findChild(head, "note").visible);
        }
        function test_keysKeepTheirPlacesWhileOneIsNotOffered() {
            const before = place("three");
            second.enabled = false;
            compare(place("three"), before);
            verify(!findChild(row, "two").visible);
            second.enabled = true;
            verify(place("two") - place("one") >= Metrics.benchKey + Metrics.gap);
            root.heard = [];
            press("one");
            press("three");
            compare(root.heard, ["one", "three"]);
        }
        function test_aNumberIsARoundDiscNoSmallerThanALabel() {
            compare(disc.radius, disc.width / 2);
            verify(disc.width > Metrics.label);
            compare(disc.color, Theme.ink);
        }
        function test_onlyTheCountedParagraphsCarryTheirNumbers() {
            tryVerify(() => all(pages, "NumberDisc").filter(one => one.visible).length === 2);
            compare(all(pages, "NumberDisc").filter(one => one.visible).map(one => one.number), [1, 2]);
        }
    }
}
