pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Theme

// How far a piece has come, as a rule of tenths: what is done is inked.
Item {
    id: root

    required property int done
    required property int all
    readonly property double share: all > 0 ? Math.min(1, done / all) : 0

    implicitHeight: Metrics.mm(3)
    height: implicitHeight

    Rectangle {
        anchors.verticalCenter: parent.verticalCenter
        width: parent.width
        height: Metrics.hairline
        color: Theme.pencil
    }
    Rectangle {
        objectName: "inked"
        anchors.verticalCenter: parent.verticalCenter
        width: Math.round(parent.width * root.share)
        height: Metrics.mm(1.2)
        color: Theme.ink
    }
    Repeater {
        model: 11

        Rectangle {
            required property int index

            x: Math.round(index * (root.width - width) / 10)
            width: Metrics.hairline
            height: root.height
            color: Theme.pencil
        }
    }
}
