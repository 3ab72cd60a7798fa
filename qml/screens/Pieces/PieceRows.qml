pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// A heading and the first rows under it, each perhaps under one of its own, and how many more there are.
Column {
    id: root

    property string heading: ""
    required property RowsModel rows
    required property int most
    property bool noted: true
    property color valueInk: Theme.ink
    // Words where there is no row; "" for nothing at all.
    property string none: ""
    readonly property int shown: rows.count > most + 1 ? most : rows.count

    visible: rows.count > 0 || none !== ""
    spacing: Metrics.mm(0.8)

    Words {
        width: root.width
        visible: text !== ""
        text: root.heading
        color: Theme.quiet
        font.pixelSize: Metrics.deskText
    }
    Words {
        width: root.width
        visible: root.rows.count === 0
        text: root.none
        font.pixelSize: Metrics.deskText
    }
    Repeater {
        model: root.rows

        Item {
            id: row

            required property int index
            required property string title
            required property string of
            required property string value
            required property string note
            required property string problem
            required property bool act

            width: root.width
            height: visible ? Math.max(said.y + said.height, amount.y + amount.height) : 0
            visible: index < root.shown

            Words {
                id: above
                width: parent.width
                height: text === "" ? 0 : implicitHeight + Metrics.mm(0.8)
                topPadding: row.index > 0 ? Metrics.mm(1.6) : 0
                text: row.of
                color: Theme.quiet
                font.pixelSize: Metrics.deskText
            }
            Column {
                id: said
                y: above.height
                width: parent.width - (amount.text === "" ? 0 : amount.width + Metrics.mm(2))

                Words {
                    width: parent.width
                    text: row.title
                    font.pixelSize: Metrics.deskText
                }
                Words {
                    width: parent.width
                    visible: root.noted && text !== ""
                    text: {
                        const parts = [row.note, row.problem];
                        return parts.filter(part => part !== "").join("\n");
                    }
                    color: Theme.quiet
                    font.pixelSize: Metrics.deskLabel
                }
            }
            Words {
                id: amount
                y: said.y
                anchors.right: parent.right
                text: row.value
                color: row.act ? Theme.worked : root.valueInk
                font.bold: true
                font.pixelSize: Metrics.deskText
                wrapMode: Text.NoWrap
            }
        }
    }
    Words {
        width: root.width
        visible: root.rows.count > root.shown
        text: qsTr("and %1 more").arg(root.rows.count - root.shown)
        color: Theme.quiet
        font.pixelSize: Metrics.deskText
    }
}
