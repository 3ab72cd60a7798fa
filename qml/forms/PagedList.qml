import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// A list of which what does not fit is a key away.
Item {
    id: root

    // Its keys are called after it.
    required property string name
    // What it lies on.
    property color ground: Theme.ground
    property alias model: list.model
    property alias delegate: list.delegate
    property alias spacing: list.spacing
    property alias list: list
    // This is measured against the whole room, so that the keys shown on overflow do not affect the result.
    readonly property bool overflows: list.contentHeight > height + 1

    Item {
        id: room
        anchors.fill: parent
        anchors.bottomMargin: root.overflows ? Metrics.deskKey + Metrics.mm(1.5) : 0
        // Qt's software renderer draws a shape that lies wholly beyond the edge of a clip as if there were none; in a layer,
        // which has a ground of its own, it cannot.
        layer.enabled: GraphicsInfo.api === GraphicsInfo.Software

        Rectangle {
            anchors.fill: parent
            visible: room.layer.enabled
            color: root.ground
        }
        ListView {
            id: list
            anchors.fill: parent
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            spacing: Metrics.mm(1)
        }
    }
    Row {
        anchors.bottom: parent.bottom
        visible: root.overflows
        spacing: Metrics.deskGap

        TouchKey {
            width: (root.width - Metrics.deskGap) / 2
            height: Metrics.deskKey
            legendSize: Metrics.deskText
            stays: true
            offers: ScreenAction {
                name: root.name + "Up"
                text: qsTr("Up")
                enabled: root.visible && root.overflows && !list.atYBeginning
                onTriggered: list.contentY = Math.max(list.originY, list.contentY - list.height * 0.8)
            }
        }
        TouchKey {
            width: (root.width - Metrics.deskGap) / 2
            height: Metrics.deskKey
            legendSize: Metrics.deskText
            stays: true
            offers: ScreenAction {
                name: root.name + "Down"
                text: qsTr("Down")
                enabled: root.visible && root.overflows && !list.atYEnd
                onTriggered: list.contentY = Math.min(list.originY + list.contentHeight - list.height, list.contentY + list.height * 0.8)
            }
        }
    }
}
