import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The room as read off a hygrometer, or by a sensor, and what it does to the waits.
CornerFrame {
    id: root

    required property RoomViewModel room

    keys: [
        TouchKey {
            objectName: "less"
            width: Metrics.corner
            height: Metrics.benchKey
            legend: "−"
            legendSize: Metrics.title * 1.4
            repeats: true
            onActed: root.room.less()
        },
        TouchKey {
            objectName: "more"
            width: Metrics.corner
            height: Metrics.benchKey
            legend: "+"
            legendSize: Metrics.title * 1.4
            repeats: true
            onActed: root.room.more()
        },
        TouchKey {
            objectName: "other"
            width: Metrics.corner
            height: Metrics.benchKey
            legendSize: Metrics.label
            legend: root.room.onHumidity ? qsTr("Set warmth") : qsTr("Set humidity")
            onActed: root.room.other()
        }
    ]

    Column {
        width: parent.width
        spacing: Metrics.mm(3)

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
        }
        Words {
            width: parent.width
            text: qsTr("Oil size, oil varnish: %1").arg(root.room.oil)
        }
        Words {
            width: parent.width
            text: qsTr("Against the label's time at 23 °C and 50 %. What the finger finds counts.")
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
    TouchKey {
        objectName: "sensor"
        visible: root.room.hasSensors
        anchors.right: parent.right
        anchors.rightMargin: Metrics.mm(2)
        y: Metrics.mm(11)
        width: Metrics.corner
        height: Metrics.benchKey
        legendSize: Metrics.label
        legend: root.room.sensor === "" ? qsTr("By hand") : qsTr("By sensor")
        hint: root.room.sensor
        onActed: root.room.nextSensor()
    }
}
