import QtQuick
import QtTest
import Mountwright.Controls

// One list for keys, pedals and keyboard.
Item {
    id: root
    width: 400
    height: 400
    property var asked: []

    ActionArea {
        id: area
        width: 400
        height: 300
        actions: [
            ScreenAction {
                name: "done"
                text: "Done"
                by: ScreenAction.Enter | ScreenAction.Forward
                place: ScreenAction.Corner
                onTriggered: root.asked.push(name)
            },
            ScreenAction {
                id: begin
                name: "begin"
                text: "Begin"
                by: ScreenAction.Forward
                place: ScreenAction.AboveDone
                onTriggered: root.asked.push(name)
            },
            ScreenAction {
                id: more
                name: "more"
                text: "More"
                place: ScreenAction.AboveDone
                onTriggered: root.asked.push(name)
            }
        ]

        Column {
            ActionKeys {
                id: keys
                area: area
                place: ScreenAction.AboveDone

                TouchKey {
                    required property ScreenAction modelData

                    offers: modelData
                }
            }
        }
        Repeater {
            id: list
            model: 0

            TouchKey {
                id: entry

                required property int index

                y: 200
                offers: ScreenAction {
                    name: "entry" + entry.index
                    text: "Entry"
                }
            }
        }
        ActionArea {
            id: page
            actions: ScreenAction {
                name: "page"
                text: "Page"
                by: ScreenAction.Enter
                onTriggered: root.asked.push(name)
            }
        }
    }
    Component {
        id: another

        ScreenAction {
            name: "another"
            text: "Another"
            place: ScreenAction.AboveDone
        }
    }
    TestCase {
        name: "ActionArea"
        when: windowShown

        function init() {
            root.asked = [];
            begin.enabled = true;
            area.inner = null;
            list.model = 0;
        }
        function test_aPedalAsksForTheLastThatIsOffered() {
            area.ask(ScreenAction.Forward);
            begin.enabled = false;
            area.ask(ScreenAction.Forward);
            area.ask(ScreenAction.Enter);
            area.ask(ScreenAction.Heard);
            compare(root.asked, ["begin", "done", "done"]);
        }
        function test_thePageShownAnswersInItsStead() {
            area.inner = page;
            area.ask(ScreenAction.Enter);
            area.ask(ScreenAction.Forward);
            compare(root.asked, ["page"]);
        }
        function test_keysStandInTheOrderOfTheList() {
            compare(keys.count, 2);
            compare(keys.itemAt(0).offers, begin);
            compare(keys.itemAt(1).offers, more);
        }
        function test_aKeyStaysTheSameForAsLongAsItsActionIsThere() {
            const first = keys.itemAt(0);
            begin.enabled = false;
            verify(!first.visible);
            begin.enabled = true;
            compare(keys.itemAt(0), first);
            list.model = 3;
            compare(keys.itemAt(0), first);
        }
        function test_whatStandsInAListComesAndGoesWithIt() {
            compare(area.actions.length, 3);
            list.model = 2;
            compare(area.actions.length, 5);
            list.model = 0;
            tryVerify(() => area.actions.length === 3);
        }
        function test_whatIsOfferedLaterGetsItsKey() {
            const action = another.createObject(root);
            area.offer(action);
            compare(keys.count, 3);
            compare(keys.itemAt(2).offers, action);
            area.offer(action);
            compare(area.actions.length, 4);
            action.destroy();
            tryVerify(() => area.actions.length === 3 && keys.count === 2);
        }
    }
}
