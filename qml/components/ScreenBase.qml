import QtQuick
import Mountwright.Controls

// The base of every screen. A screen is created when it is entered and destroyed when it is left.
ActionArea {
    id: root

    // While the maker is not busy in it, the screens of the off time, of a touch test and the far face may open by
    // themselves.
    property bool idle: false

    // Asks for the screen of that name.
    signal asked(screen: string)
    // Asks for the screen the maker came from.
    signal leave
    // Asks for the bench, leaving all screens in between.
    signal over
    // The step on the bench is done, as far as this screen knows.
    signal stepDone

    // These are the acts of Done and Back in this screen.
    function done() {
    }
    function back() {
        leave();
    }
    // The screen is about to be destroyed.
    function closed() {
    }
    // A key, a touch or a pedal shows that the maker is there.
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
