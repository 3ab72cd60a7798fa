pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Theme

// The stages of the piece as a rule across the screen, read from two metres: what is done is filled, what was begun and
// left is filled to the half, what dries is hatched, where the maker is stands out taller, what is ahead is empty. A form
// for each, so that it can be read without colour.
Item {
    id: root
    objectName: "stageStrip"

    // { "name", "standing" } of each stage; `standing` counts ahead, now, drying, done, begun.
    required property var stages
    readonly property int ahead: 0
    readonly property int now: 1
    readonly property int drying: 2
    readonly property int done: 3
    readonly property int begun: 4
    readonly property int here: stages.findIndex(stage => stage.standing === now)
    readonly property string dries: stages.filter(stage => stage.standing === drying).map(stage => stage.name).join(", ")
    // In words, for where there is room.
    readonly property string said: here >= 0 ? qsTr("%1 of %2, %3").arg(here + 1).arg(stages.length).arg(stages[here].name) : dries !== "" ? qsTr("dries: %1").arg(dries) : ""
    readonly property double pitch: stages.length > 0 ? (width + gap) / stages.length : width
    readonly property double gap: Metrics.mm(0.7)

    implicitHeight: Metrics.mm(2.4)
    height: implicitHeight

    Repeater {
        model: root.stages

        Rectangle {
            id: block

            required property var modelData
            required property int index
            readonly property int standing: modelData.standing

            objectName: "stage" + index
            x: Math.round(index * root.pitch)
            width: Math.round((index + 1) * root.pitch - root.gap) - x
            anchors.bottom: parent.bottom
            height: standing === root.now ? root.height : root.height * 0.55
            color: standing === root.done ? Theme.ink : Theme.ground
            border.color: Theme.ink
            border.width: standing === root.now ? Metrics.mm(0.6) : Metrics.hairline

            Rectangle {
                visible: block.standing === root.begun
                width: parent.width / 2
                height: parent.height
                color: Theme.ink
            }
            Row {
                visible: block.standing === root.drying
                anchors.centerIn: parent
                spacing: Metrics.mm(1)

                Repeater {
                    model: Math.max(0, Math.floor(block.width / Metrics.mm(1.6)))

                    Rectangle {
                        width: Metrics.mm(0.5)
                        height: block.height
                        color: Theme.ink
                    }
                }
            }
        }
    }
}
