import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The head of a page of the bench: the time, what is to be known beside it, and which piece; what is done; and below it
// from where, with how the board lies. What keeps an alert from being heard takes the first line; the time stays.
Item {
    id: root

    required property WatchViewModel watch
    property string piece: ""
    property string note: ""
    property string title: ""
    property int titleSize: Metrics.act
    property string where: ""
    // How the board lies; "" where neither side matters.
    property string thing: ""
    property string side: ""
    property bool backUp: false
    readonly property bool troubled: watch.troubles !== ""
    readonly property double gap: Metrics.mm(3)

    implicitHeight: where !== "" ? below.y + Math.max(below.height, lies.height) : Math.max(title.y + title.height, lies.visible ? lies.y + lies.height : 0)
    height: implicitHeight

    Words {
        id: time
        objectName: "watch"
        width: root.troubled ? root.width : implicitWidth
        text: root.troubled ? root.watch.time + " · " + root.watch.troubles : root.watch.time
        color: root.troubled ? Theme.worked : Theme.ink
        font.pixelSize: Metrics.label
        font.bold: true
    }
    Words {
        objectName: "note"
        x: time.implicitWidth + root.gap
        width: implicitWidth
        visible: !root.troubled && text !== "" && x + implicitWidth + root.gap + (name.visible ? name.implicitWidth : 0) <= root.width
        text: root.note
        color: Theme.quiet
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
    }
    ArtworkName {
        id: name
        objectName: "pieceName"
        visible: !root.troubled && text !== "" && implicitWidth <= root.width - time.implicitWidth - root.gap
        anchors.right: parent.right
        anchors.baseline: time.baseline
        width: implicitWidth
        text: root.piece
        wrapMode: Text.NoWrap
    }
    Words {
        id: title
        objectName: "title"
        y: time.height - Metrics.mm(0.4)
        width: root.width
        text: root.title
        font.bold: true
        font.pixelSize: root.titleSize
        lineHeight: 0.82
    }
    Words {
        id: below
        objectName: "where"
        y: title.y + title.height
        width: root.width - (lies.visible ? lies.width + root.gap : 0)
        visible: text !== ""
        text: root.where
        lineHeight: 0.85
    }
    // How it lies now is no order to turn it; left and right are meant so.
    Row {
        id: lies
        objectName: "lies"
        visible: root.side !== "" || root.thing !== ""
        anchors.right: parent.right
        y: below.visible ? below.y + below.height - height : title.y + title.height
        spacing: Metrics.mm(2)

        Words {
            objectName: "thing"
            visible: text !== "" && below.implicitWidth + implicitWidth + (root.side === "" ? 0 : mark.width + side.implicitWidth) + 4 * parent.spacing <= root.width
            text: root.thing
            font.pixelSize: Metrics.label
            wrapMode: Text.NoWrap
        }
        LieMark {
            id: mark
            visible: root.side !== ""
            anchors.verticalCenter: parent.verticalCenter
            back: root.backUp
        }
        Words {
            id: side
            objectName: "side"
            visible: text !== ""
            text: root.side
            font.pixelSize: Metrics.label
            wrapMode: Text.NoWrap
        }
    }
}
