import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One piece on the board: its picture, its title, its progress, its running waits, its due date.
TouchKey {
    id: root

    required property int index
    required property string title
    required property string of
    required property string where
    required property string runs
    required property string due
    required property bool late
    required property bool atDesk
    required property pieceDrawing picture

    signal taken

    legend: ""
    offers: ScreenAction {
        name: "piece" + root.index
        text: root.title
        onTriggered: root.taken()
    }

    PieceView {
        id: view
        x: Metrics.mm(2)
        y: Metrics.mm(2)
        width: parent.height - 2 * y
        height: parent.height - 2 * y
        drawing: root.picture
    }
    Column {
        anchors.left: view.right
        anchors.leftMargin: Metrics.mm(3)
        anchors.right: parent.right
        anchors.rightMargin: Metrics.mm(2)
        anchors.verticalCenter: parent.verticalCenter
        spacing: Metrics.mm(0.6)

        Words {
            width: parent.width
            text: root.title
            font.bold: true
            font.pixelSize: Metrics.deskText
            maximumLineCount: 2
            elide: Text.ElideRight
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.of
            color: Theme.quiet
            font.pixelSize: Metrics.deskLabel
            wrapMode: Text.NoWrap
            elide: Text.ElideRight
        }
        Words {
            width: parent.width
            text: root.where
            color: root.atDesk ? Theme.calm : Theme.ink
            font.pixelSize: Metrics.deskLabel
            maximumLineCount: 2
            elide: Text.ElideRight
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.runs
            color: Theme.calm
            font.pixelSize: Metrics.deskLabel
            maximumLineCount: 1
            elide: Text.ElideRight
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.due
            color: root.late ? Theme.worked : Theme.quiet
            font.bold: root.late
            font.pixelSize: Metrics.deskLabel
        }
    }
}
