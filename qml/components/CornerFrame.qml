pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The bench's fixed frame: Back and Done in their corners, further keys above Done and one in the upper corner, the shelf
// between them. On a tablet that stands upright there is no room between the corners: the shelf is above them.
ScreenBase {
    id: root

    required property ShelfModel shelf
    default property alias content: room.data
    // The shelf is hidden on an upright tablet while an act needs its room.
    property bool shelfShown: true
    // The shelf is a key that opens all waits. Something else may stand in its place.
    property bool shelfOpens: false
    property bool shelfCovered: false
    readonly property alias shelfPlace: place
    readonly property bool upright: height > width
    // Where the column of keys ends above what stands at its foot.
    readonly property double keysFoot: upright ? place.y - Metrics.gap : done.y - Metrics.gap
    property double keysEnd: keysFoot
    // The end of the content's room, in its own coordinates.
    readonly property double shelfTop: room.height
    readonly property double keysHeight: column.height
    // From the upper edge to where words of the content end, and the plate under a drawing.
    readonly property double wordsRight: width - Metrics.corner - Metrics.edge - Metrics.gap

    // What is printed on a key is its own.
    function shelfParent(raised: bool): Item {
        if (raised)
            return waits;
        return place;
    }

    doneAction.place: ScreenAction.Corner
    doneAction.filled: true
    doneAction.sign: "done"
    backAction.place: ScreenAction.Corner
    backAction.sign: "back"

    Item {
        id: room
        x: Metrics.mm(4)
        y: Metrics.edge
        width: root.wordsRight - x
        height: place.y - y - Metrics.mm(3)
    }
    TouchKey {
        x: Metrics.edge
        y: root.height - height - Metrics.edge
        width: Metrics.corner
        height: Metrics.corner
        offers: root.backAction
    }
    Item {
        id: place
        x: Metrics.edge + (root.upright ? 0 : Metrics.corner + Metrics.gap)
        y: (root.upright ? done.y - Metrics.gap : root.height - Metrics.edge) - height
        width: root.width - 2 * x
        height: root.shelfShown ? Metrics.corner : 0
    }
    TouchKey {
        id: waits
        x: place.x
        y: place.y
        width: place.width
        height: place.height
        legend: ""
        offers: ScreenAction {
            name: "waits"
            text: qsTr("Waits")
            enabled: root.shelfOpens && root.shelfShown && !root.shelfCovered
            onTriggered: root.asked("waits")
        }
    }
    ShelfView {
        parent: root.shelfParent(waits.visible)
        anchors.fill: parent
        visible: root.shelfShown && !root.shelfCovered
        shelf: root.shelf
    }
    ActionKeys {
        area: root
        place: ScreenAction.TopCorner

        BenchKey {
            required property ScreenAction modelData

            x: root.width - width - Metrics.edge
            y: Metrics.edge
            offers: modelData
        }
    }
    // The lowest key is the last.
    Column {
        id: column
        anchors.right: done.right
        y: root.keysEnd - height
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
    // Its corner stays its own while nothing can be done yet.
    TouchKey {
        id: done
        stays: true
        x: root.width - width - Metrics.edge
        y: root.height - height - Metrics.edge
        width: Metrics.corner
        height: Metrics.corner
        offers: root.doneAction
    }
}
