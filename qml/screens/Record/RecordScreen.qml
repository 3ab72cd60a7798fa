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
            entry.keep();
    }
    function fromFile() {
        if (camera.up)
            camera.close();
        record.findPictures();
        choosesPicture = true;
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

            TouchKey {
                id: pageKey

                required property var modelData

                width: Math.ceil(letters.advanceWidth(legend)) + Metrics.mm(8)
                height: Metrics.deskKey
                legendSize: Metrics.deskText
                margin: 0
                offers: ScreenAction {
                    name: "page" + pageKey.modelData.page
                    text: pageKey.modelData.called
                    chosen: root.record.page === pageKey.modelData.page
                    onTriggered: root.record.look(pageKey.modelData.page)
                }
            }
        }
    }
    FontMetrics {
        id: letters
        font.family: Metrics.family
        font.bold: true
        font.pixelSize: Metrics.deskText
    }
    ArtworkName {
        id: name
        // On a tablet that stands it has a line of its own.
        readonly property bool below: root.width < Metrics.mm(180)
        x: below ? 0 : pages.width + Metrics.mm(4)
        y: below ? pages.height + Metrics.mm(1) : (pages.height - height) / 2
        width: parent.width - x
        text: root.record.title.split(",")[0]
        font.pixelSize: Metrics.deskName
        maximumLineCount: 2
        elide: Text.ElideRight
        lineHeight: 0.8
    }
    ListView {
        id: list
        anchors.top: name.below ? name.bottom : pages.bottom
        anchors.topMargin: Metrics.mm(3)
        anchors.bottom: parent.bottom
        width: parent.width * 0.56
        visible: root.happened
        clip: true
        model: root.happened ? root.record.rows : null
        spacing: Metrics.mm(1.5)
        boundsBehavior: Flickable.StopAtBounds

        delegate: RecordLine {
            width: list.width
            onAsked: row => entry.choose(row)
        }
    }
    ListView {
        id: sheet
        anchors.top: name.below ? name.bottom : pages.bottom
        anchors.topMargin: Metrics.mm(1)
        anchors.bottom: parent.bottom
        width: parent.width
        visible: !root.happened
        clip: true
        model: root.happened ? null : root.record.rows
        spacing: Metrics.mm(1)
        boundsBehavior: Flickable.StopAtBounds

        delegate: SheetLine {
            width: sheet.width
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

        EntryPane {
            id: entry
            anchors.fill: parent
            visible: !root.choosesPicture && !root.camera.up
            record: root.record
            onCameraAsked: root.camera.open()
            onFileAsked: root.fromFile()
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
