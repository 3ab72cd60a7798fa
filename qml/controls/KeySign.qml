import QtQuick
import QtQuick.Shapes
import Mountwright.Theme

// The sign of a key, drawn above its word. Strokes and filled parts lie in a square of 100 by 100.
Item {
    id: root

    required property string sign
    property color ink: Theme.ink
    readonly property bool known: signs[sign] !== undefined
    // Each is what is stroked and what is filled.
    readonly property var signs: ({
            "back": ["M22 50 H90 M50 18 L18 50 L50 82", ""],
            "done": ["M18 54 L42 80 L84 24", ""],
            "more": ["M12 24 H88 M12 50 H88 M12 76 H64", ""],
            "next": ["M18 34 L50 68 L82 34", ""],
            "earlier": ["M18 66 L50 32 L82 66", ""],
            "test": ["M8 88 H92 M35 8 V50 A15 15 0 0 0 65 50 V8 M44 50 V36 H56 V50", ""],
            "afar": ["M6 50 Q50 2 94 50 Q50 98 6 50 Z M62 50 A12 12 0 1 1 38 50 A12 12 0 1 1 62 50", ""],
            "wrong": ["M22 22 L78 78 M78 22 L22 78", ""],
            "undo": ["M34 20 L14 40 L34 60 M14 40 H62 A20 20 0 0 1 62 82 H40", ""],
            "redo": ["M66 20 L86 40 L66 60 M86 40 H38 A20 20 0 0 0 38 82 H60", ""],
            "heard": ["M28 44 A24 24 0 1 1 72 50 C66 62 58 62 56 76 A14 14 0 0 1 30 78 M40 44 A11 11 0 1 1 58 50 C54 54 50 56 50 64", ""],
            "before": ["M6 80 H26 L42 48 H66 L82 80 H96", "M4 48 H32 L18 66 Z"],
            "within": ["M6 80 H26 L42 48 H66 L82 80 H96", "M40 14 H68 L54 34 Z"],
            "rising": ["M6 80 H30 L58 48 H96", "M4 48 H32 L18 66 Z"],
            "risen": ["M6 80 H30 L58 48 H96", "M62 14 H90 L76 34 Z"],
            "past": ["M6 80 H26 L42 48 H66 L82 80 H96", "M74 48 H102 L88 66 Z"]
        })

    visible: known

    Shape {
        width: 100
        height: 100
        scale: root.height / 100
        transformOrigin: Item.TopLeft
        x: (root.width - root.height) / 2

        ShapePath {
            strokeColor: root.ink
            strokeWidth: 10
            fillColor: "transparent"
            capStyle: ShapePath.FlatCap
            joinStyle: ShapePath.MiterJoin
            PathSvg {
                path: root.known ? root.signs[root.sign][0] : ""
            }
        }
        ShapePath {
            strokeWidth: -1
            fillColor: root.ink
            PathSvg {
                path: root.known ? root.signs[root.sign][1] : ""
            }
        }
    }
}
