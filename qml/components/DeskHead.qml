pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// The head of every screen of the desk: now, in ink, at the left; the places of the desk as keys, the present one sunk; the
// way to the bench at the right end.
Item {
    id: root

    required property ActionArea area
    // "14:05"
    required property string time

    height: Metrics.deskKey

    component HeadKey: TouchKey {
        height: root.height
        width: Math.ceil(letters.advanceWidth(legend)) + Metrics.mm(8)
        legendSize: Metrics.deskText
        margin: 0
    }

    FontMetrics {
        id: letters
        font.family: Metrics.family
        font.bold: true
        font.pixelSize: Metrics.deskText
    }
    Words {
        id: now
        objectName: "now"
        height: parent.height
        verticalAlignment: Text.AlignVCenter
        text: root.time
        font.bold: true
        font.pixelSize: Metrics.deskTitle
        wrapMode: Text.NoWrap
        lineHeight: 1
    }
    Row {
        anchors.left: now.right
        anchors.leftMargin: now.text === "" ? 0 : Metrics.mm(3)
        spacing: Metrics.deskGap

        ActionKeys {
            area: root.area
            place: ScreenAction.Head

            HeadKey {
                required property ScreenAction modelData

                offers: modelData
            }
        }
    }
    Row {
        anchors.right: parent.right

        ActionKeys {
            area: root.area
            place: ScreenAction.TopCorner

            HeadKey {
                required property ScreenAction modelData

                offers: modelData
            }
        }
    }
}
