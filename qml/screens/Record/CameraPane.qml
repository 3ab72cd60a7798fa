pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// What the camera sees, and taking it.
Item {
    id: root

    required property CameraViewModel camera

    signal fileAsked

    visible: camera.up

    component Act: TouchKey {
        width: Metrics.mm(40)
        height: Metrics.mm(13)
        legendSize: Metrics.deskText
    }

    CameraItem {
        anchors.top: parent.top
        anchors.bottom: still.top
        anchors.bottomMargin: Metrics.mm(2)
        width: parent.width
        camera: root.camera
    }
    Words {
        id: still
        anchors.bottom: shutter.top
        anchors.bottomMargin: text === "" ? 0 : Metrics.mm(2)
        width: parent.width
        height: text === "" ? 0 : implicitHeight
        text: root.camera.said
        font.pixelSize: Metrics.deskText
    }
    Flow {
        id: shutter
        anchors.bottom: parent.bottom
        width: parent.width
        spacing: Metrics.deskGap

        Act {
            objectName: "shutter"
            visible: root.camera.live
            legend: qsTr("Take it")
            filled: true
            onActed: root.camera.take()
        }
        Act {
            objectName: "otherCamera"
            visible: root.camera.live && root.camera.several
            legend: qsTr("Other camera")
            onActed: root.camera.turn()
        }
        Act {
            objectName: "fileInstead"
            visible: !root.camera.live
            legend: qsTr("Picture from a file")
            onActed: root.fileAsked()
        }
        Act {
            objectName: "leaveCamera"
            legend: qsTr("Back")
            onActed: root.camera.close()
        }
    }
}
