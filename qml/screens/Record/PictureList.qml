pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// Which of the pictures at hand is kept.
Item {
    id: root

    required property RecordViewModel record

    signal over

    component Act: TouchKey {
        width: Metrics.mm(40)
        height: Metrics.mm(13)
        legendSize: Metrics.deskText
    }

    Words {
        id: which
        width: parent.width
        text: root.record.pictures.count === 0 ? qsTr("No picture was found among this tablet's pictures and downloads, or on what is plugged in.") : qsTr("Which picture?")
        font.pixelSize: Metrics.deskText
    }
    ListView {
        anchors.top: which.bottom
        anchors.topMargin: Metrics.mm(2)
        anchors.bottom: leave.top
        anchors.bottomMargin: Metrics.mm(2)
        width: parent.width
        clip: true
        model: root.record.pictures
        spacing: Metrics.mm(1.5)
        boundsBehavior: Flickable.StopAtBounds

        delegate: TouchKey {
            required property int index
            required property string title
            required property string note

            objectName: "picture" + index
            width: ListView.view.width
            height: Metrics.mm(13)
            legend: title
            legendSize: Metrics.deskText
            hint: note
            hintSize: Metrics.deskLabel
            onActed: {
                root.record.keepPicture(index);
                root.over();
            }
        }
    }
    Act {
        id: leave
        objectName: "leavePictures"
        anchors.bottom: parent.bottom
        legend: qsTr("Back")
        onActed: root.over()
    }
}
