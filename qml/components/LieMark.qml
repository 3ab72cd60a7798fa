import QtQuick
import Mountwright.Theme

// How the board lies, as a small drawing: with its opening and bevel where the face is up, crossed where its back is;
// the marked corner is filled.
Item {
    id: root

    required property bool back
    property color ink: Theme.ink
    property double line: Metrics.mm(0.4)

    height: Metrics.mm(5.4)
    width: height * 1.35

    Canvas {
        anchors.fill: parent
        property color ink: root.ink
        property bool back: root.back

        onInkChanged: requestPaint()
        onBackChanged: requestPaint()
        onPaint: {
            const c = getContext("2d");
            c.reset();
            c.strokeStyle = ink;
            c.fillStyle = ink;
            c.lineWidth = root.line;
            const half = root.line / 2;
            c.strokeRect(half, half, width - root.line, height - root.line);
            const inset = height * 0.3;
            c.beginPath();
            if (back) {
                c.moveTo(half, half);
                c.lineTo(width - half, height - half);
                c.moveTo(width - half, half);
                c.lineTo(half, height - half);
            } else {
                c.rect(inset, inset, width - 2 * inset, height - 2 * inset);
                for (const [x, y] of [[0, 0], [1, 0], [0, 1], [1, 1]]) {
                    c.moveTo(half + x * (width - root.line), half + y * (height - root.line));
                    c.lineTo(inset + x * (width - 2 * inset), inset + y * (height - 2 * inset));
                }
            }
            c.stroke();
            const corner = back ? width : 0;
            const into = back ? -1 : 1;
            c.beginPath();
            c.moveTo(corner, 0);
            c.lineTo(corner + into * inset * 1.4, 0);
            c.lineTo(corner, inset * 1.4);
            c.fill();
        }
    }
}
