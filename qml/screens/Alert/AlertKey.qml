import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One of six keys along the lower edge of an alert, upright in two rows; each answer has a fixed place.
TouchKey {
    id: root

    required property int slot
    readonly property double screenWidth: parent.width
    readonly property int inRow: parent.height > parent.width ? 3 : 6
    readonly property int rowsBelow: 6 / inRow - 1 - Math.floor(slot / inRow)
    readonly property double pitch: (screenWidth - 2 * Metrics.edge + Metrics.gap) / inRow

    x: Metrics.edge + slot % inRow * pitch
    y: parent.height - height - Metrics.edge - rowsBelow * (height + Metrics.gap)
    width: pitch - Metrics.gap
    height: Metrics.corner
    legendSize: Metrics.keyText(legend)
    ink: Theme.onAlert
    ground: Theme.alertGround
}
