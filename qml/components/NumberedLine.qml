import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// A sentence of several, with its number on a dark disc as it stands in the drawing.
Item {
    id: root

    required property int number
    required property string text
    property int textSize: Metrics.text

    implicitHeight: Math.max(disc.height, said.implicitHeight)
    height: implicitHeight

    Rectangle {
        id: disc
        y: Metrics.mm(0.6)
        width: Math.ceil(Metrics.label * 1.28)
        height: width
        radius: width / 2
        color: Theme.ink

        Words {
            anchors.fill: parent
            text: root.number
            color: Theme.ground
            font.bold: true
            font.pixelSize: Metrics.label
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.NoWrap
            lineHeight: 1
        }
    }
    Words {
        id: said
        x: disc.width + Metrics.mm(2.4)
        width: root.width - x
        text: root.text
        font.pixelSize: root.textSize
    }
}
