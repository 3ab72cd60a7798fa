pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The board of all pieces.
DeskFrame {
    id: root

    required property PiecesModel pieces
    readonly property int columns: width > Metrics.mm(240) ? 3 : 2

    signal freshAsked
    signal chosen

    place: "pieces"

    function done() {
        sought.leave();
    }

    TouchKey {
        id: fresh
        objectName: "newPiece"
        width: Metrics.mm(42)
        height: Metrics.mm(12)
        legendSize: Metrics.deskText
        legend: qsTr("New piece")
        filled: root.pieces.all === 0
        onActed: root.freshAsked()
    }
    TextEntry {
        id: sought
        objectName: "seek"
        anchors.left: fresh.right
        anchors.leftMargin: Metrics.mm(4)
        anchors.right: parent.right
        height: fresh.height
        visible: root.pieces.all > 1
        placeholder: qsTr("Search: title, reference, for whom")
        onTextChanged: root.pieces.seek(text)
        onAccepted: leave()
    }
    Words {
        anchors.top: fresh.bottom
        anchors.topMargin: Metrics.mm(6)
        width: parent.width
        visible: root.pieces.count === 0
        text: root.pieces.all === 0 ? qsTr("No piece yet. New piece begins one from the size of the work; a job file is taken in by starting the program with it.") : qsTr("No piece is called so.")
        color: Theme.quiet
        font.pixelSize: Metrics.deskText
    }
    GridView {
        id: board
        anchors.top: fresh.bottom
        anchors.topMargin: Metrics.mm(3)
        anchors.bottom: parent.bottom
        width: parent.width + Metrics.deskGap
        clip: true
        model: root.pieces
        cellWidth: width / root.columns
        cellHeight: Metrics.mm(40)
        boundsBehavior: Flickable.StopAtBounds

        delegate: PieceCard {
            required property int index

            objectName: "piece" + index
            width: board.cellWidth - Metrics.deskGap
            height: board.cellHeight - Metrics.deskGap
            onActed: {
                root.pieces.choose(index);
                root.chosen();
            }
        }
    }
}
