import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// How long was the tablet off? Asked where no clock can measure it.
CornerFrame {
    id: root

    required property OffTimeViewModel off
    required property WatchViewModel watch
    readonly property double footTop: height - Metrics.edge - Metrics.corner - (upright && shelfShown ? Metrics.gap + Metrics.corner : 0)
    readonly property double keysTop: footTop - Metrics.gap - Metrics.benchKey - (upright ? Metrics.benchKey + Metrics.gap : 0)

    function done() {
        if (off.tell())
            over();
    }
    function back() {
        off.later();
        over();
    }

    shelfShown: !upright

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
            id: less
            name: "less"
            text: "−"
            called: qsTr("Less")
            repeats: true
            onTriggered: root.off.less()
        },
        ScreenAction {
            id: more
            name: "more"
            text: "+"
            called: qsTr("More")
            repeats: true
            onTriggered: root.off.more()
        },
        ScreenAction {
            id: anHour
            name: "anHour"
            text: qsTr("About an hour")
            onTriggered: root.off.anHour()
        },
        ScreenAction {
            id: byClock
            name: "byClock"
            text: qsTr("By the clock")
            hint: root.off.byClock
            enabled: root.off.byClock !== ""
            onTriggered: root.off.takeClock()
        }
    ]

    PageHead {
        id: head
        width: root.width - 2 * parent.x
        watch: root.watch
        title: qsTr("How long was the tablet off?")
        where: root.off.lastSeen === "" ? qsTr("nobody else can tell") : qsTr("last used %1, by a clock that cannot be trusted").arg(root.off.lastSeen)
    }
    Rectangle {
        id: plate
        objectName: "plate"
        x: -parent.x
        y: head.height + Metrics.mm(1.4)
        width: root.width
        height: root.keysTop - parent.y - Metrics.mm(2) - y
        color: Theme.cloth

        Column {
            x: Metrics.mm(4)
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width - 2 * x
            spacing: 0

            Words {
                objectName: "answer"
                width: parent.width
                text: root.off.answer
                color: Theme.worked
                font.bold: true
                font.pixelSize: Metrics.figureLeast
                lineHeight: 0.9
            }
            Words {
                width: parent.width
                text: root.off.refusal !== "" ? root.off.refusal : qsTr("The waits go by your answer. Back leaves it open.")
                color: root.off.refusal !== "" ? Theme.worked : Theme.ink
                font.bold: root.off.refusal !== ""
            }
            Words {
                width: parent.width
                text: qsTr("Pedal: left changes the answer, right keeps it.")
                color: Theme.quiet
                font.pixelSize: Metrics.label
            }
        }
    }
    KeyRow {
        x: Metrics.edge - parent.x
        y: root.keysTop - parent.y
        width: root.width - 2 * Metrics.edge
        legendSize: Metrics.title
        offered: root.upright ? [less, more] : [less, more, anHour, byClock]
    }
    KeyRow {
        visible: root.upright
        x: Metrics.edge - parent.x
        y: root.keysTop + Metrics.benchKey + Metrics.gap - parent.y
        width: root.width - 2 * Metrics.edge
        offered: root.upright ? [anHour, byClock] : []
    }
}
