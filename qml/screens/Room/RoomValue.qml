import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One of the two values, as a key that chooses it; the chosen one is sunk, and the pad writes into it.
TouchKey {
    id: root

    required property string caption
    required property string value
    required property bool chosen
    signal asked

    height: Metrics.benchKey
    legendSize: Metrics.title
    offers: ScreenAction {
        name: root.objectName
        text: root.value
        called: "%1, %2".arg(root.caption).arg(root.value)
        hint: root.caption
        chosen: root.chosen
        onTriggered: root.asked()
    }
}
