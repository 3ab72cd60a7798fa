import QtQuick
import Mountwright.Theme
import Mountwright.ViewModels

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
    readonly property double edge: Math.min(width, height) < Metrics.mm(18) ? Metrics.mm(0.8) : Metrics.mm(1.4)

    Rectangle {
        visible: root.pointed
        anchors.fill: parent
        anchors.margins: -Metrics.mm(1)
        color: "transparent"
        border.color: root.frame
        border.width: Metrics.mm(1)
    }
    MitredFaceItem {
        anchors.fill: parent
        dotted: !root.usable
        face: root.face
        upper: root.sunk ? root.shade : root.lit
        lower: root.sunk ? root.lit : root.shade
        line: root.usable ? root.line : Theme.pencil
        edge: root.edge
        hairline: Metrics.hairline
    }
}
