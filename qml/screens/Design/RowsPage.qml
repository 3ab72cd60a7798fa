pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Forms
import Mountwright.Theme
import Mountwright.ViewModels

// A page of rows under their headings: what it is, its figure at the right, and beneath what that is taken from.
Item {
    id: root

    required property RowsModel rows
    required property string name
    property string above: ""
    property color ground: Theme.cloth
    property color noteInk: Theme.quiet

    Words {
        id: lead
        width: parent.width
        height: visible ? implicitHeight + Metrics.mm(2) : 0
        visible: text !== ""
        text: root.above
        font.pixelSize: Metrics.deskLabel
    }
    PagedList {
        id: paged
        anchors.top: lead.bottom
        anchors.bottom: parent.bottom
        width: parent.width
        name: root.name
        ground: root.ground
        model: root.rows
        spacing: Metrics.mm(1.8)
        delegate: Column {
            id: line

            required property int index
            required property string title
            required property string of
            required property string value
            required property string note

            width: paged.width

            Words {
                width: parent.width
                topPadding: line.index > 0 ? Metrics.mm(2.5) : 0
                bottomPadding: Metrics.mm(1)
                visible: line.of !== ""
                text: line.of
                font.bold: true
                font.pixelSize: Metrics.deskText
            }
            Item {
                width: parent.width
                height: Math.max(title.height, value.height)

                Words {
                    id: title
                    width: parent.width - value.width - Metrics.mm(3)
                    text: line.title
                    font.pixelSize: Metrics.deskText
                }
                Words {
                    id: value
                    anchors.right: parent.right
                    anchors.rightMargin: Metrics.mm(1)
                    text: line.value
                    font.bold: true
                    font.pixelSize: Metrics.deskText
                    wrapMode: Text.NoWrap
                }
            }
            Words {
                width: parent.width - Metrics.mm(1)
                visible: line.note !== ""
                text: line.note
                color: root.noteInk
                font.pixelSize: Metrics.deskLabel
            }
        }
    }
}
