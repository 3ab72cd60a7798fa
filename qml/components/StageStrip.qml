pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// The stages of the piece in a row: what is done is filled, what was begun and left is filled to the half, what dries is
// hatched, where the maker is stands out with its name beside it, what is ahead is empty. A form for each, so that it can be read from afar and without colour.
Item {
    id: root

    // { "name", "standing" } of each stage; `standing` counts ahead, now, drying, done, begun.
    required property var stages
    readonly property int ahead: 0
    readonly property int now: 1
    readonly property int drying: 2
    readonly property int done: 3
    readonly property int begun: 4
    readonly property int here: stages.findIndex(stage => stage.standing === now)
    readonly property string dries: stages.filter(stage => stage.standing === drying).map(stage => stage.name).join(", ")
    readonly property string place: here < 0 ? "" : qsTr("%1 of %2").arg(here + 1).arg(stages.length)
    // What may stand beside the blocks, the fullest first; the first that has room is shown.
    readonly property var sayings: here >= 0 ? [qsTr("%1, %2").arg(place).arg(stages[here].name), place] : dries !== "" ? [qsTr("dries: %1").arg(dries)] : []
    readonly property double room: most - blocks.width - Metrics.mm(2)
    readonly property string said: sayings.find(text => letters.advanceWidth(text) + 1 < room) ?? ""
    readonly property FontMetrics letters: FontMetrics {
        font.family: Metrics.family
        font.pixelSize: Metrics.label
    }
    // The width it may take.
    property double most: parent.width

    implicitHeight: words.implicitHeight
    implicitWidth: words.x + (said === "" ? 0 : words.implicitWidth)
    width: implicitWidth
    height: implicitHeight

    Row {
        id: blocks
        anchors.verticalCenter: parent.verticalCenter
        spacing: Metrics.mm(0.7)

        Repeater {
            model: root.stages

            Rectangle {
                id: block

                required property var modelData
                readonly property int standing: modelData.standing

                width: Metrics.mm(standing === root.now ? 4.4 : 3)
                height: Metrics.mm(standing === root.now ? 4.4 : 3.4)
                anchors.verticalCenter: parent.verticalCenter
                color: standing === root.done ? Theme.ink : Theme.ground
                border.color: Theme.ink
                border.width: (standing === root.now ? 4 : 1) * Metrics.hairline

                Rectangle {
                    visible: block.standing === root.begun
                    anchors.bottom: parent.bottom
                    width: parent.width
                    height: parent.height / 2
                    color: Theme.ink
                }
                Column {
                    visible: block.standing === root.drying
                    anchors.centerIn: parent
                    spacing: Metrics.mm(0.5)

                    Repeater {
                        model: 3

                        Rectangle {
                            width: block.width
                            height: Metrics.hairline
                            color: Theme.ink
                        }
                    }
                }
            }
        }
    }
    Words {
        id: words
        objectName: "stages"
        x: blocks.width + Metrics.mm(2)
        width: implicitWidth
        text: root.said
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
    }
}
