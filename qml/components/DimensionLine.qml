import QtQuick
import Mountwright.Theme

// A dimension line across or down, from edge to edge: a closed arrow's head at either end.
Item {
    id: root

    property bool down: false
    property color ink: Theme.ink
    readonly property double thick: Metrics.mm(0.7)
    readonly property double head: Metrics.mm(3.2)
    readonly property double spread: Metrics.mm(2.6)

    implicitWidth: down ? spread : 0
    implicitHeight: down ? 0 : spread

    Canvas {
        anchors.fill: parent
        property color ink: root.ink

        onInkChanged: requestPaint()
        onPaint: {
            const c = getContext("2d");
            c.reset();
            c.fillStyle = ink;
            const length = root.down ? height : width;
            // As if it ran across.
            if (root.down)
                c.setTransform(0, 1, 1, 0, (width - root.spread) / 2, 0);
            else
                c.setTransform(1, 0, 0, 1, 0, (height - root.spread) / 2);
            const middle = root.spread / 2;
            c.fillRect(root.head * 0.8, middle - root.thick / 2, length - 1.6 * root.head, root.thick);
            for (const [tip, inwards] of [[0, 1], [length, -1]]) {
                c.beginPath();
                c.moveTo(tip, middle);
                c.lineTo(tip + inwards * root.head, 0);
                c.lineTo(tip + inwards * root.head, root.spread);
                c.closePath();
                c.fill();
            }
        }
    }
}
