import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// The scale of what is drawn, as a length with its ends: the longest round one that is not wider than its room.
Item {
    id: root

    required property double pixels  // to a mm of what is drawn
    required property bool inches
    property double room: Metrics.mm(14)
    readonly property double unit: inches ? 25.4 : 1
    readonly property list<int> rounds: inches ? [20, 10, 4, 2, 1] : [500, 200, 100, 50, 20, 10]
    readonly property int length: {
        for (let i = 0; i < rounds.length; ++i) {
            if (rounds[i] * unit * pixels <= room)
                return rounds[i];
        }
        return rounds[rounds.length - 1];
    }

    implicitWidth: figure.implicitWidth + Metrics.mm(2) + line.width
    implicitHeight: figure.implicitHeight
    width: implicitWidth
    height: implicitHeight

    Words {
        id: figure
        text: root.inches ? qsTr("%1 in").arg(root.length) : qsTr("%1 mm").arg(root.length)
        color: Theme.quiet
        font.pixelSize: Metrics.deskText
        wrapMode: Text.NoWrap
    }
    Rectangle {
        id: line
        objectName: "scaleLine"
        x: figure.implicitWidth + Metrics.mm(2)
        anchors.verticalCenter: figure.verticalCenter
        width: root.length * root.unit * root.pixels
        height: 2 * Metrics.hairline
        color: Theme.ink

        Rectangle {
            anchors.verticalCenter: parent.verticalCenter
            width: parent.height
            height: Metrics.mm(2.6)
            color: Theme.ink
        }
        Rectangle {
            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            width: parent.height
            height: Metrics.mm(2.6)
            color: Theme.ink
        }
    }
}
