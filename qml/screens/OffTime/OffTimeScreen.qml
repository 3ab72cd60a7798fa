import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// How long was this bench off? Asked where no clock can measure it.
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

    // The question was answered elsewhere, or is no longer asked.
    Connections {
        target: root.off
        function onChanged() {
            if (!root.off.offered)
                root.over();
        }
    }

    // Two pedals are enough: one goes through the answers, the other records the one shown.
    actions: [
        ScreenAction {
            name: "nextAnswer"
            text: qsTr("Another answer")
            place: ScreenAction.NoKey
            by: ScreenAction.Back
            onTriggered: root.off.nextAnswer()
        },
        ScreenAction {
            name: "less"
            text: "−"
            called: qsTr("Less")
            repeats: true
            place: ScreenAction.AboveDone
            onTriggered: root.off.less()
        },
        ScreenAction {
            name: "more"
            text: "+"
            called: qsTr("More")
            repeats: true
            place: ScreenAction.AboveDone
            onTriggered: root.off.more()
        },
        ScreenAction {
            name: "anHour"
            text: qsTr("About an hour")
            place: ScreenAction.AboveDone
            onTriggered: root.off.anHour()
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
            font.pixelSize: Metrics.figureLeast
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
            text: qsTr("Waits that ran meanwhile are adjusted by your answer.")
        }
        Words {
            width: parent.width - (byClock.visible ? byClock.width + Metrics.mm(6) : 0)
            text: qsTr("Pedal: left changes the answer, right keeps it. Back leaves it open.")
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
    BenchKey {
        id: byClock
        anchors.right: parent.right
        anchors.rightMargin: Metrics.mm(2)
        anchors.bottom: parent.bottom
        offers: ScreenAction {
            name: "byClock"
            text: qsTr("By the clock")
            hint: root.off.byClock
            enabled: root.off.byClock !== ""
            onTriggered: root.off.takeClock()
        }
    }
}
