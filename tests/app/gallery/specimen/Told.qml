import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One thing of the sheet and, beneath it, what it is.
Column {
    id: root

    required property string told
    default property alias shown: room.data

    spacing: Metrics.mm(1)

    Item {
        id: room
        width: Math.max(childrenRect.width, words.implicitWidth)
        height: childrenRect.height
    }
    Words {
        id: words

        readonly property double distance: Metrics.deskDistance

        text: root.told
        color: Theme.quiet
        font.pixelSize: Metrics.deskLabel
        wrapMode: Text.NoWrap
    }
}
