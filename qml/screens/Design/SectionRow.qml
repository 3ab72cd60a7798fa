import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// A row of the schedule: what is decided, and its present values at the right; a mark where something is wrong, hollow
// where something is missing or to be looked at.
TouchKey {
    id: root

    required property int index
    required property string title
    required property string value
    required property string problem
    required property bool missing
    required property bool notice
    required property bool current

    signal asked(int section)

    readonly property bool marked: problem !== "" || missing
    // Name and value stand beneath each other where they do not fit beside.
    readonly property bool stacked: name.implicitWidth + figures.implicitWidth + (marked ? Metrics.mm(4) : 0) + Metrics.mm(6.2) > width
    legend: ""
    offers: ScreenAction {
        name: "section" + root.index
        text: root.title
        chosen: root.current
        onTriggered: root.asked(root.index)
    }

    Words {
        id: name
        x: Metrics.mm(2.6)
        y: root.stacked ? Metrics.mm(0.2) : (parent.height - height) / 2
        text: root.title
        font.bold: true
        font.pixelSize: Metrics.deskText
        wrapMode: Text.NoWrap
        lineHeight: root.stacked ? 0.85 : 1
    }
    Rectangle {
        x: name.x + name.width + Metrics.mm(2)
        y: name.y + (name.height - height) / 2
        width: Metrics.mm(1.9)
        height: width
        rotation: 45
        visible: root.marked
        color: root.problem !== "" && !root.notice ? Theme.ink : "transparent"
        border.color: Theme.ink
        border.width: 1.5 * Metrics.hairline
    }
    Words {
        id: figures
        anchors.right: parent.right
        anchors.rightMargin: Metrics.mm(2.4)
        y: root.stacked ? parent.height - height - Metrics.mm(0.4) : name.y + name.baselineOffset - baselineOffset
        width: Math.min(implicitWidth, root.width - Metrics.mm(4.6))
        text: root.value
        color: Theme.quiet
        font.pixelSize: Metrics.deskLabel
        maximumLineCount: 1
        elide: Text.ElideRight
        wrapMode: Text.NoWrap
        lineHeight: root.stacked ? 0.85 : 1
    }
}
