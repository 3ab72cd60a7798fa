pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The foot of a design: what it comes to, or why it cannot go to the bench; and its acts.
Item {
    id: root

    required property DesignViewModel design
    required property ActionArea area
    readonly property bool drags: design.dragged !== ""

    implicitHeight: Math.max(Metrics.deskKey, said.implicitHeight)

    Words {
        id: said
        anchors.verticalCenter: parent.verticalCenter
        width: root.width - keys.width - Metrics.mm(3)
        text: root.drags ? root.design.dragged : root.design.benchReason !== "" ? root.design.benchReason : root.design.tally
        color: root.drags ? Theme.worked : Theme.ink
        font.bold: root.drags
        font.pixelSize: root.drags ? Metrics.deskTitle : Metrics.deskLabel
    }
    Row {
        id: keys
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        spacing: Metrics.deskGap

        ActionKeys {
            area: root.area
            place: ScreenAction.Foot

            TouchKey {
                required property ScreenAction modelData
                readonly property bool onwards: modelData.name === "toBench"

                offers: modelData
                stays: true
                width: onwards ? Metrics.mm(32) : Metrics.mm(17)
                height: Metrics.deskKey
                legendSize: Metrics.deskText
            }
        }
    }
}
