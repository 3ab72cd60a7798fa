import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The bench's fixed frame: Back and Done in their corners, further keys above Done, the shelf between them. On a tablet
// that stands upright there is no room between the corners: the shelf lies above them.
ScreenBase {
    id: root

    required property ShelfModel shelf
    default property alias content: room.data
    // Keys above Done, the lowest last.
    property alias keys: column.data
    property bool doneFilled: true
    // Whether the shelf lies there; an act that needs its room upright does without for as long as it takes.
    property bool shelfShown: true
    readonly property bool upright: height > width

    Item {
        id: room
        x: Metrics.edge
        y: Metrics.edge
        width: root.width - Metrics.corner - Metrics.edge - x - Metrics.mm(4)
        height: shelfView.y - y - Metrics.mm(3)
    }
    TouchKey {
        objectName: "back"
        x: Metrics.edge
        y: root.height - height - Metrics.edge
        width: Metrics.corner
        height: Metrics.corner
        legend: qsTr("Back")
        onActed: root.back()
    }
    ShelfView {
        id: shelfView
        visible: root.shelfShown
        shelf: root.shelf
        x: Metrics.edge + (root.upright ? 0 : Metrics.corner + Metrics.mm(4))
        y: (root.upright ? done.y - Metrics.gap : root.height - Metrics.edge) - height
        width: root.width - 2 * x
        height: root.shelfShown ? Metrics.corner : 0
    }
    Column {
        id: column
        anchors.right: done.right
        anchors.bottom: root.upright ? shelfView.top : done.top
        anchors.bottomMargin: Metrics.gap
        spacing: Metrics.gap
    }
    TouchKey {
        id: done
        objectName: "done"
        x: root.width - width - Metrics.edge
        y: root.height - height - Metrics.edge
        width: Metrics.corner
        height: Metrics.corner
        legend: qsTr("Done")
        filled: root.doneFilled
        onActed: root.done()
    }
}
