import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// How long was this bench off? Asked where no clock can tell.
CornerFrame {
    id: root

    required property OffTimeViewModel off

    function done() {
        if (off.tell())
            over();
    }
    function back() {
        off.later();
        over();
    }
    function pedalBack() {
        off.nextAnswer();
    }

    // Told elsewhere, or no longer asked.
    Connections {
        target: root.off
        function onChanged() {
            if (!root.off.offered)
                root.over();
        }
    }

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
        }
    ]

    Column {
        width: parent.width
        spacing: Metrics.mm(2)

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
            text: qsTr("Last sign of life: %1 by a clock that cannot be trusted.").arg(root.off.lastSeen)
        }
        Words {
            width: parent.width
            text: qsTr("Waits that ran meanwhile are reckoned with your answer.")
        }
        Words {
            width: parent.width - (byClock.visible ? byClock.width + Metrics.mm(6) : 0)
            text: qsTr("Pedal: left changes the answer, right keeps it. Back leaves it open.")
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
    TouchKey {
        id: byClock
        objectName: "byClock"
        visible: root.off.byClock !== ""
        anchors.right: parent.right
        anchors.rightMargin: Metrics.mm(2)
        anchors.bottom: parent.bottom
        width: Metrics.corner
        height: Metrics.benchKey
        legendSize: Metrics.label
        legend: qsTr("By the clock")
        hint: root.off.byClock
        onActed: root.off.takeClock()
    }
}
