import QtQuick
import QtTest
import Mountwright.Bench
import Mountwright.Card
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme

// The cutter's card, on its own and on its screen.
Item {
    id: root
    width: 1280
    height: 800
    property var asked: []

    CardView {
        id: card
        width: 590
        height: 480
        visible: shown
        figure: demo.bench.figure
    }
    CardScreen {
        id: screen
        anchors.fill: parent
        visible: false
        bench: demo.bench
        settings: demo.settings
        shelf: demo.shelf
        onAsked: name => root.asked.push(name)
        onOver: root.asked.push("over")
        onLeave: root.asked.push("leave")
    }
    TestCase {
        name: "Card"
        when: windowShown

        function initTestCase() {
            verify(stage.workUntilStep("/mark-window@"));
            // The ground of a key is read while it is shown.
            verify(demo.bench.figure.hasCard);
        }
        function init() {
            demo.bench.figure.begin();
            root.asked = [];
        }
        function action(name) {
            for (let i = 0; i < screen.actions.length; ++i) {
                if (screen.actions[i].name === name)
                    return screen.actions[i];
            }
            return null;
        }
        function textsNamed(item, name) {
            let found = [];
            for (let i = 0; i < item.children.length; ++i) {
                const child = item.children[i];
                if (child.objectName === name)
                    found.push(child);
                found = found.concat(textsNamed(child, name));
            }
            return found;
        }
        function test_allNumbersStandThereAtOnceAndOneIsInked() {
            verify(card.shown);
            compare(card.numbers.length, demo.bench.figure.total);
            compare(textsNamed(card, "currentNumber").length, 1);
            compare(textsNamed(card, "cardNumber").length, demo.bench.figure.total - 1);
        }
        function test_theInkedNumberIsTheOneInHand() {
            const before = textsNamed(card, "currentNumber")[0];
            const place = Qt.point(before.x, before.y);
            verify(Qt.colorEqual(before.color, Theme.worked));
            verify(demo.bench.figure.forward());
            const after = textsNamed(card, "currentNumber");
            compare(after.length, 1);
            verify(after[0].x !== place.x || after[0].y !== place.y);
            for (const other of textsNamed(card, "cardNumber"))
                verify(Qt.colorEqual(other.color, Theme.quiet));
        }
        function test_noNumberMovesWhenAnotherIsTaken() {
            const places = card.numbers.map(one => one.text + "@" + one.x + "," + one.y);
            demo.bench.figure.forward();
            compare(card.numbers.map(one => one.text + "@" + one.x + "," + one.y), places);
        }
        function test_numbersKeepTheSizeOfALabel() {
            for (const number of textsNamed(card, "cardNumber")) {
                compare(number.font.pixelSize, Metrics.label);
                verify(number.contentWidth <= number.width + 1);
            }
        }
        function test_whereThereIsNoRoomNothingIsShown() {
            card.width = 150;
            verify(!card.shown);
            compare(card.numbers.length, 0);
            card.width = 590;
            verify(card.shown);
        }
        function test_theScreenTurnsThemByKey() {
            action("next").trigger();
            compare(demo.bench.figure.index, 1);
            action("earlier").trigger();
            compare(demo.bench.figure.index, 0);
            action("number").trigger();
            compare(root.asked, ["number"]);
        }
        function test_thePedalTurnsThemAndLeavesAtTheEnds() {
            for (let i = 1; i < demo.bench.figure.total; ++i)
                action("pedalForward").trigger();
            compare(root.asked, []);
            action("pedalForward").trigger();
            compare(root.asked, ["over"]);
            demo.bench.figure.begin();
            action("pedalBack").trigger();
            compare(root.asked, ["over", "leave"]);
        }
        function test_theWayOfMarkingIsTurnedThere() {
            const marks = card.numbers.map(one => one.text);
            verify(!demo.settings.byBorders);
            findChild(screen, "turnMarking").offers.trigger();
            verify(demo.settings.byBorders);
            verify(card.shown);
            verify(card.numbers.map(one => one.text).join() !== marks.join());
            findChild(screen, "turnMarking").offers.trigger();
            compare(card.numbers.map(one => one.text), marks);
        }
        function test_whichSideLiesUpIsSaid() {
            verify(findChild(screen, "cardLies").text.indexOf(demo.bench.lies) === 0);
            verify(demo.bench.lies !== "");
        }
    }
}
