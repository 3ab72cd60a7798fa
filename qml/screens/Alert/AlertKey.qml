import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One of six keys along the lower edge of an alert; each answer has its place for good.
TouchKey {
    id: root

    required property int place
    readonly property double screenWidth: parent.width
    readonly property double pitch: (screenWidth - 2 * Metrics.edge + Metrics.gap) / 6

    x: Metrics.edge + place * pitch
    y: parent.height - height - Metrics.edge
    width: pitch - Metrics.gap
    height: Metrics.corner
    ink: Theme.onAlert
    ground: Theme.alertGround
}
