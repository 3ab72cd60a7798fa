import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One entry of the shop's stock: its name, its details, its amount.
Column {
    id: root

    required property int index
    required property string title
    required property string of
    required property string value
    required property string note
    required property string problem
    required property bool chosen

    signal asked(int row)

    Words {
        width: root.width
        visible: root.of !== ""
        topPadding: Metrics.mm(1)
        bottomPadding: Metrics.mm(0.5)
        text: root.of
        color: Theme.quiet
        font.bold: true
        font.pixelSize: Metrics.deskLabel
    }
    TouchKey {
        id: key
        width: root.width
        height: Math.max(Metrics.deskKey, said.height + Metrics.mm(4))
        legend: ""
        offers: ScreenAction {
            name: "stock" + root.index
            text: root.title
            chosen: root.chosen
            onTriggered: root.asked(root.index)
        }

        Column {
            id: said
            anchors.verticalCenter: parent.verticalCenter
            x: Metrics.mm(2.4)
            width: parent.width - 2 * x - (amount.text === "" ? 0 : amount.width + Metrics.mm(3))

            Words {
                width: said.width
                text: root.title
                color: key.hintInk
                font.bold: true
                font.pixelSize: Metrics.deskText
            }
            Words {
                width: said.width
                visible: text !== ""
                text: root.problem !== "" ? root.problem : root.note
                color: root.problem !== "" && !key.filled ? Theme.worked : key.hintInk
                font.pixelSize: Metrics.deskLabel
            }
        }
        Words {
            id: amount
            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            anchors.rightMargin: Metrics.mm(2.4)
            text: root.value
            color: key.hintInk
            font.pixelSize: Metrics.deskText
            wrapMode: Text.NoWrap
        }
    }
}
