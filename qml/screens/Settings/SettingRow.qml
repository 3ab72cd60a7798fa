import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One setting: its name and meaning on the left, its keys on the right.
Item {
    id: root

    required property string called
    property string meaning: ""
    property bool grave: false
    default property alias content: keys.data

    height: Math.max(keys.height, said.height) + Metrics.mm(3)

    Column {
        id: said
        anchors.verticalCenter: parent.verticalCenter
        width: parent.width - keys.width - Metrics.mm(6)

        Words {
            width: parent.width
            text: root.called
            font.bold: true
            font.pixelSize: Metrics.deskTitle
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.meaning
            color: root.grave ? Theme.worked : Theme.quiet
            font.bold: root.grave
            font.pixelSize: Metrics.deskText
        }
    }
    Row {
        id: keys
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        spacing: Metrics.deskGap
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: Metrics.hairline
        color: Theme.hair
    }
}
