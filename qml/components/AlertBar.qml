pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Shapes
import Mountwright.Theme
import Mountwright.ViewModels

// How long a window can still be caught: its outline over the minutes until it is likely gone, a tick for each, and
// under it until when. Level while it holds; it falls from where it may close.
Item {
    id: root

    required property AlertViewModel alert
    readonly property double minute: alert.barMinutes > 0 ? bar.width / alert.barMinutes : 0
    // Minutes where they can be told apart, else tens of them, else hours.
    readonly property int every: minute >= Metrics.mm(3) ? 1 : minute * 10 >= Metrics.mm(3) ? 10 : 60
    readonly property double closeX: alert.closeMinutes * minute

    visible: alert.gone !== ""
    implicitHeight: gone.y + gone.height
    // On a narrow screen the two words stand one under the other.
    readonly property bool stacked: closes.implicitWidth + gone.implicitWidth + Metrics.mm(2) > width

    Item {
        id: bar
        width: root.width
        height: Metrics.mm(9)

        Shape {
            anchors.fill: parent

            ShapePath {
                strokeWidth: -1
                fillColor: Theme.onAlert

                PathPolyline {
                    path: {
                        const edge = root.alert.bar.map(point => Qt.point(point.x * root.minute, bar.height * (1 - point.y)));
                        return edge.length < 2 ? [] : [Qt.point(edge[0].x, bar.height), ...edge, Qt.point(edge[edge.length - 1].x, bar.height), Qt.point(edge[0].x, bar.height)];
                    }
                }
            }
        }
        Repeater {
            model: root.every > 0 ? Math.max(0, Math.ceil(root.alert.barMinutes / root.every) - 1) : 0

            Rectangle {
                required property int index

                objectName: "tick"
                x: (index + 1) * root.every * root.minute
                width: 2 * Metrics.hairline
                height: bar.height
                color: Theme.alertGround
            }
        }
        Repeater {
            model: root.alert.closeMinutes > 0 ? [root.closeX, bar.width] : [bar.width]

            Rectangle {
                required property double modelData

                x: Math.min(modelData, bar.width - width)
                y: -Metrics.mm(1.5)
                width: Metrics.mm(1)
                height: bar.height + Metrics.mm(3)
                color: Theme.onAlert
            }
        }
    }
    FarWords {
        id: closes
        objectName: "closes"
        visible: root.alert.mayClose !== ""
        y: bar.height + Metrics.mm(1.4)
        text: root.alert.mayClose
        color: Theme.onAlert
        font.bold: true
        wrapMode: Text.NoWrap
    }
    FarWords {
        id: gone
        objectName: "gone"
        x: root.stacked ? 0 : root.width - width
        y: closes.y + (root.stacked && closes.visible ? closes.height + Metrics.mm(1) : 0)
        text: root.alert.gone
        color: Theme.onAlert
        font.bold: true
        wrapMode: Text.NoWrap
    }
}
