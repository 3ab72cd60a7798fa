import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The desk's fixed frame, for clean hands: the head with the present place, the content beneath.
ScreenBase {
    id: root

    required property string place  // "pieces", "stock", "settings"
    required property WatchViewModel watch
    default property alias content: room.data
    readonly property double distance: Metrics.deskDistance

    doneAction.enabled: false
    actions: [
        ScreenAction {
            name: "to-bench"
            text: qsTr("To the bench")
            filled: true
            place: ScreenAction.TopCorner
            onTriggered: root.asked("bench")
        },
        ScreenAction {
            name: "to-pieces"
            text: qsTr("Pieces")
            chosen: root.place === "pieces"
            place: ScreenAction.Head
            onTriggered: root.asked("pieces")
        },
        ScreenAction {
            name: "to-stock"
            text: qsTr("Materials")
            chosen: root.place === "stock"
            place: ScreenAction.Head
            onTriggered: root.asked("stock")
        },
        ScreenAction {
            name: "to-settings"
            text: qsTr("This tablet")
            chosen: root.place === "settings"
            place: ScreenAction.Head
            onTriggered: root.asked("settings")
        }
    ]

    DeskHead {
        id: head
        x: Metrics.deskMargin
        y: Metrics.mm(2.4)
        width: root.width - 2 * x
        area: root
        time: root.watch.time
    }
    Item {
        id: room
        anchors.top: head.bottom
        anchors.topMargin: Metrics.mm(2.6)
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Metrics.mm(2.4)
        x: head.x
        width: head.width
    }
}
