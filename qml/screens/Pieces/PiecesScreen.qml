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
    required property DesignViewModel design
    readonly property int columns: width > Metrics.mm(240) ? 3 : 2

    property bool choosesFile: false

    place: "pieces"

    function done() {
        sought.leave();
    }

    // Enter ends the search.
    doneAction.enabled: sought.writing

    TouchKey {
        id: fresh
        width: Metrics.mm(42)
        height: Metrics.mm(12)
        legendSize: Metrics.deskText
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
    TouchKey {
        id: take
        anchors.left: fresh.right
        anchors.leftMargin: Metrics.deskGap
        width: Metrics.mm(34)
        height: fresh.height
        legendSize: Metrics.deskText
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
    TouchKey {
        id: put
        anchors.left: take.right
        anchors.leftMargin: Metrics.deskGap
        width: Metrics.mm(34)
        height: fresh.height
        legendSize: Metrics.deskText
        offers: ScreenAction {
            name: "showAway"
            text: root.pieces.awayShown ? qsTr("On the bench") : qsTr("Put away (%1)").arg(root.pieces.away)
            enabled: root.pieces.away > 0 || root.pieces.awayShown
            onTriggered: root.pieces.showAway(!root.pieces.awayShown)
        }
    }
    TextEntry {
        id: sought
        objectName: "seek"
        anchors.left: put.visible ? put.right : take.right
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
        visible: root.pieces.count === 0 && !root.choosesFile
        text: root.pieces.all === 0 ? qsTr("No piece yet. New piece begins one from the size of the artwork; From a file takes in a job file, or a piece handed over with its record.") : qsTr("No piece is called so.")
        color: Theme.quiet
        font.pixelSize: Metrics.deskText
    }
    Column {
        anchors.top: fresh.bottom
        anchors.topMargin: Metrics.mm(3)
        width: parent.width
        height: parent.height - y
        visible: root.choosesFile
        spacing: Metrics.mm(2)

        Words {
            id: which
            width: parent.width
            text: root.pieces.said !== "" ? root.pieces.said : root.pieces.files.count === 0 ? qsTr("No job file was found in Documents/Mountwright, among the downloads, or on what is plugged in. They end in .job.json or .record.json.") : qsTr("Which file?")
            color: root.pieces.refused && root.pieces.said !== "" ? Theme.worked : Theme.ink
            font.pixelSize: Metrics.deskText
        }
        ListView {
            id: list
            width: parent.width
            height: parent.height - which.height - Metrics.mm(2)
            clip: true
            model: root.pieces.files
            spacing: Metrics.mm(1.5)
            boundsBehavior: Flickable.StopAtBounds

            delegate: TouchKey {
                id: file

                required property int index
                required property string title
                required property string note

                width: list.width
                height: Metrics.mm(13)
                legendSize: Metrics.deskText
                hintSize: Metrics.deskLabel
                offers: ScreenAction {
                    name: "file" + file.index
                    text: file.title
                    hint: file.note
                    onTriggered: {
                        root.pieces.takeIn(file.index);
                        if (!root.pieces.refused) {
                            root.choosesFile = false;
                            root.asked("piece");
                        }
                    }
                }
            }
        }
    }
    GridView {
        id: board
        anchors.top: fresh.bottom
        anchors.topMargin: Metrics.mm(3)
        anchors.bottom: parent.bottom
        width: parent.width + Metrics.deskGap
        visible: !root.choosesFile
        clip: true
        model: root.pieces
        cellWidth: width / root.columns
        cellHeight: Metrics.mm(40)
        boundsBehavior: Flickable.StopAtBounds

        delegate: PieceCard {
            width: board.cellWidth - Metrics.deskGap
            height: board.cellHeight - Metrics.deskGap
            onTaken: {
                root.pieces.choose(index);
                root.asked("piece");
            }
        }
    }
}
