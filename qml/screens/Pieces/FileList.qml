pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The files that a piece can be taken in from, and why one was not.
Item {
    id: root

    required property PiecesModel pieces

    signal taken

    Words {
        id: which
        width: parent.width
        text: root.pieces.said !== "" ? root.pieces.said : root.pieces.files.count === 0 ? qsTr("No job file was found in Documents/Mountwright, among the downloads, or on what is plugged in. They end in .job.json or .record.json.") : qsTr("Which file?")
        font.bold: root.pieces.refused && root.pieces.said !== ""
        font.pixelSize: Metrics.deskText
    }
    ListView {
        id: list
        anchors.top: which.bottom
        anchors.topMargin: Metrics.mm(2)
        anchors.bottom: parent.bottom
        width: parent.width
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
                    if (!root.pieces.refused)
                        root.taken();
                }
            }
        }
    }
}
