pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The back of a board with what the act makes on it: the number in hand in its dimension, lines that are made in ink,
// those to come in dots.
CardItem {
    id: root

    ink: Theme.ink
    pencil: Theme.pencil
    worked: Theme.worked
    ground: Theme.ground
    cloth: Theme.cloth
    hairline: Metrics.hairline
    // The number stands large in the list; here the board has the room.
    textSize: Metrics.label
    wordSize: Metrics.label
    family: Metrics.family
    // Smaller than the triangle at its corner and the words round it, a board says nothing.
    shortest: Metrics.mm(14)

    Repeater {
        model: root.texts

        Words {
            required property var modelData

            objectName: modelData.worked ? "cardNumber" : "cardWord"
            x: modelData.x
            y: modelData.y
            width: modelData.width
            height: modelData.height
            text: modelData.text
            color: modelData.onBoard ? (modelData.worked ? root.workedOnBoard : root.inkOnBoard) : modelData.worked ? Theme.worked : Theme.quiet
            font.bold: modelData.worked
            font.pixelSize: modelData.worked ? root.textSize : root.wordSize
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.NoWrap
            lineHeight: 1
        }
    }
}
