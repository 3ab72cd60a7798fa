pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// A note to write, a picture to add, and what can be done with the chosen entry of the record.
Column {
    id: root

    required property RecordViewModel record
    // True while the text written replaces that of the chosen entry.
    property bool rewrites: false

    signal cameraAsked
    signal fileAsked

    spacing: Metrics.mm(2)

    function keep() {
        if (rewrites ? record.changeText(writing.text) : record.addNote(writing.text))
            writing.text = "";
        rewrites = false;
        writing.leave();
    }
    function rewrite() {
        writing.begin(record.chosenText);
        rewrites = true;
    }
    // The text of one entry must not be kept on another.
    function choose(row: int) {
        if (rewrites) {
            rewrites = false;
            writing.text = "";
            writing.leave();
        }
        record.choose(row);
    }

    TextEntry {
        id: writing
        objectName: "note"
        width: parent.width
        height: Metrics.mm(12)
        placeholder: qsTr("A note, kept with Enter")
        onAccepted: root.keep()
        onOver: root.rewrites = false
    }
    Row {
        width: parent.width
        spacing: Metrics.deskGap

        DeskKey {
            width: (parent.width - parent.spacing) / 2
            stays: true
            offers: ScreenAction {
                name: "takePicture"
                text: root.record.busy ? qsTr("Copying …") : qsTr("Photograph it")
                enabled: root.visible && !root.record.busy
                onTriggered: root.cameraAsked()
            }
        }
        DeskKey {
            width: (parent.width - parent.spacing) / 2
            stays: true
            offers: ScreenAction {
                name: "addPicture"
                text: qsTr("Picture from a file")
                enabled: root.visible && !root.record.busy
                onTriggered: root.fileAsked()
            }
        }
    }
    Words {
        width: parent.width
        visible: text !== ""
        text: root.record.refusal
        color: Theme.worked
        font.bold: true
        font.pixelSize: Metrics.deskText
    }
    Words {
        width: parent.width
        visible: text !== ""
        text: root.record.chosenTitle
        font.bold: true
        font.pixelSize: Metrics.deskText
    }
    Words {
        width: parent.width
        visible: text !== ""
        text: root.record.pictureTrouble
        color: Theme.worked
        font.pixelSize: Metrics.deskText
    }
    Image {
        width: parent.width
        height: root.record.chosenPicture === "" || status === Image.Error ? 0 : Math.min(width, root.height * 0.5)
        visible: height > 0
        sourceSize.width: width
        sourceSize.height: width
        fillMode: Image.PreserveAspectFit
        asynchronous: true
        source: root.record.chosenPicture === "" ? "" : "image://photographs/" + root.record.chosenPicture
        onStatusChanged: {
            if (status === Image.Error)
                root.record.explainPicture();
        }
    }
    Words {
        width: parent.width
        visible: root.record.chosenStep
        text: root.record.batches.count === 0 ? qsTr("No batch is on record; they are entered under Materials.") : qsTr("Worked with:")
        color: Theme.quiet
        font.pixelSize: Metrics.deskLabel
    }
    Repeater {
        model: root.record.batches

        TouchKey {
            id: batch

            required property int index
            required property string title
            required property bool chosen

            width: root.width
            height: Metrics.deskKey
            legendSize: Metrics.deskText
            offers: ScreenAction {
                name: "batch" + batch.index
                text: batch.title
                chosen: batch.chosen
                enabled: root.visible
                onTriggered: root.record.turnBatch(batch.index)
            }
        }
    }
    DeskKey {
        offers: ScreenAction {
            name: "useFromElsewhere"
            text: qsTr("Use it for this piece")
            enabled: root.visible && root.record.chosenElsewhere
            onTriggered: root.record.useFromElsewhere()
        }
    }
    DeskKey {
        offers: ScreenAction {
            name: "rewrite"
            text: root.record.chosenPicture !== "" ? qsTr("Write under it") : qsTr("Put right")
            enabled: root.visible && root.record.chosenWritten
            onTriggered: root.rewrite()
        }
    }
    DeskKey {
        offers: ScreenAction {
            name: "remove"
            text: qsTr("Leave it out")
            enabled: root.visible && root.record.chosenRemovable
            onTriggered: root.record.remove()
        }
    }
}
