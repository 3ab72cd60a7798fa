import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// A line of a card's list: what numbers are taken from, or one of them, ticked where it is done.
Item {
    id: root

    // "heading", "name", "value", "done"
    required property var modelData

    height: Math.ceil(Metrics.label * 1.27)

    Words {
        visible: root.modelData.done
        text: "✓"
        color: Theme.quiet
        font.pixelSize: Metrics.label
        font.bold: true
        wrapMode: Text.NoWrap
        lineHeight: 1
    }
    Words {
        objectName: root.modelData.heading ? "cardHeading" : "cardRow"
        x: root.modelData.heading ? 0 : Metrics.mm(6.4)
        text: root.modelData.name
        color: root.modelData.done ? Theme.quiet : Theme.ink
        font.bold: root.modelData.heading
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
        lineHeight: 1
    }
    Words {
        anchors.right: parent.right
        text: root.modelData.value
        color: root.modelData.done ? Theme.quiet : Theme.ink
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
        lineHeight: 1
    }
    Rectangle {
        visible: root.modelData.heading
        y: parent.height - height
        width: parent.width
        height: Math.max(1, Metrics.mm(0.25))
        color: Theme.hair
    }
}
