pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// Keys side by side over the whole width, each with its share: the values of a page are changed with them. A share stays
// empty while its action is not offered, so that none of the others moves.
Row {
    id: root

    required property var offered
    property int legendSize: Metrics.text
    readonly property double share: (width - (offered.length - 1) * spacing) / Math.max(1, offered.length)

    spacing: Metrics.gap
    height: Metrics.benchKey

    Repeater {
        model: root.offered

        Item {
            id: place

            required property ScreenAction modelData

            width: root.share
            height: root.height

            TouchKey {
                anchors.fill: parent
                legendSize: place.modelData.repeats ? root.legendSize : Metrics.text
                offers: place.modelData
            }
        }
    }
}
