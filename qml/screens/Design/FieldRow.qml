import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// One field: what it is on the left, what holds on the right; beneath, what follows from it or what is wrong with it.
Item {
    id: root

    required property int index
    required property string title
    required property string of
    required property string value
    required property string note
    required property string problem
    required property bool act

    signal asked(int field)

    implicitHeight: group.height + key.height + said.height

    Words {
        id: group
        height: root.of !== "" ? implicitHeight + Metrics.mm(1) : 0
        visible: root.of !== ""
        width: root.width
        text: root.of
        color: Theme.quiet
        font.bold: true
        font.pixelSize: Metrics.deskLabel
        verticalAlignment: Text.AlignBottom
    }
    TouchKey {
        id: key
        objectName: "field" + root.index
        y: group.height
        width: root.width
        height: Metrics.deskKey
        legend: ""
        onActed: root.asked(root.index)

        Words {
            id: name
            anchors.verticalCenter: parent.verticalCenter
            x: Metrics.mm(2)
            text: (root.act ? "+ " : "") + root.title
            font.pixelSize: Metrics.deskText
            wrapMode: Text.NoWrap
        }
        Words {
            anchors.verticalCenter: parent.verticalCenter
            anchors.right: parent.right
            anchors.rightMargin: Metrics.mm(2)
            width: parent.width - name.width - Metrics.mm(6)
            horizontalAlignment: Text.AlignRight
            text: root.act ? "" : root.value === "" ? qsTr("to be entered") : root.value
            color: root.value === "" ? Theme.worked : Theme.ink
            font.bold: true
            font.pixelSize: Metrics.deskText
            wrapMode: Text.NoWrap
            elide: Text.ElideRight
        }
    }
    Words {
        id: said
        anchors.top: key.bottom
        height: text !== "" ? implicitHeight : 0
        x: Metrics.mm(2)
        visible: text !== ""
        width: root.width - 2 * x
        text: root.problem !== "" ? root.problem : root.note
        color: root.problem !== "" ? Theme.worked : Theme.quiet
        font.bold: root.problem !== ""
        font.pixelSize: Metrics.deskLabel
    }
}
