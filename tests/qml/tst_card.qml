import QtQuick
import QtTest
import Mountwright.Bench
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme

// The cutter's card: the drawing of a board's back, the list of its numbers, and both on the bench.
Item {
    id: root
    width: 1280
    height: 800
    property int overs: 0

    CardView {
        id: card
        width: 578
        height: 384
        visible: shown
        figure: demo.bench.figure
    }
    CardList {
        id: list
        x: 600
        width: 440
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
    MorePage {
        id: more
        anchors.fill: parent
        visible: false
        bench: demo.bench
        watch: demo.watch
        settings: demo.settings
        shelf: demo.shelf
        onOver: root.overs += 1
    }
    TestCase {
        name: "Card"
        when: windowShown

        function initTestCase() {
            verify(stage.workUntilStep("/mark-window@"));
            verify(demo.bench.figure.hasCard);
        }
        function init() {
            demo.bench.figure.begin();
            list.height = 384;
            list.refusal = "";
            list.below = "";
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
                if (child.objectName === name && child.visible)
                    found.push(child);
                found = found.concat(textsNamed(child, name));
            }
            return found;
        }
        function toTheLast() {
            while (demo.bench.figure.onward())
                continue;
        }

        function test_oneNumberStandsInItsDimensionAndTheSidesAreNamed() {
            verify(card.shown);
            const numbers = textsNamed(card, "cardNumber");
            compare(numbers.length, 1);
            compare(numbers[0].text, demo.bench.figure.plain);
            verify(numbers[0].text.indexOf(demo.bench.figure.unit) > 0);
            const words = textsNamed(card, "cardWord").map(one => one.text);
            compare(words, ["top", "left", "right", "window"]);
        }
        function test_theNumberIsTheOneInHand() {
            const before = textsNamed(card, "cardNumber")[0].text;
            verify(Qt.colorEqual(textsNamed(card, "cardNumber")[0].color, Theme.worked));
            verify(demo.bench.figure.onward());
            const after = textsNamed(card, "cardNumber");
            compare(after.length, 1);
            verify(after[0].text !== before);
        }
        function test_neitherBoardNorWordsMoveWhenAnotherIsTaken() {
            const places = () => textsNamed(card, "cardWord").map(one => one.text + "@" + one.x + "," + one.y);
            const before = places();
            demo.bench.figure.onward();
            compare(places(), before);
        }
        function test_numberAndWordsKeepTheSizeOfALabel() {
            for (const text of textsNamed(card, "cardNumber").concat(textsNamed(card, "cardWord"))) {
                compare(text.font.pixelSize, Metrics.label);
                verify(text.contentWidth <= text.width + 1);
            }
        }
        function test_whereThereIsNoRoomNothingIsShown() {
            card.width = 150;
            verify(!card.shown);
            compare(card.texts.length, 0);
            card.width = 578;
            verify(card.shown);
        }
        function test_wordsOnALightBoardAreDarkByLampToo() {
            Theme.lamp = true;
            const word = textsNamed(card, "cardWord").filter(one => one.text === "window")[0];
            verify(word.color.hslLightness < 0.3);
            verify(textsNamed(card, "cardWord").filter(one => one.text === "left")[0].color.hslLightness > 0.6);
            Theme.lamp = false;
        }

        function test_theListIsGroupedByEdgeInTheOrderOfUse() {
            const headings = textsNamed(list, "cardHeading").map(one => one.text);
            compare(headings[0], "from the right edge, in");
            compare(findChild(list, "what").text, "right side");
            compare(textsNamed(list, "cardRow")[0].text, "left side");
        }
        function test_whatIsDoneIsTickedAndTheOneInHandIsLargest() {
            toTheLast();
            compare(textsNamed(list, "cardRow").map(one => one.text), ["right side", "left side", "top side"].slice(-textsNamed(list, "cardRow").length));
            const number = findChild(list, "figure");
            verify(number.wholeSize >= Metrics.figureLeast);
            compare(findChild(list, "what").text, "bottom side");
            compare(number.whole, demo.bench.figure.whole);
        }
        function test_whatHasNoRoomIsCounted() {
            tryVerify(() => list.fits);
            const all = demo.bench.figure.settings.length;
            const more = textsNamed(list, "more");
            const rows = textsNamed(list, "cardRow").length;
            compare(more.length, rows + 1 < all ? 1 : 0);
            if (more.length > 0)
                compare(more[0].text, "%1 more".arg(all - rows - 1));
            // In less height fewer rows stand there, and each is still counted.
            list.height = 240;
            tryVerify(() => list.fits);
            compare(textsNamed(list, "cardRow").length, 0);
            compare(textsNamed(list, "more").concat(textsNamed(list, "moreBeside")).map(one => one.text), ["3 more"]);
        }
        function test_allThatTheCutterIsSetToIsOpenedAsOne() {
            demo.settings.turnWay();
            verify(demo.bench.figure.stops < demo.bench.figure.settings.length);
            while (!textsNamed(list, "ofCutter").length)
                verify(demo.bench.figure.onward());
            compare(textsNamed(list, "ofCutter").length, 4);
            verify(!findChild(list, "what").visible);
            list.height = 240;
            tryVerify(() => list.fits);
            verify(textsNamed(list, "cardHeading").length > 0);
            demo.settings.turnWay();
        }
        function test_aRefusalStandsAboveTheListAndTakesItsRoom() {
            list.refusal = "First finish the corner.";
            verify(findChild(list, "refusal").visible);
            tryVerify(() => list.fits);
            verify(findChild(list, "opened").mapToItem(list, 0, 0).y >= findChild(list, "refusal").height);
        }
        function test_whatIsCheckedStandsBelowWhereThereIsRoom() {
            list.below = "☐ Was every line taken from its edge?";
            list.height = 700;
            verify(findChild(list, "below").visible);
            list.height = 240;
            verify(!findChild(list, "below").visible);
        }

        function test_onTheBenchNextAndEarlierTurnTheNumberInItsPlace() {
            compare(demo.bench.figure.stop, 0);
            verify(!action("earlier").enabled);
            action("nextNumber").trigger();
            compare(demo.bench.figure.stop, 1);
            verify(action("pedalEarlier").enabled);
            action("pedalEarlier").trigger();
            compare(demo.bench.figure.stop, 0);
            verify(findChild(screen, "cardList").visible !== undefined);
        }
        function test_afterTheLastNextLeadsToTheFirstAndSaysSo() {
            compare(action("nextNumber").text, "Next");
            toTheLast();
            compare(action("nextNumber").text, "First");
            action("nextNumber").trigger();
            compare(demo.bench.figure.stop, 0);
        }
        function test_thePedalGoesOnToTheNextNumberAndOnlyAfterTheLastMeansDone() {
            verify((action("nextNumber").by & ScreenAction.Forward) !== 0);
            screen.ask(ScreenAction.Forward);
            compare(demo.bench.figure.stop, 1);
            screen.ask(ScreenAction.Back);
            compare(demo.bench.figure.stop, 0);
            toTheLast();
            compare(action("nextNumber").by & ScreenAction.Forward, 0);
        }
        function test_doneStandsOutOnceTheLastNumberWasReached() {
            toTheLast();
            verify(screen.doneAction.filled);
            demo.bench.figure.begin();
            verify(screen.doneAction.filled);
        }
        function test_underMoreTheWayOfMarkingIsTurned() {
            const names = () => demo.bench.figure.settings.map(one => one.heading + one.name);
            const marks = names();
            verify(demo.bench.figure.byMarking);
            const turn = findChild(more, "turnMarking").offers;
            compare(turn.text, "By borders");
            turn.trigger();
            compare(root.overs, 1);
            compare(turn.text, "By marks");
            verify(names().join() !== marks.join());
            verify(names().some(one => one.indexOf("from the bottom edge") === 0));
            verify(card.shown);
            turn.trigger();
            compare(names(), marks);
        }
    }
}
