import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One of the four equal keys of an alert, in a row between the lower corners, which stay empty; on a tablet that stands
// upright the first, Heard, is between them and the three answers are in a row above. None looks chosen. Slot 5 is the
// column at the right.
TouchKey {
    id: root

    required property int slot
    readonly property double screenWidth: parent.width
    readonly property bool upright: parent.height > parent.width
    readonly property bool aside: slot > 3
    readonly property bool between: upright && slot === 0
    readonly property double lowest: parent.height - Metrics.edge - Metrics.corner
    // The upper edge of all answers.
    readonly property double above: upright ? lowest - Metrics.gap - Metrics.corner : lowest
    readonly property double wide: upright ? (screenWidth - 2 * Metrics.edge - 2 * Metrics.gap) / 3 : Metrics.mm(30.5)
    readonly property double pitch: upright ? wide + Metrics.gap : Metrics.mm(36.73)
    readonly property double beside: Metrics.edge + Metrics.corner + Metrics.gap

    x: aside ? screenWidth - Metrics.edge - width : between ? beside : upright ? Metrics.edge + (slot - 1) * pitch : (screenWidth - 3 * pitch - wide) / 2 + slot * pitch
    y: between ? lowest : above
    width: aside ? Metrics.corner : between ? screenWidth - 2 * beside : wide
    height: Metrics.corner
    legendSize: Metrics.keyText(legend)
    ink: Theme.onAlert
    ground: Theme.alertGround
    lit: Theme.alertLit
    shade: Theme.alertShade
    line: Theme.onAlert
    downFace: Theme.alertShade
}
