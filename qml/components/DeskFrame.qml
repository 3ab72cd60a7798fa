pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// The desk's fixed frame, for clean hands: where one is and where one can go along the top, the room beneath.
ScreenBase {
    id: root

    required property string place  // "pieces", "stock", "settings"
    default property alias content: room.data
    readonly property double margin: Metrics.mm(3)
    readonly property double distance: Metrics.deskDistance

    Row {
        id: head
        x: root.margin
        y: root.margin
        spacing: Metrics.deskGap

        Repeater {
            model: [
                {
                    "screen": "bench",
                    "called": qsTr("To the bench")
                },
                {
                    "screen": "pieces",
                    "called": qsTr("Pieces")
                },
                {
                    "screen": "stock",
                    "called": qsTr("Materials")
                },
                {
                    "screen": "settings",
                    "called": qsTr("This tablet")
                }
            ]

            TouchKey {
                required property var modelData

                objectName: "to-" + modelData.screen
                width: Metrics.mm(34)
                height: Metrics.mm(11)
                legendSize: Metrics.deskText
                legend: modelData.called
                filled: root.place === modelData.screen
                onActed: root.asked(modelData.screen)
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
