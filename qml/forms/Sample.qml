import QtQuick
import Mountwright.Components
import Mountwright.Theme
import Mountwright.ViewModels

// A small drawing of what can be chosen: a form whole, a material over all of it and in a hairline edge, so that white on
// white is seen.
Item {
    id: root

    required property pieceDrawing shown
    property bool edged: true
    readonly property size drawn: shown.extent
    readonly property double aspect: drawn.height > 0 ? drawn.width / drawn.height : 1
    // The drawing keeps clear of its item's edges by as much.
    readonly property double clear: 4 * Metrics.hairline

    clip: edged

    PieceView {
        anchors.centerIn: parent
        width: root.edged ? Math.max(root.width, root.height * root.aspect) + 2 * root.clear : root.width
        height: root.edged ? Math.max(root.height, root.width / root.aspect) + 2 * root.clear : root.height
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
