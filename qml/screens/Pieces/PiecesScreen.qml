pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The board of all pieces; below it a new one, one from a file, the search, and the scale they are drawn to.
DeskFrame {
    id: root

    required property PiecesModel pieces
    required property DesignViewModel design

    property bool choosesFile: false
    // On a tablet that stands the pages and the scale have a line of their own.
    readonly property bool narrow: width < Metrics.mm(180)

    place: "pieces"

    function done() {
        sought.leave();
    }

    // Enter ends the search.
    doneAction.enabled: sought.writing

    component FootKey: TouchKey {
        height: Metrics.deskKey
        width: Math.ceil(letters.advanceWidth(legend)) + Metrics.mm(8)
        legendSize: Metrics.deskText
        margin: 0
    }

    FontMetrics {
        id: letters
        font.family: Metrics.family
        font.bold: true
        font.pixelSize: Metrics.deskText
    }
    PieceBoard {
        id: board
        anchors.top: parent.top
        anchors.bottom: root.narrow ? scaled.top : foot.top
        // The last column's gap and the last row's lie beyond its cards.
        width: parent.width + gap
        visible: !root.choosesFile
        pieces: root.pieces
        onTaken: row => {
            root.pieces.choose(row);
            root.asked("piece");
        }
    }
    FileList {
        anchors.top: parent.top
        anchors.bottom: foot.top
        anchors.bottomMargin: Metrics.mm(3)
        width: parent.width
        visible: root.choosesFile
        pieces: root.pieces
        onTaken: {
            root.choosesFile = false;
            root.asked("piece");
        }
    }
    // Right above the keys that it speaks of.
    Words {
        anchors.bottom: foot.top
        anchors.bottomMargin: Metrics.mm(6)
        width: Math.min(parent.width, Metrics.mm(130))
        visible: root.pieces.count === 0 && !root.choosesFile
        text: root.pieces.all === 0 ? qsTr("No piece yet. New piece begins one from the size of the artwork; From a file takes in a job file, or a piece handed over with its record.") : qsTr("No piece is called so.")
        font.pixelSize: Metrics.deskTitle
    }
    Row {
        id: foot
        anchors.bottom: parent.bottom
        height: Metrics.deskKey
        spacing: Metrics.deskGap

        FootKey {
            offers: ScreenAction {
                name: "newPiece"
                text: qsTr("New piece")
                filled: root.pieces.all === 0
                onTriggered: {
                    if (root.design.beginFresh())
                        root.asked("design");
                }
            }
        }
        FootKey {
            offers: ScreenAction {
                name: "takeFile"
                text: root.choosesFile ? qsTr("Back") : qsTr("From a file")
                onTriggered: {
                    if (!root.choosesFile)
                        root.pieces.findFiles();
                    root.choosesFile = !root.choosesFile;
                }
            }
        }
        FootKey {
            offers: ScreenAction {
                name: "showAway"
                text: root.pieces.awayShown ? qsTr("Under way") : qsTr("Put away (%1)").arg(root.pieces.away)
                enabled: root.pieces.away > 0 || root.pieces.awayShown
                onTriggered: root.pieces.showAway(!root.pieces.awayShown)
            }
        }
    }
    TextEntry {
        id: sought
        objectName: "seek"
        anchors.left: foot.right
        anchors.leftMargin: Metrics.deskGap
        anchors.right: root.narrow ? parent.right : turning.left
        anchors.rightMargin: root.narrow ? 0 : Metrics.deskGap
        anchors.verticalCenter: foot.verticalCenter
        height: Metrics.deskKey
        visible: root.pieces.all > 1 && !root.choosesFile
        placeholder: qsTr("title, reference, for whom")
        onTextChanged: root.pieces.seek(text)
        onAccepted: leave()
    }
    Row {
        id: turning
        anchors.right: scaled.left
        anchors.rightMargin: Metrics.mm(3)
        anchors.verticalCenter: scaled.verticalCenter
        visible: board.several && board.visible
        width: visible ? implicitWidth : 0
        spacing: Metrics.deskGap

        FootKey {
            stays: true
            offers: ScreenAction {
                name: "earlierPieces"
                text: qsTr("Earlier")
                enabled: board.several && board.visible && board.page > 0
                onTriggered: board.turn(-1)
            }
        }
        FootKey {
            stays: true
            offers: ScreenAction {
                name: "morePieces"
                text: qsTr("More")
                enabled: board.several && board.visible && board.page < board.pages - 1
                onTriggered: board.turn(1)
            }
        }
    }
    Column {
        id: scaled
        anchors.right: parent.right
        y: foot.y + (Metrics.deskKey - height) / 2 - (root.narrow ? Metrics.deskKey + Metrics.deskGap : 0)
        visible: board.visible && board.count > 0

        Words {
            anchors.right: parent.right
            text: board.several ? qsTr("%1 to %2 of %3, to one scale").arg(board.first).arg(board.last).arg(board.count) : qsTr("all drawn to one scale")
            color: Theme.quiet
            font.pixelSize: Metrics.deskText
            wrapMode: Text.NoWrap
        }
        ScaleMark {
            anchors.right: parent.right
            pixels: board.pixels
            inches: root.pieces.inches
        }
    }
}
