import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One part of the sheet under its heading, with what it shows below.
Column {
    id: root

    required property string heading
    default property alias shown: room.data

    width: parent.width
    spacing: Metrics.mm(2)
    bottomPadding: Metrics.mm(3)

    Rectangle {
        width: root.width
        height: 2 * Metrics.hairline
        color: Theme.ink
    }
    Words {
        readonly property double distance: Metrics.deskDistance

        width: root.width
        text: root.heading
        font.bold: true
        font.pixelSize: Metrics.deskLabel
    }
    Column {
        id: room
        width: root.width
        spacing: Metrics.mm(2)
    }
}
