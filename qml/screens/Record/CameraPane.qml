pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The camera's view, and taking a picture.
Item {
    id: root

    required property CameraViewModel camera

    signal fileAsked

    visible: camera.up

    CameraItem {
        visible: root.camera.live
        height: still.y - Metrics.mm(2)
        width: parent.width
        camera: root.camera
    }
    Words {
        id: still
        // Where there is nothing to see it stands at the top, and its keys with it.
        y: root.camera.live ? shutter.y - (text === "" ? 0 : height + Metrics.mm(2)) : 0
        width: parent.width
        height: text === "" ? 0 : implicitHeight
        text: root.camera.said
        font.pixelSize: Metrics.deskText
    }
    Flow {
        id: shutter
        y: root.camera.live ? parent.height - height : still.height + Metrics.mm(3)
        width: parent.width
        spacing: Metrics.deskGap

        DeskKey {
            offers: ScreenAction {
                name: "shutter"
                text: qsTr("Take it")
                filled: true
                enabled: root.visible && root.camera.live
                onTriggered: root.camera.take()
            }
        }
        DeskKey {
            offers: ScreenAction {
                name: "otherCamera"
                text: qsTr("Other camera")
                enabled: root.visible && root.camera.live && root.camera.several
                onTriggered: root.camera.turn()
            }
        }
        DeskKey {
            offers: ScreenAction {
                name: "fileInstead"
                text: qsTr("Picture from a file")
                enabled: root.visible && !root.camera.live
                onTriggered: root.fileAsked()
            }
        }
        DeskKey {
            offers: ScreenAction {
                name: "leaveCamera"
                text: qsTr("Back")
                enabled: root.visible
                onTriggered: root.camera.close()
            }
        }
    }
}
