import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The room as read off a hygrometer, keyed in, or by a sensor, and its effect on the waits.
CornerFrame {
    id: root

    required property RoomViewModel room
    required property WatchViewModel watch

    function done() {
        if (room.keep())
            leave();
    }
    Component.onCompleted: room.open()

    shelfShown: !upright
    // The pedal moves the chosen value by what a hygrometer tells.
    actions: [
        ScreenAction {
            name: "less"
            text: qsTr("Less")
            place: ScreenAction.NoKey
            by: ScreenAction.Back
            onTriggered: root.room.less()
        },
        ScreenAction {
            name: "more"
            text: qsTr("More")
            place: ScreenAction.NoKey
            by: ScreenAction.Forward
            onTriggered: root.room.more()
        },
        ScreenAction {
            name: "sensor"
            text: root.room.sensor === "" ? qsTr("By hand") : qsTr("By sensor")
            hint: root.room.sensor
            enabled: root.room.hasSensors
            place: ScreenAction.AboveDone
            onTriggered: root.room.nextSensor()
        }
    ]

    Item {
        id: left
        width: root.upright ? root.width - 2 * parent.x : pad.x - Metrics.gap
        height: root.upright ? pad.y - Metrics.mm(2) : root.height - Metrics.edge - Metrics.corner - Metrics.gap - parent.y

        PageHead {
            id: head
            width: parent.width
            watch: root.watch
            title: qsTr("The room")
            note: root.room.basis
        }
        Row {
            id: values
            y: head.height + Metrics.mm(2)
            width: parent.width
            spacing: Metrics.gap

            RoomValue {
                objectName: "warmth"
                width: (parent.width - Metrics.gap) / 2
                caption: qsTr("warmth")
                value: root.room.temperature
                chosen: !root.room.onHumidity
                onAsked: root.room.choose(false)
            }
            RoomValue {
                objectName: "humidity"
                width: (parent.width - Metrics.gap) / 2
                caption: qsTr("humidity")
                value: root.room.humidity
                chosen: root.room.onHumidity
                onAsked: root.room.choose(true)
            }
        }
        FitPane {
            id: pane
            y: values.y + values.height + Metrics.mm(2)
            width: parent.width
            height: parent.height - y
            spacing: level === 0 ? Metrics.mm(1) : 0
            key: root.room.water + root.room.oil + root.room.refusal + root.room.basis
            tightest: 2

            Words {
                width: parent.width
                visible: text !== ""
                text: root.room.refusal
                color: Theme.worked
                font.bold: true
                font.pixelSize: Metrics.label
            }
            // What was keyed in and refused has no effect to tell.
            Words {
                width: parent.width
                visible: root.room.refusal === ""
                text: root.room.water === root.room.oil ? qsTr("Paste, paint, glue, oil: %1").arg(root.room.water) : qsTr("Paste, paint, glue: %1").arg(root.room.water)
                font.pixelSize: Metrics.label
            }
            Words {
                width: parent.width
                visible: root.room.refusal === "" && root.room.water !== root.room.oil
                text: qsTr("Oil size, oil varnish: %1").arg(root.room.oil)
                font.pixelSize: Metrics.label
            }
            Words {
                width: parent.width
                visible: pane.level < 1
                text: qsTr("Against the label's time at 23 °C and 50 %. What the finger finds counts.")
                color: Theme.quiet
                font.pixelSize: Metrics.label
            }
        }
    }
    NumberPad {
        id: pad
        x: root.upright ? 0 : parent.width - width - Metrics.mm(2)
        y: root.upright ? root.height - Metrics.edge - Metrics.corner - Metrics.gap - height - parent.y : 0
        onDigit: number => root.room.digit(number)
        onPart: root.room.part()
        onErased: root.room.erase()
    }
}
