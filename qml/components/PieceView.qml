pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// A drawing in the colours of the screen. The numbers of an act's sentences stand over it as they do before the sentences.
PieceItem {
    id: root

    // How many sentences stand beside it: the number of one that is not to be read is not shown.
    property int numbered: 0

    appearances: Shop.appearances
    ink: Theme.ink
    pencil: Theme.pencil
    worked: Theme.worked
    ground: Theme.ground
    cloth: Theme.cloth
    hairline: Metrics.hairline

    Repeater {
        model: root.numbered > 0 ? root.numerals : []

        NumberDisc {
            id: disc

            required property var modelData

            visible: number <= root.numbered
            x: Math.max(0, Math.min(root.width - width, modelData.x - width / 2))
            y: Math.max(0, Math.min(root.height - height, modelData.y - height / 2))
            number: modelData.number

            // A rim that parts it from what it stands on.
            Rectangle {
                z: -1
                anchors.fill: parent
                anchors.margins: -Metrics.mm(0.6)
                radius: width / 2
                color: Theme.ground
            }
        }
    }
}
