pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// What a maker decides, in the order it is decided. A section with something wrong carries a mark.
Column {
    id: root

    required property RowsModel sections
    readonly property double rowHeight: (height - (sections.count - 1) * spacing) / Math.max(1, sections.count)

    signal asked(int section)

    spacing: Metrics.mm(0.8)

    Repeater {
        model: root.sections

        TouchKey {
            id: key

            required property int index
            required property string title
            required property string value
            required property string problem
            required property bool chosen

            objectName: "section" + index
            width: root.width
            height: root.rowHeight
            legend: ""
            filled: chosen
            onActed: root.asked(index)

            Words {
                id: name
                anchors.verticalCenter: parent.verticalCenter
                x: Metrics.mm(2)
                text: key.title
                color: key.filled ? key.ground : key.ink
                font.bold: true
                font.pixelSize: Metrics.deskText
                wrapMode: Text.NoWrap
            }
            Words {
                anchors.verticalCenter: parent.verticalCenter
                anchors.right: parent.right
                anchors.rightMargin: Metrics.mm(2)
                width: parent.width - name.width - Metrics.mm(6)
                horizontalAlignment: Text.AlignRight
                text: key.problem !== "" ? key.problem : key.value
                color: key.filled ? key.ground : key.problem !== "" ? Theme.worked : Theme.quiet
                font.bold: key.problem !== ""
                font.pixelSize: Metrics.deskLabel
                wrapMode: Text.NoWrap
                elide: Text.ElideRight
            }
        }
    }
}
