pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The bench's fixed frame: Back and Done in their corners, further keys above Done, the shelf between them. On a tablet
// that stands upright there is no room between the corners: the shelf is above them.
ScreenBase {
    id: root

    required property ShelfModel shelf
    default property alias content: room.data
    // The shelf is hidden on an upright tablet while an act needs its room.
    property bool shelfShown: true
    readonly property bool upright: height > width

    doneAction.place: ScreenAction.Corner
    doneAction.filled: true
    backAction.place: ScreenAction.Corner

    Item {
        id: room
        x: Metrics.edge
        y: Metrics.edge
        width: root.width - Metrics.corner - Metrics.edge - x - Metrics.mm(4)
        height: shelfView.y - y - Metrics.mm(3)
    }
    TouchKey {
        x: Metrics.edge
        y: root.height - height - Metrics.edge
        width: Metrics.corner
        height: Metrics.corner
        offers: root.backAction
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
    // The lowest key is the last.
    Column {
        anchors.right: done.right
        anchors.bottom: root.upright ? shelfView.top : done.top
        anchors.bottomMargin: Metrics.gap
        spacing: Metrics.gap

        ActionKeys {
            area: root
            place: ScreenAction.AboveDone

            BenchKey {
                required property ScreenAction modelData

                offers: modelData
            }
        }
    }
    TouchKey {
        id: done
        x: root.width - width - Metrics.edge
        y: root.height - height - Metrics.edge
        width: Metrics.corner
        height: Metrics.corner
        offers: root.doneAction
    }
}
