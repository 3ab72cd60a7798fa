pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// The head of a design: now, the way back to the pieces, which artwork and for whom.
Item {
    id: root

    required property string time
    required property string title
    required property string about

    signal over

    height: Metrics.deskKey

    Words {
        id: now
        objectName: "now"
        height: parent.height
        verticalAlignment: Text.AlignVCenter
        text: root.time
        font.bold: true
        font.pixelSize: Metrics.deskTitle
        wrapMode: Text.NoWrap
        lineHeight: 1
    }
    TouchKey {
        id: pieces
        anchors.left: now.right
        anchors.leftMargin: now.text === "" ? 0 : Metrics.mm(3)
        width: Metrics.mm(19)
        height: root.height
        legendSize: Metrics.deskText
        offers: ScreenAction {
            name: "leaveDesign"
            text: qsTr("Pieces")
            onTriggered: root.over()
        }
    }
    Column {
        anchors.left: pieces.right
        anchors.leftMargin: Metrics.mm(3)
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter

        ArtworkName {
            width: parent.width
            text: root.title
            font.pixelSize: Metrics.deskName
            maximumLineCount: root.about === "" ? 2 : 1
            lineHeight: 0.85
            fontSizeMode: Text.FixedSize
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.about
            color: Theme.quiet
            font.pixelSize: Metrics.deskLabel
            maximumLineCount: 1
        }
    }
}
