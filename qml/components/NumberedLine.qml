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

    NumberDisc {
        id: disc
        y: Metrics.mm(0.6)
        number: root.number
    }
    Words {
        id: said
        x: disc.width + Metrics.mm(2.4)
        width: root.width - x
        text: root.text
        font.pixelSize: root.textSize
    }
}
