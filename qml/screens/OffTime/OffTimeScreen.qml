import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// How long was this bench off? Asked where no clock can tell.
CornerFrame {
    id: root

    required property OffTimeViewModel off

    keys: [
        TouchKey {
            objectName: "less"
            width: Metrics.corner
            height: Metrics.benchKey
            legend: "−"
            legendSize: Metrics.title * 1.4
            repeats: true
            onActed: root.off.less()
        },
        TouchKey {
            objectName: "more"
            width: Metrics.corner
            height: Metrics.benchKey
            legend: "+"
            legendSize: Metrics.title * 1.4
            repeats: true
            onActed: root.off.more()
        },
        TouchKey {
            objectName: "anHour"
            width: Metrics.corner
            height: Metrics.benchKey
            legendSize: Metrics.label
            legend: qsTr("About an hour")
            onActed: root.off.anHour()
        },
        TouchKey {
            objectName: "byClock"
            visible: root.off.byClock !== ""
            width: Metrics.corner
            height: Metrics.benchKey
            legendSize: Metrics.label
            legend: qsTr("By the clock")
            hint: root.off.byClock
            onActed: root.off.takeClock()
        }
    ]

    Column {
        width: parent.width
        spacing: Metrics.mm(4)

        Words {
            width: parent.width
            text: qsTr("How long was this bench off?")
            font.bold: true
            font.pixelSize: Metrics.title
        }
        Words {
            width: parent.width
            text: root.off.answer
            font.bold: true
            font.pixelSize: Metrics.figure
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.off.refusal
            color: Theme.worked
            font.bold: true
        }
        Words {
            width: parent.width
            visible: root.off.lastSeen !== ""
            text: qsTr("Its last sign of life was at %1 by its clock, which cannot be trusted.").arg(root.off.lastSeen)
        }
        Words {
            width: parent.width
            text: qsTr("Waits that ran meanwhile are reckoned with your answer and marked as told. Until then the least counts, and what may be due is called.")
        }
        Words {
            width: parent.width
            text: qsTr("Pedal: left changes the answer, right keeps it. Back leaves it open.")
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
}
