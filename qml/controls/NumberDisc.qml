import QtQuick
import Mountwright.Theme

// A number on a dark disc: of a sentence, and of the part of a drawing the sentence speaks of.
Rectangle {
    id: root

    required property int number

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
