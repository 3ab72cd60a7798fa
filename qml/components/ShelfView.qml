pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Shapes
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The shelf: three rows of waits in the order of their next events, over the clock's hours. The last row counts what
// has no row of its own.
Item {
    id: root

    required property ShelfModel shelf
    readonly property double margin: Metrics.mm(3)
    readonly property double rowHeight: Metrics.mm(6.6)
    readonly property double axisY: Math.min(Metrics.mm(21), height - Metrics.mm(7))
    readonly property int rowsShown: Math.max(1, Math.min(3, Math.floor(axisY / rowHeight)))
    readonly property int hidden: Math.max(0, shelf.count - rowsShown)
    // An hour is 96 px on a tablet of 5.9 px to the mm, always.
    readonly property double hour: Metrics.mm(16.27)
    readonly property bool folded: shelf.beyond !== ""
    readonly property double beyondWidth: Metrics.mm(17)
    readonly property double axisRight: width - margin
    readonly property double axisLeft: axisRight - beyondWidth - shelf.foldHours * hour
    readonly property double foldX: axisLeft + shelf.foldHours * hour
    readonly property bool empty: shelf.count === 0

    clip: true

    Words {
        objectName: "nothing"
        visible: root.empty || root.shelf.unknown !== ""
        x: root.margin
        y: root.empty ? Metrics.mm(2) : root.height - height
        width: (root.empty ? root.axisRight : now.x - Metrics.mm(2)) - x
        text: root.shelf.unknown === "" ? qsTr("Nothing is drying.") : root.empty ? root.shelf.unknown : qsTr("not all is known")
        color: root.shelf.unknown === "" ? Theme.quiet : Theme.worked
        font.pixelSize: Metrics.label
        lineHeight: 1
    }
    // The hours stand behind the outlines.
    Repeater {
        model: root.empty ? [] : root.shelf.hourPlaces

        Rectangle {
            required property double modelData

            visible: modelData < root.shelf.foldHours
            x: root.axisLeft + modelData * root.hour
            y: Metrics.mm(1)
            width: Metrics.hairline
            height: root.axisY - y + Metrics.mm(1.5)
            color: Theme.hair
        }
    }
    Repeater {
        id: rows
        model: root.shelf

        ShelfRow {
            visible: index < root.rowsShown
            x: root.margin
            y: root.axisY - (root.rowsShown - index) * root.rowHeight
            width: root.axisRight - x
            height: root.rowHeight
            axisLeft: root.axisLeft - x
            hour: root.hour
            foldHours: root.shelf.foldHours
            beyondLeft: root.foldX + Metrics.mm(2.5) - x
            before: index === root.rowsShown - 1 && root.hidden > 0 ? qsTr("and %1 more, first").arg(root.hidden + 1) : ""
        }
    }
    Rectangle {
        visible: !root.empty
        x: root.margin
        y: root.axisY
        width: root.axisRight - x
        height: 4 * Metrics.hairline
        color: Theme.ink
    }
    // Two zigzags on the ground of the shelf: what lies beyond is on no scale.
    Repeater {
        model: root.folded ? 2 : 0

        Shape {
            required property int index

            x: root.foldX + Metrics.mm(0.4) + index * Metrics.mm(0.9)
            width: Metrics.mm(1)
            height: root.axisY + Metrics.mm(1.5)

            ShapePath {
                strokeColor: Theme.quiet
                strokeWidth: Metrics.hairline
                fillColor: "transparent"

                PathPolyline {
                    path: Array.from({ length: 9 }, (_, i) => Qt.point(i % 2 * Metrics.mm(1), i / 8 * (root.axisY + Metrics.mm(1.5))))
                }
            }
        }
    }
    Rectangle {
        visible: !root.empty
        x: root.axisLeft
        y: root.axisY - Metrics.mm(1)
        width: Metrics.mm(1)
        height: Metrics.mm(2.4)
        color: Theme.ink
    }
    Words {
        id: now
        visible: !root.empty
        x: root.axisLeft - width / 2
        y: root.axisY + Metrics.mm(1.2)
        text: qsTr("now")
        font.bold: true
        font.pixelSize: Metrics.label
        lineHeight: 1
    }
    Words {
        id: beyond
        objectName: "beyond"
        visible: root.folded && !root.empty
        x: root.axisRight - width
        y: now.y
        text: root.shelf.beyond
        color: Theme.quiet
        font.pixelSize: Metrics.label
        lineHeight: 1
    }
    Repeater {
        model: root.empty ? [] : root.shelf.hourNames

        Words {
            required property string modelData
            required property int index
            // Places and names change one after the other.
            readonly property double place: root.shelf.hourPlaces[index] ?? 0

            x: root.axisLeft + place * root.hour - width / 2
            y: now.y
            // An hour is named where there is room between the present and what lies beyond.
            visible: place < root.shelf.foldHours && x > now.x + now.width + Metrics.mm(0.6) && x + width < (root.folded ? beyond.x - Metrics.mm(0.6) : root.axisRight + root.margin)
            text: modelData
            color: Theme.quiet
            font.pixelSize: Metrics.label
            lineHeight: 1
        }
    }
    Words {
        objectName: "silent"
        visible: root.shelf.silent && (root.empty || root.shelf.unknown === "")
        x: root.margin
        y: now.y
        text: qsTr("alerts silent")
        color: Theme.worked
        font.bold: true
        font.pixelSize: Metrics.label
        lineHeight: 1
    }
}
