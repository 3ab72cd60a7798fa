import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One of the four equal keys of an alert, in a row between the lower corners, which stay empty; on a tablet that stands
// upright two rows of two above them. None looks chosen. Slot 5 is the column at the right.
TouchKey {
    id: root

    required property int slot
    readonly property double screenWidth: parent.width
    readonly property bool upright: parent.height > parent.width
    readonly property int inRow: upright ? 2 : 4
    readonly property bool aside: slot > 3
    // Where the answers begin, and the middle of the screen's free part in which they stand.
    readonly property double pitch: upright ? wide + Metrics.gap : Metrics.mm(36.73)
    readonly property double wide: upright ? (screenWidth - 2 * Metrics.mm(4) - 2 * Metrics.gap - Metrics.corner) / 2 : Metrics.mm(30.5)
    readonly property double rowY: parent.height - Metrics.edge - Metrics.corner - (upright ? Metrics.corner + Metrics.gap : 0)
    // The upper edge of all answers.
    readonly property double above: rowY - (upright ? Metrics.corner + Metrics.gap : 0)

    x: aside ? screenWidth - Metrics.edge - width : upright ? Metrics.mm(4) + slot % inRow * pitch : (screenWidth - 3 * pitch - wide) / 2 + slot * pitch
    y: upright ? above + Math.floor(slot / inRow) * (Metrics.corner + Metrics.gap) : rowY
    width: aside ? Metrics.corner : wide
    height: Metrics.corner
    legendSize: Metrics.keyText(legend)
    ink: Theme.onAlert
    ground: Theme.alertGround
}
