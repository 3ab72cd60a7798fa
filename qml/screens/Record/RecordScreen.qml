pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The record of a piece, newest first, with room to add to it; and the sheets that go with it.
DeskFrame {
    id: root

    required property RecordViewModel record
    required property CameraViewModel camera
    readonly property bool happened: record.page === RecordViewModel.Happened
    property bool choosesPicture: false
    // True while the text written replaces that of the chosen entry.
    property bool rewrites: false

    place: ""

    // The camera is not needed while another screen is shown.
    onVisibleChanged: {
        if (!visible && camera.up)
            camera.close();
    }
    function closed() {
        if (camera.up)
            camera.close();
    }

    doneAction.enabled: happened && !choosesPicture
    function back() {
        if (camera.up)
            camera.close();
        else if (choosesPicture)
            choosesPicture = false;
        else
            leave();
    }
    function done() {
        if (camera.up)
            camera.take();
        else
            keepNote();
    }
    function fromFile() {
        if (camera.up)
            camera.close();
        record.findPictures();
        choosesPicture = true;
    }
    function keepNote() {
        if (rewrites ? record.changeText(writing.text) : record.addNote(writing.text))
            writing.text = "";
        rewrites = false;
        writing.leave();
    }
    function rewrite() {
        writing.begin(record.chosenText);
        rewrites = true;
    }

    Row {
        id: pages
        spacing: Metrics.deskGap

        Repeater {
            model: [
                {
                    "page": RecordViewModel.Happened,
                    "called": qsTr("What happened")
                },
                {
                    "page": RecordViewModel.ForClient,
                    "called": qsTr("For the client")
                },
                {
                    "page": RecordViewModel.ForConservator,
                    "called": qsTr("For a conservator")
                }
            ]

            DeskKey {
                id: pageKey

                required property var modelData

                offers: ScreenAction {
                    name: "page" + pageKey.modelData.page
                    text: pageKey.modelData.called
                    filled: root.record.page === pageKey.modelData.page
                    onTriggered: root.record.look(pageKey.modelData.page)
                }
            }
        }
    }
    Words {
        anchors.left: pages.right
        anchors.leftMargin: Metrics.mm(4)
        anchors.right: parent.right
        anchors.verticalCenter: pages.verticalCenter
        text: root.record.title
        font.bold: true
        font.pixelSize: Metrics.deskTitle
        maximumLineCount: 2
        elide: Text.ElideRight
    }
    ListView {
        id: list
        anchors.top: pages.bottom
        anchors.topMargin: Metrics.mm(3)
        anchors.bottom: parent.bottom
        width: root.happened ? parent.width * 0.56 : parent.width
        clip: true
        model: root.record.rows
        spacing: Metrics.mm(1.5)
        boundsBehavior: Flickable.StopAtBounds

        delegate: RecordLine {
            width: list.width
            opens: root.happened
            onAsked: row => root.record.choose(row)
        }
    }
    Item {
        id: side
        anchors.top: list.top
        anchors.bottom: parent.bottom
        anchors.left: list.right
        anchors.leftMargin: Metrics.mm(6)
        anchors.right: parent.right
        visible: root.happened

        Column {
            id: adding
            width: parent.width
            spacing: Metrics.mm(2)
            visible: !root.choosesPicture && !root.camera.up

            TextEntry {
                id: writing
                objectName: "note"
                width: parent.width
                height: Metrics.mm(12)
                placeholder: qsTr("A note, kept with Enter")
                onAccepted: root.keepNote()
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
                        enabled: adding.visible && !root.record.busy
                        onTriggered: root.camera.open()
                    }
                }
                DeskKey {
                    width: (parent.width - parent.spacing) / 2
                    stays: true
                    offers: ScreenAction {
                        name: "addPicture"
                        text: qsTr("Picture from a file")
                        enabled: adding.visible && !root.record.busy
                        onTriggered: root.fromFile()
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
                height: root.record.chosenPicture === "" || status === Image.Error ? 0 : Math.min(width, side.height * 0.5)
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

                    width: adding.width
                    height: Metrics.deskKey
                    legendSize: Metrics.deskText
                    offers: ScreenAction {
                        name: "batch" + batch.index
                        text: batch.title
                        filled: batch.chosen
                        enabled: adding.visible
                        onTriggered: root.record.turnBatch(batch.index)
                    }
                }
            }
            DeskKey {
                offers: ScreenAction {
                    name: "useFromElsewhere"
                    text: qsTr("Use it for this piece")
                    enabled: adding.visible && root.record.chosenElsewhere
                    onTriggered: root.record.useFromElsewhere()
                }
            }
            DeskKey {
                offers: ScreenAction {
                    name: "rewrite"
                    text: root.record.chosenPicture !== "" ? qsTr("Write under it") : qsTr("Put right")
                    enabled: adding.visible && root.record.chosenWritten
                    onTriggered: root.rewrite()
                }
            }
            DeskKey {
                offers: ScreenAction {
                    name: "remove"
                    text: qsTr("Leave it out")
                    enabled: adding.visible && root.record.chosenRemovable
                    onTriggered: root.record.remove()
                }
            }
        }
        CameraPane {
            anchors.fill: parent
            camera: root.camera
            onFileAsked: root.fromFile()
        }
        PictureList {
            anchors.fill: parent
            visible: root.choosesPicture
            record: root.record
            onOver: root.choosesPicture = false
        }
    }
}
