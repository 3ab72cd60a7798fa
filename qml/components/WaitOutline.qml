import QtQuick
import QtQuick.Shapes
import Mountwright.Theme

// The outline of one wait on the hours ahead: how many of ten such waits are ready by then. Dotted until it begins,
// hollow until it was found by touch, broken where nobody knows how long the machine was off, struck through once it
// is likely gone.
Item {
    id: root

    property var points: []
    property double lead: 0
    property double hour: 1
    property bool window: false
    property bool solid: false
    property bool closed: false
    property bool guessed: false
    // A sign of what begins later than the hours reach: it has no hour to be measured by.
    property bool beyond: false
    readonly property color ink: window ? Theme.worked : Theme.calm
    readonly property double line: 2.5 * Metrics.hairline
    readonly property double unit: beyond ? width : hour
    readonly property double begins: beyond ? 0.4 : lead
    readonly property var outline: beyond ? [Qt.point(0.4, 0), Qt.point(0.4, 0.2), Qt.point(0.6, 0.5), Qt.point(0.75, 0.8), Qt.point(1.2, 0.8)] : points
    // Half a line of room above and below, so that no edge is cut off.
    function placed(point: point): point {
        return Qt.point(point.x * unit, height - line / 2 - point.y * (height - line));
    }
    readonly property var edge: outline.map(point => placed(point))
    readonly property var area: {
        if (edge.length < 2)
            return [];
        const ground = height - line / 2;
        return [Qt.point(edge[0].x, ground), ...edge, Qt.point(edge[edge.length - 1].x, ground), Qt.point(edge[0].x, ground)];
    }

    clip: true

    Shape {
        visible: root.begins > 0
        width: root.width
        height: root.height

        ShapePath {
            strokeColor: root.ink
            strokeWidth: root.line
            strokeStyle: ShapePath.DashLine
            dashPattern: [1, 2.2]
            capStyle: ShapePath.FlatCap
            startX: 0
            startY: root.height - root.line / 2

            PathLine {
                x: Math.min(root.begins * root.unit, root.width)
                y: root.height - root.line / 2
            }
        }
    }
    Shape {
        // An outline wholly out of the room would be drawn past it: an empty clip clips nothing.
        visible: root.area.length > 0 && !root.closed && root.edge[0].x < root.width
        width: root.width
        height: root.height

        ShapePath {
            strokeWidth: -1
            fillColor: root.guessed ? "transparent" : root.solid ? root.ink : root.window ? Theme.workedTint : Theme.calmTint

            PathPolyline {
                path: root.area
            }
        }
        ShapePath {
            strokeColor: root.ink
            strokeWidth: root.line
            strokeStyle: root.guessed ? ShapePath.DashLine : ShapePath.SolidLine
            dashPattern: [3, 2]
            fillColor: "transparent"
            joinStyle: ShapePath.MiterJoin

            PathPolyline {
                path: root.edge
            }
        }
    }
    // What closed lies at the present: a trapezium, struck through.
    Shape {
        visible: root.closed
        width: root.width
        height: root.height

        ShapePath {
            readonly property double unit: root.height

            strokeColor: root.ink
            strokeWidth: root.line
            fillColor: Theme.workedTint
            startX: root.line / 2
            startY: root.height - root.line / 2

            PathPolyline {
                path: [Qt.point(root.line / 2, root.height - root.line / 2), Qt.point(root.line / 2, root.height * 0.25), Qt.point(root.height, root.height * 0.25), Qt.point(root.height * 1.4, root.height * 0.6), Qt.point(root.height * 1.4, root.height - root.line / 2), Qt.point(root.line / 2, root.height - root.line / 2)]
            }
        }
        ShapePath {
            strokeColor: root.ink
            strokeWidth: 1.5 * root.line
            fillColor: "transparent"
            startX: root.line
            startY: root.height - root.line
            PathLine {
                x: root.height * 1.6
                y: root.line
            }
        }
    }
}
