import QtQuick
import Mountwright.Components
import Mountwright.Theme
import Mountwright.ViewModels

// A small drawing of what can be chosen. A material lies in a hairline edge, so that white on white is seen.
Item {
    id: root

    required property pieceDrawing shown
    property bool edged: true

    PieceView {
        anchors.fill: parent
        drawing: root.shown
    }
    Rectangle {
        anchors.fill: parent
        visible: root.edged
        color: "transparent"
        border.color: Theme.keyLine
        border.width: Metrics.hairline
    }
}
