pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Record
import Mountwright.Theme
import Mountwright.ViewModels

// How a material of the shop looks: on the left its colour, on the right a strip of it and the picture of its sheet.
DeskFrame {
    id: root

    required property AppearanceViewModel appearance
    required property CameraViewModel camera
    property bool choosesPicture: false

    place: ""

    Component.onCompleted: appearance.setTakesPictures(true)
    function closed() {
        if (camera.up)
            camera.close();
        appearance.setTakesPictures(false);
    }
    onVisibleChanged: {
        if (!visible && camera.up)
            camera.close();
    }

    doneAction.enabled: !choosesPicture
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
        else if (across.writing || appearance.lacksAcross)
            across.keep();
        else
            hex.keep();
    }
    function fromFile() {
        if (camera.up)
            camera.close();
        appearance.findPictures();
        choosesPicture = true;
    }

    actions: [
        ScreenAction {
            name: "plain"
            text: qsTr("As its name says")
            enabled: !root.appearance.plain
            place: ScreenAction.Foot
            onTriggered: root.appearance.makePlain()
        },
        ScreenAction {
            name: "takeBack"
            text: qsTr("Undo")
            enabled: root.appearance.canTakeBack
            place: ScreenAction.Foot
            onTriggered: root.appearance.takeBack()
        },
        ScreenAction {
            name: "toMaterials"
            text: qsTr("Back")
            place: ScreenAction.Foot
            onTriggered: root.back()
        }
    ]

    Words {
        id: title
        width: parent.width
        text: qsTr("How %1 looks").arg(root.appearance.title)
        font.bold: true
        font.pixelSize: Metrics.deskTitle
        maximumLineCount: 2
    }
    Item {
        id: left
        anchors.top: title.bottom
        anchors.topMargin: Metrics.mm(3)
        anchors.bottom: parent.bottom
        width: parent.width * 0.53

        SwatchGrid {
            id: grid
            width: parent.width
            model: root.appearance.colours
            onAsked: row => root.appearance.chooseColour(row)
        }
        Row {
            id: told
            anchors.top: grid.bottom
            anchors.topMargin: Metrics.mm(3)
            spacing: Metrics.deskGap

            Rectangle {
                anchors.verticalCenter: parent.verticalCenter
                visible: root.appearance.colour !== ""
                width: Metrics.mm(9)
                height: Metrics.mm(9)
                color: root.appearance.colour === "" ? "transparent" : root.appearance.colour
                border.color: Theme.keyLine
                border.width: Metrics.hairline
            }
            Words {
                anchors.verticalCenter: parent.verticalCenter
                text: root.appearance.colour === "" ? qsTr("Colour: as its name says.") : qsTr("Colour: %1").arg(root.appearance.colour)
                font.pixelSize: Metrics.deskText
                wrapMode: Text.NoWrap
            }
            TextEntry {
                id: hex
                objectName: "colour"
                width: Metrics.mm(40)
                placeholder: qsTr("another, #rrggbb")
                onAccepted: keep()

                function keep() {
                    if (text.trim() !== "" && root.appearance.enterColour(text))
                        text = "";
                    leave();
                }
            }
        }
        Words {
            anchors.top: told.bottom
            anchors.topMargin: Metrics.mm(1.5)
            width: parent.width
            text: root.appearance.refusal
            color: Theme.worked
            font.bold: true
            font.pixelSize: Metrics.deskText
        }
        Row {
            anchors.bottom: parent.bottom
            spacing: Metrics.deskGap

            ActionKeys {
                area: root
                place: ScreenAction.Foot

                DeskKey {
                    required property ScreenAction modelData

                    width: Metrics.mm(35)
                    stays: true
                    offers: modelData
                }
            }
        }
    }
    Item {
        anchors.top: left.top
        anchors.bottom: parent.bottom
        anchors.left: left.right
        anchors.leftMargin: Metrics.mm(5)
        anchors.right: parent.right

        Column {
            id: side
            anchors.fill: parent
            visible: !root.choosesPicture && !root.camera.up
            spacing: Metrics.mm(2)

            Rectangle {
                width: parent.width
                height: Metrics.mm(20)
                color: Theme.cloth

                PieceView {
                    objectName: "sample"
                    anchors.fill: parent
                    anchors.margins: Metrics.mm(2)
                    drawing: root.appearance.sample
                }
            }
            Words {
                width: parent.width
                visible: text !== ""
                text: root.appearance.trouble
                color: Theme.worked
                font.bold: true
                font.pixelSize: Metrics.deskText
            }
            Row {
                visible: root.appearance.paper
                width: parent.width
                spacing: Metrics.deskGap

                DeskKey {
                    width: (parent.width - parent.spacing) / 2
                    stays: true
                    offers: ScreenAction {
                        name: "takePicture"
                        text: root.appearance.busy ? qsTr("Copying …") : qsTr("Photograph it")
                        enabled: side.visible && root.appearance.paper && !root.appearance.busy
                        onTriggered: root.camera.open()
                    }
                }
                DeskKey {
                    width: (parent.width - parent.spacing) / 2
                    stays: true
                    offers: ScreenAction {
                        name: "addPicture"
                        text: qsTr("Picture from a file")
                        enabled: side.visible && root.appearance.paper && !root.appearance.busy
                        onTriggered: root.fromFile()
                    }
                }
            }
            Image {
                id: sheet
                visible: root.appearance.picture !== "" && status !== Image.Error
                width: Math.min(parent.width, Metrics.mm(60))
                height: visible ? Metrics.mm(26) : 0
                sourceSize.width: width
                sourceSize.height: Metrics.mm(26)
                fillMode: Image.PreserveAspectFit
                horizontalAlignment: Image.AlignLeft
                asynchronous: true
                source: root.appearance.picture === "" ? "" : "image://photographs/" + root.appearance.picture
            }
            Words {
                width: parent.width
                visible: root.appearance.picture !== ""
                text: root.appearance.lacksAcross ? qsTr("How much of the sheet does it show, from left to right? It is used once that is entered.") : qsTr("It shows %1 of the sheet, as entered.").arg(root.appearance.across)
                font.pixelSize: Metrics.deskText
            }
            Row {
                visible: root.appearance.picture !== ""
                width: parent.width
                spacing: Metrics.deskGap

                TextEntry {
                    id: across
                    objectName: "across"
                    width: Metrics.mm(32)
                    height: Metrics.mm(13)
                    placeholder: qsTr("width in %1").arg(root.appearance.unit)
                    onAccepted: keep()

                    function keep() {
                        if (text.trim() !== "" && root.appearance.enterAcross(text))
                            text = "";
                        leave();
                    }
                }
                DeskKey {
                    width: parent.width - across.width - parent.spacing
                    offers: ScreenAction {
                        name: "wholeSheet"
                        text: qsTr("The whole sheet, %1").arg(root.appearance.sheetAcross)
                        enabled: side.visible && root.appearance.picture !== "" && root.appearance.sheetAcross !== ""
                        onTriggered: root.appearance.enterWholeSheet()
                    }
                }
            }
            DeskKey {
                width: (parent.width - Metrics.deskGap) / 2
                offers: ScreenAction {
                    name: "removePicture"
                    text: qsTr("No picture")
                    enabled: side.visible && root.appearance.picture !== ""
                    onTriggered: root.appearance.removePicture()
                }
            }
        }
        CameraPane {
            anchors.fill: parent
            camera: root.camera
            onFileAsked: root.fromFile()
        }
        SheetPictureList {
            anchors.fill: parent
            visible: root.choosesPicture
            appearance: root.appearance
            onOver: root.choosesPicture = false
        }
    }
}
