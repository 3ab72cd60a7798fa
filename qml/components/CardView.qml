pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The back of a board with all the numbers of the act at their places: the one in hand in ink, the others in pencil.
CardItem {
    id: root

    ink: Theme.ink
    pencil: Theme.pencil
    worked: Theme.worked
    ground: Theme.ground
    opening: Theme.card
    hairline: Metrics.hairline
    textSize: Metrics.label
    family: Metrics.family
    // Smaller than the triangle at its corner and the numbers round it, a board says nothing.
    shortest: Metrics.mm(14)

    Repeater {
        model: root.numbers

        Words {
            required property var modelData

            objectName: modelData.current ? "currentNumber" : "cardNumber"
            x: modelData.x
            y: modelData.y
            width: modelData.width
            height: modelData.height
            text: modelData.text
            color: modelData.current ? Theme.worked : Theme.quiet
            font.bold: modelData.current
            font.pixelSize: root.textSize
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.NoWrap
            lineHeight: 1
        }
    }
}
