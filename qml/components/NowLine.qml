import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// The first line of a page of the bench: now, in ink; what is to be known beside it; and at its right end which piece.
Item {
    id: root

    required property string time
    property string note: ""
    property string piece: ""
    readonly property double gap: Metrics.mm(3)

    implicitHeight: now.implicitHeight
    height: implicitHeight

    Words {
        id: now
        objectName: "now"
        text: root.time
        font.bold: true
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
    }
    Words {
        objectName: "note"
        x: now.width + root.gap
        visible: text !== "" && x + width + (name.visible ? root.gap + name.width : 0) <= root.width
        text: root.note
        color: Theme.quiet
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
    }
    // Which piece goes before what is beside the time.
    ArtworkName {
        id: name
        objectName: "pieceName"
        anchors.right: parent.right
        anchors.baseline: now.baseline
        visible: text !== "" && now.width + root.gap + width <= root.width
        text: root.piece
        wrapMode: Text.NoWrap
    }
}
