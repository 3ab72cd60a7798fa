import QtQuick
import QtQuick.Shapes
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// A piece in its materials, and outside it a bracket whose arms point to what is wet of it. Where there is room for a
// word, an arrow leads from that word to it.
Item {
    id: root

    required property pieceDrawing drawing
    // In mm of the piece; an empty one has no bracket.
    required property rect wet
    // "wet"; "" for the bracket alone.
    property string says: ""
    readonly property bool bracketed: wet.width > 0 && wet.height > 0
    readonly property double line: says === "" ? Metrics.mm(0.6) : Metrics.mm(1)
    readonly property double arm: says === "" ? Metrics.mm(1.4) : Metrics.mm(2.6)
    // What stands beside the piece.
    readonly property double aside: !bracketed ? 0 : says === "" ? arm + Metrics.mm(2.6) : arm + Metrics.mm(2) + word.implicitWidth
    readonly property rect whole: placed(Qt.rect(0, 0, 0, 0), view.width, view.height, drawing)
    readonly property rect place: placed(wet, view.width, view.height, drawing)
    readonly property double bracketX: Math.min(whole.x + whole.width + arm, width - line)
    readonly property double middle: place.y + place.height / 2

    // The last three are what the place hangs on.
    function placed(part: rect, width: double, height: double, of: pieceDrawing): rect {
        return width > 0 && height > 0 ? view.placed(part) : Qt.rect(0, 0, 0, 0);
    }

    PieceView {
        id: view
        width: root.width - root.aside
        height: root.height
        drawing: root.drawing
    }
    // The upright of the bracket, and its two arms.
    Repeater {
        model: root.bracketed ? [Qt.rect(root.bracketX, root.place.y, root.line, root.place.height), Qt.rect(root.bracketX - root.arm, root.place.y, root.arm, root.line), Qt.rect(root.bracketX - root.arm, root.place.y + root.place.height - root.line, root.arm, root.line), Qt.rect(root.bracketX, root.middle - root.line / 2, root.says === "" ? root.arm + root.line : 0, root.line)] : []

        Rectangle {
            required property rect modelData

            objectName: "bracket"
            x: modelData.x
            y: modelData.y
            width: modelData.width
            height: modelData.height
            color: Theme.ink
        }
    }
    // From the bracket to the edge of what is wet, over whatever lies between.
    Shape {
        id: arrow
        readonly property double head: Metrics.mm(2.8)
        readonly property double tip: root.place.x + root.place.width

        visible: root.bracketed && root.says !== ""

        ShapePath {
            strokeColor: Theme.ground
            strokeWidth: root.line + 8 * Metrics.hairline
            fillColor: "transparent"
            startX: root.bracketX
            startY: root.middle
            PathLine {
                x: Math.min(root.bracketX, arrow.tip + arrow.head)
                y: root.middle
            }
        }
        ShapePath {
            strokeColor: Theme.ground
            strokeWidth: 4 * Metrics.hairline
            fillColor: Theme.ink
            startX: arrow.tip
            startY: root.middle
            PathLine {
                x: arrow.tip + arrow.head
                y: root.middle - arrow.head * 0.45
            }
            PathLine {
                x: arrow.tip + arrow.head
                y: root.middle + arrow.head * 0.45
            }
            PathLine {
                x: arrow.tip
                y: root.middle
            }
        }
        ShapePath {
            strokeWidth: -1
            fillColor: Theme.ink
            startX: arrow.tip
            startY: root.middle
            PathLine {
                x: arrow.tip + arrow.head
                y: root.middle - arrow.head * 0.45
            }
            PathLine {
                x: arrow.tip + arrow.head
                y: root.middle + arrow.head * 0.45
            }
            PathLine {
                x: arrow.tip
                y: root.middle
            }
        }
        ShapePath {
            strokeColor: Theme.ink
            strokeWidth: root.line
            fillColor: "transparent"
            startX: root.bracketX + root.line
            startY: root.middle
            PathLine {
                x: Math.min(root.bracketX, arrow.tip + arrow.head)
                y: root.middle
            }
        }
    }
    Words {
        id: word
        objectName: "wet"
        readonly property double distance: Metrics.distance

        visible: root.bracketed && text !== ""
        x: root.bracketX + root.line + Metrics.mm(1)
        y: root.middle - height / 2
        text: root.says
        font.bold: true
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
        lineHeight: 1
    }
}
