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
    // As a key it has an edge, which nothing printed on it crosses.
    readonly property double inset: Metrics.mm(1.6)
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
        width: (root.empty ? root.axisRight : root.axisLeft - Metrics.mm(8)) - x
        text: root.shelf.unknown === "" ? qsTr("Nothing is drying.") : root.empty ? root.shelf.unknown : qsTr("not all is known")
        color: root.shelf.unknown === "" ? Theme.quiet : Theme.worked
        font.pixelSize: Metrics.label
        lineHeight: 1
    }
    HourAxis {
        id: axis
        visible: !root.empty
        x: root.margin
        y: root.axisY
        width: root.axisRight - x
        height: root.height - y
        shelf: root.shelf
        axisLeft: root.axisLeft - x
        from: 0
        hour: root.hour
        hours: root.shelf.foldHours
        folded: root.folded
        rise: root.axisY - root.inset
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
    // Two zigzags on the ground of the shelf: what lies beyond is on no scale.
    Repeater {
        model: root.folded ? 2 : 0

        Shape {
            required property int index

            x: root.foldX + Metrics.mm(0.4) + index * Metrics.mm(0.9)
            y: root.inset
            width: Metrics.mm(1)
            height: root.axisY + Metrics.mm(1.5) - y

            ShapePath {
                strokeColor: Theme.quiet
                strokeWidth: Metrics.hairline
                fillColor: "transparent"

                PathPolyline {
                    path: Array.from({ length: 9 }, (_, i) => Qt.point(i % 2 * Metrics.mm(1), i / 8 * (root.axisY + Metrics.mm(1.5) - root.inset)))
                }
            }
        }
    }
    Words {
        objectName: "silent"
        visible: root.shelf.silent && (root.empty || root.shelf.unknown === "")
        x: root.margin
        y: root.axisY + axis.namesTop
        text: qsTr("alerts silent")
        color: Theme.worked
        font.bold: true
        font.pixelSize: Metrics.label
        lineHeight: 1
    }
}
