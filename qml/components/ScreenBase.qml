import QtQuick
import Mountwright.Controls

// A room of the house, with a door. It is made when it is entered and gone when it is left.
ActionArea {
    id: root

    // Nothing is under way in it: the off time, a touch test or the far face may come up by themselves.
    property bool idle: false

    // To the screen of that name.
    signal asked(screen: string)
    // Back to where one came from.
    signal leave
    // To the bench, past all that lies between.
    signal over
    // The step on the bench is done, as far as this screen knows.
    signal stepDone

    // What Done and Back do in it.
    function done() {
    }
    function back() {
        leave();
    }
    // It is left for good.
    function closed() {
    }
    // A key, a touch or a pedal: somebody is there.
    function noticed() {
    }

    readonly property alias doneAction: onwards
    readonly property alias backAction: backwards
    actions: [
        ScreenAction {
            id: onwards
            name: "done"
            text: qsTr("Done")
            place: ScreenAction.NoKey
            by: ScreenAction.Enter | ScreenAction.Forward
            onTriggered: root.done()
        },
        ScreenAction {
            id: backwards
            name: "back"
            text: qsTr("Back")
            place: ScreenAction.NoKey
            by: ScreenAction.Back
            onTriggered: root.back()
        }
    ]
}
