import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One line of the record: what happened, and when; of a step from when to when.
Column {
    id: root

    required property int index
    required property string title
    required property string of
    required property string value
    required property string note
    required property string problem
    required property bool chosen
    required property string picture

    signal asked(int row)

    Words {
        width: root.width
        visible: root.of !== ""
        topPadding: Metrics.mm(1.5)
        bottomPadding: Metrics.mm(0.5)
        text: root.of
        color: Theme.quiet
        font.bold: true
        font.pixelSize: Metrics.deskLabel
    }
    TouchKey {
        id: key
        width: root.width
        height: Math.max(Metrics.deskKey, said.height + Metrics.mm(3.4))
        legend: ""
        offers: ScreenAction {
            name: "line" + root.index
            text: root.title
            chosen: root.chosen
            onTriggered: root.asked(root.index)
        }

        Image {
            id: small
            anchors.verticalCenter: parent.verticalCenter
            x: Metrics.mm(1.6)
            width: root.picture === "" ? 0 : Metrics.mm(12)
            height: width
            sourceSize.width: width
            sourceSize.height: width
            fillMode: Image.PreserveAspectFit
            source: root.picture === "" ? "" : "image://photographs/" + root.picture
            asynchronous: true
        }
        Column {
            id: said
            anchors.verticalCenter: parent.verticalCenter
            x: small.x + small.width + Metrics.mm(0.8)
            width: parent.width - x - when.width - Metrics.mm(5)

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
                text: root.note
                color: key.hintInk
                font.pixelSize: Metrics.deskLabel
            }
            Words {
                width: said.width
                visible: text !== ""
                text: root.problem
                color: key.filled ? key.hintInk : Theme.worked
                font.bold: true
                font.pixelSize: Metrics.deskLabel
            }
        }
        Words {
            id: when
            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            anchors.rightMargin: Metrics.mm(2.4)
            width: Math.min(implicitWidth, root.width * 0.36)
            horizontalAlignment: Text.AlignRight
            text: root.value
            color: key.hintInk
            font.pixelSize: Metrics.deskText
        }
    }
}
