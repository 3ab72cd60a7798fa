pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The picture files found, of which one becomes the picture of the sheet.
Item {
    id: root

    required property AppearanceViewModel appearance

    signal over

    Words {
        id: which
        width: parent.width
        text: root.appearance.pictures.count === 0 ? qsTr("No picture was found among this tablet's pictures and downloads, or on what is plugged in.") : qsTr("Which picture?")
        font.pixelSize: Metrics.deskText
    }
    ListView {
        anchors.top: which.bottom
        anchors.topMargin: Metrics.mm(2)
        anchors.bottom: leave.top
        anchors.bottomMargin: Metrics.mm(2)
        width: parent.width
        clip: true
        model: root.appearance.pictures
        spacing: Metrics.mm(1.5)
        boundsBehavior: Flickable.StopAtBounds

        delegate: TouchKey {
            id: picture

            required property int index
            required property string title
            required property string note

            width: ListView.view.width
            height: Metrics.mm(13)
            legendSize: Metrics.deskText
            hintSize: Metrics.deskLabel
            offers: ScreenAction {
                name: "picture" + picture.index
                text: picture.title
                hint: picture.note
                enabled: root.visible
                onTriggered: {
                    root.appearance.keepPicture(picture.index);
                    root.over();
                }
            }
        }
    }
    DeskKey {
        id: leave
        anchors.bottom: parent.bottom
        offers: ScreenAction {
            name: "leavePictures"
            text: qsTr("Back")
            enabled: root.visible
            onTriggered: root.over()
        }
    }
}
