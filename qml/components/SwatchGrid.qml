pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// Colours to choose from, each on a key with its name.
Flow {
    id: root

    required property var model  // rows with title, value ("#rrggbb") and chosen

    signal asked(int row)

    spacing: Metrics.deskGap

    Repeater {
        model: root.model

        TouchKey {
            id: key

            required property int index
            required property string title
            required property string value
            required property bool chosen

            width: (root.width - 4 * root.spacing) / 5
            height: Metrics.mm(13.5)
            legend: ""
            offers: ScreenAction {
                name: "swatch" + key.index
                text: key.title
                chosen: key.chosen
                enabled: root.visible
                onTriggered: root.asked(key.index)
            }

            // Ink round the colour, so that one like the key is seen on it.
            Rectangle {
                id: colour
                x: Metrics.mm(1.5)
                y: Metrics.mm(1.5)
                width: parent.width - 2 * x
                height: parent.height - name.height - y - Metrics.mm(1.5)
                color: key.value
                border.color: Theme.keyLine
                border.width: Metrics.hairline
            }
            Words {
                id: name
                anchors.bottom: parent.bottom
                anchors.bottomMargin: Metrics.mm(1.2)
                width: parent.width
                horizontalAlignment: Text.AlignHCenter
                text: key.title
                color: key.words
                font.bold: key.chosen
                font.pixelSize: Metrics.deskLabel
                wrapMode: Text.NoWrap
            }
        }
    }
}
