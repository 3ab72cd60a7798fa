import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The room as read off a hygrometer, or by a sensor, and its effect on the waits.
CornerFrame {
    id: root

    required property RoomViewModel room

    function done() {
        if (room.keep())
            leave();
    }
    Component.onCompleted: room.open()

    shelfShown: !upright
    actions: [
        ScreenAction {
            name: "less"
            text: "−"
            called: qsTr("Less")
            repeats: true
            place: ScreenAction.AboveDone
            by: ScreenAction.Back
            onTriggered: root.room.less()
        },
        ScreenAction {
            name: "more"
            text: "+"
            called: qsTr("More")
            repeats: true
            place: ScreenAction.AboveDone
            by: ScreenAction.Forward
            onTriggered: root.room.more()
        },
        ScreenAction {
            name: "other"
            text: root.room.onHumidity ? qsTr("Set warmth") : qsTr("Set humidity")
            place: ScreenAction.AboveDone
            onTriggered: root.room.other()
        }
    ]

    FitPane {
        id: pane
        width: parent.width
        height: parent.height - (root.upright && sensor.visible ? sensor.height + Metrics.mm(2) : 0)
        spacing: level === 0 ? Metrics.mm(3) : Metrics.mm(1.5)
        key: root.room.water + root.room.oil + root.room.refusal
        tightest: 2

        Words {
            width: parent.width
            text: qsTr("The room")
            font.bold: true
            font.pixelSize: Metrics.title
        }
        Flow {
            width: parent.width
            spacing: Metrics.mm(6)

            RoomValue {
                caption: qsTr("warmth")
                value: root.room.temperature
                chosen: !root.room.onHumidity
            }
            RoomValue {
                caption: qsTr("relative humidity")
                value: root.room.humidity
                chosen: root.room.onHumidity
            }
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.room.refusal
            color: Theme.worked
            font.bold: true
        }
        Words {
            width: parent.width
            text: root.room.basis
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
        Words {
            width: parent.width
            text: qsTr("Paste, paint, glue: %1").arg(root.room.water)
            font.pixelSize: pane.level < 2 ? Metrics.text : Metrics.label
        }
        Words {
            width: parent.width
            text: qsTr("Oil size, oil varnish: %1").arg(root.room.oil)
            font.pixelSize: pane.level < 2 ? Metrics.text : Metrics.label
        }
        Words {
            width: parent.width
            text: qsTr("Against the label's time at 23 °C and 50 %. What the finger finds counts.")
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
    BenchKey {
        id: sensor
        anchors.right: parent.right
        anchors.rightMargin: Metrics.mm(2)
        // On an upright tablet the values reach as far as this key, and there is room below.
        y: root.upright ? parent.height - height : Metrics.mm(11)
        offers: ScreenAction {
            name: "sensor"
            text: root.room.sensor === "" ? qsTr("By hand") : qsTr("By sensor")
            hint: root.room.sensor
            enabled: root.room.hasSensors
            onTriggered: root.room.nextSensor()
        }
    }
}
