import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One line of a sheet that goes with the piece: what it says, its values, and whence they are known.
Column {
    id: root

    required property string title
    required property string of
    required property string value
    required property string note
    readonly property double gap: Metrics.mm(4)

    Words {
        width: root.width
        visible: root.of !== ""
        topPadding: Metrics.mm(3)
        bottomPadding: Metrics.mm(1)
        text: root.of
        font.bold: true
        font.pixelSize: Metrics.deskTitle
    }
    Item {
        width: root.width
        height: Math.max(label.height, values.height, known.height) + Metrics.mm(1.4)

        Words {
            id: label
            width: root.width * 0.3
            text: root.title
            color: Theme.quiet
            font.pixelSize: Metrics.deskText
        }
        Words {
            id: values
            x: label.width + root.gap
            width: parent.width - x - root.gap - known.width
            text: root.note
            font.pixelSize: Metrics.deskText
        }
        Words {
            id: known
            anchors.right: parent.right
            anchors.baseline: values.baseline
            width: Math.min(implicitWidth, root.width * 0.2)
            horizontalAlignment: Text.AlignRight
            text: root.value
            color: Theme.quiet
            font.pixelSize: Metrics.deskLabel
        }
    }
    Rectangle {
        width: parent.width
        height: Metrics.hairline
        color: Theme.hair
    }
}
