import QtQuick
import QtQuick.Shapes
import Mountwright.Theme

// The face of a key, cut like a board: raised with a mitred edge that is lit from the top left while it can be pressed,
// sunk while it is pressed or chosen, a dotted outline while it cannot be used.
Item {
    id: root

    property bool sunk: false
    property bool usable: true
    // A frame round the key that the keyboard is at.
    property bool pointed: false
    property color face: Theme.card
    property color lit: Theme.keyLit
    property color shade: Theme.keyShade
    property color line: Theme.keyLine
    property color frame: Theme.ink
    property double edge: Math.min(width, height) < Metrics.mm(18) ? Metrics.mm(0.8) : Metrics.mm(1.4)

    Rectangle {
        visible: root.pointed
        anchors.fill: parent
        anchors.margins: -Metrics.mm(1)
        color: "transparent"
        border.color: root.frame
        border.width: Metrics.mm(1)
    }
    Rectangle {
        visible: root.usable
        anchors.fill: parent
        color: root.face
        border.color: root.line
        border.width: Metrics.hairline
    }
    Shape {
        visible: root.usable
        anchors.fill: parent

        // The two sides towards the light, and the two away from it; a sunk key has them changed.
        ShapePath {
            strokeWidth: -1
            fillColor: root.sunk ? root.shade : root.lit
            PathPolyline {
                path: root.sides(true)
            }
        }
        ShapePath {
            strokeWidth: -1
            fillColor: root.sunk ? root.lit : root.shade
            PathPolyline {
                path: root.sides(false)
            }
        }
    }
    Rectangle {
        visible: root.usable
        anchors.fill: parent
        anchors.margins: root.edge
        color: "transparent"
        border.color: root.line
        border.width: Math.max(1, Metrics.hairline / 1.5)
    }
    Shape {
        visible: !root.usable
        anchors.fill: parent

        ShapePath {
            strokeColor: Theme.pencil
            strokeWidth: Math.max(1, Metrics.hairline)
            strokeStyle: ShapePath.DashLine
            dashPattern: [1.5, 3]
            fillColor: "transparent"
            PathPolyline {
                path: [Qt.point(1, 1), Qt.point(root.width - 1, 1), Qt.point(root.width - 1, root.height - 1), Qt.point(1, root.height - 1), Qt.point(1, 1)]
            }
        }
    }

    function sides(towardsLight: bool): var {
        const from = Metrics.hairline / 2;
        const right = width - from;
        const bottom = height - from;
        const corner = towardsLight ? Qt.point(from, from) : Qt.point(right, bottom);
        const inner = towardsLight ? Qt.point(edge, edge) : Qt.point(width - edge, height - edge);
        return [corner, Qt.point(right, from), Qt.point(width - edge, edge), inner, Qt.point(edge, height - edge), Qt.point(from, bottom), corner];
    }
}
