pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme

// Every standing of a wait: its verb with its time, and its outline on three hours.
Grid {
    id: root

    columns: 2
    columnSpacing: Metrics.mm(6)
    rowSpacing: Metrics.mm(1.4)

    readonly property var rising: [Qt.point(0.6, 0), Qt.point(0.6, 0.2), Qt.point(1, 0.5), Qt.point(1.5, 0.8), Qt.point(3, 0.8)]
    readonly property var tack: [Qt.point(0.6, 0), Qt.point(0.6, 0.2), Qt.point(0.9, 0.5), Qt.point(1.2, 0.8), Qt.point(2, 0.8), Qt.point(2.4, 0.5), Qt.point(2.7, 0.2), Qt.point(2.7, 0)]
    readonly property var risen: [Qt.point(0, 0.35), Qt.point(0.5, 0.8), Qt.point(3, 0.8)]
    readonly property var caught: [Qt.point(0, 1), Qt.point(1, 1), Qt.point(1.6, 0.5), Qt.point(2, 0.2), Qt.point(2, 0)]

    Repeater {
        model: [
            { brief: "test 10:50", told: "drying", points: root.rising, lead: 0.6 },
            { brief: "test now", told: "may be dry", points: root.risen, lead: 0 },
            { brief: "ready", told: "found dry by touch", points: [Qt.point(0, 1), Qt.point(3, 1)], lead: 0, solid: true },
            { brief: "tack 10:50", told: "to be caught", points: root.tack, lead: 0.6, window: true },
            { brief: "open to 12:05", told: "found open", points: root.caught, lead: 0, window: true, solid: true },
            { brief: "closed 10:02", told: "likely gone", points: [], lead: 0, window: true, closed: true },
            { brief: "about 10:50", told: "after the power was off", points: root.rising, lead: 0.6, guessed: true }
        ]

        Item {
            id: row

            required property var modelData

            width: Metrics.mm(98)
            height: Metrics.mm(9)

            Words {
                id: brief
                text: row.modelData.brief
                color: row.modelData.window === true ? Theme.worked : Theme.calm
                font.bold: true
                font.pixelSize: Metrics.label
                wrapMode: Text.NoWrap
            }
            Words {
                readonly property double distance: Metrics.deskDistance

                anchors.top: brief.bottom
                text: row.modelData.told
                color: Theme.quiet
                font.pixelSize: Metrics.deskLabel
                wrapMode: Text.NoWrap
            }
            WaitOutline {
                x: Metrics.mm(46)
                width: parent.width - x
                height: Metrics.mm(6)
                points: row.modelData.points
                lead: row.modelData.lead
                hour: Metrics.mm(16.27)
                window: row.modelData.window === true
                solid: row.modelData.solid === true
                closed: row.modelData.closed === true
                guessed: row.modelData.guessed === true
            }
            Rectangle {
                x: Metrics.mm(46)
                y: Metrics.mm(6)
                width: parent.width - x
                height: 2 * Metrics.hairline
                color: Theme.ink
            }
        }
    }
}
