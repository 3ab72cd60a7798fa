import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One field: its name on the left, its value on the right; beneath, what follows from it or what is wrong with it.
Column {
    id: root

    required property int index
    required property string title
    required property string of
    required property string value
    required property string note
    required property string problem
    required property bool act
    required property bool missing
    // True while the list that contains the row is shown.
    property bool listed: true

    signal asked(int field)

    Words {
        width: root.width
        topPadding: Metrics.mm(1)
        bottomPadding: Metrics.mm(0.5)
        visible: root.of !== ""
        text: root.of
        color: Theme.quiet
        font.bold: true
        font.pixelSize: Metrics.deskLabel
    }
    TouchKey {
        width: root.width
        height: Metrics.deskKey
        legend: ""
        offers: ScreenAction {
            name: "field" + root.index
            text: root.title
            enabled: root.listed
            onTriggered: root.asked(root.index)
        }

        Words {
            id: name
            anchors.verticalCenter: parent.verticalCenter
            x: Metrics.mm(2)
            text: (root.act ? root.value + " " : "") + root.title
            // A missing required field is shown with a blank, its name in ink.
            color: root.missing ? Theme.worked : Theme.ink
            font.bold: root.missing
            font.pixelSize: Metrics.deskText
            wrapMode: Text.NoWrap
        }
        Words {
            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            anchors.rightMargin: Metrics.mm(2)
            width: parent.width - name.width - Metrics.mm(6)
            horizontalAlignment: Text.AlignRight
            text: root.act || root.missing ? "" : root.value
            font.bold: true
            font.pixelSize: Metrics.deskText
            wrapMode: Text.NoWrap
            elide: Text.ElideRight
        }
    }
    Words {
        width: root.width
        leftPadding: Metrics.mm(2)
        visible: text !== ""
        text: root.problem !== "" ? root.problem : root.note
        color: root.problem !== "" ? Theme.worked : Theme.quiet
        font.bold: root.problem !== ""
        font.pixelSize: Metrics.deskLabel
    }
}
