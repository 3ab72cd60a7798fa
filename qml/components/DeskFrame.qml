pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// The desk's fixed frame, for clean hands: the present place and the others along the top, the content beneath.
ScreenBase {
    id: root

    required property string place  // "pieces", "stock", "settings"
    default property alias content: room.data
    readonly property double margin: Metrics.mm(3)
    readonly property double distance: Metrics.deskDistance

    doneAction.enabled: false
    actions: [
        ScreenAction {
            name: "to-bench"
            text: qsTr("To the bench")
            filled: true
            place: ScreenAction.Head
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

    Row {
        id: head
        x: root.margin
        y: root.margin
        spacing: Metrics.deskGap

        ActionKeys {
            area: root
            place: ScreenAction.Head

            TouchKey {
                required property ScreenAction modelData

                offers: modelData
                width: Metrics.mm(34)
                height: Metrics.mm(11)
                legendSize: Metrics.deskText
            }
        }
    }
    Item {
        id: room
        anchors.top: head.bottom
        anchors.topMargin: Metrics.mm(3)
        anchors.bottom: parent.bottom
        anchors.bottomMargin: root.margin
        x: root.margin
        width: root.width - 2 * x
    }
}
