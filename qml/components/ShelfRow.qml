pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One wait: its words on the left, its block and dots on the axis at the right.
Item {
    id: root

    required property string name
    required property string said
    required property double from
    required property double to
    required property list<double> dots
    required property bool open
    required property bool late
    required property bool look
    property double axisLeft: width / 2
    readonly property double axisWidth: width - axisLeft
    readonly property color ink: open || late || look ? Theme.worked : Theme.calm

    height: words.implicitHeight

    Words {
        id: words
        width: root.axisLeft - Metrics.mm(2)
        text: root.name + ", " + root.said
        color: root.ink
        font.bold: root.open || root.late || root.look
        font.pixelSize: Metrics.label
        lineHeight: 0.9
    }
    Rectangle {
        x: root.axisLeft + root.from * root.axisWidth
        y: Metrics.mm(1)
        width: Math.max(Metrics.mm(2), (root.to - root.from) * root.axisWidth)
        height: Metrics.mm(3.4)
        // An open window is solid, a future one an outline, a missed one an outline struck through.
        color: root.open ? root.ink : "transparent"
        border.color: root.ink
        border.width: 2 * Metrics.hairline

        Rectangle {
            visible: root.late
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width
            height: 3 * Metrics.hairline
            color: root.ink
        }
    }
    Repeater {
        model: root.dots

        Rectangle {
            required property double modelData

            x: root.axisLeft + modelData * root.axisWidth - width / 2
            y: Metrics.mm(5)
            width: Metrics.mm(0.9)
            height: width
            radius: width / 2
            color: root.ink
        }
    }
}
